#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace core {

/// One prepared statement. Bind in order with `with`, then step. Reset when it goes, so that reading which
/// ends by an exception leaves no transaction open; also by the next `Database::prepare` of its text.
class Statement {
public:
    explicit Statement(sqlite3_stmt* statement)
        : m_statement(statement) {}
    Statement(const Statement&) = default;
    Statement& operator=(const Statement&) = default;
    ~Statement() { reset(); }

    Statement& with(std::string_view text);
    Statement& withBytes(std::string_view bytes); ///< of no text: a picture
    Statement& with(std::int64_t value);
    Statement& with(int value) { return with(static_cast<std::int64_t>(value)); }
    Statement& with(double value);
    Statement& with(std::optional<double> value); ///< NULL when there is none

    bool step(); ///< true: a row is there
    void run() {
        while (step()) {
        }
    }
    void reset(); ///< done reading before the last row

    std::string text(int column) const;  ///< empty for NULL
    std::string bytes(int column) const; ///< of a blob
    std::int64_t integer(int column) const;
    double real(int column) const;
    bool isNull(int column) const;
    std::string row() const; ///< every column's name and text, for people

private:
    Statement& bound(int code);

    sqlite3_stmt* m_statement;
    int m_bound = 0;
};

/// The first column of a query's first row; empty without a row.
std::optional<std::string> firstText(Statement query);

} // namespace core

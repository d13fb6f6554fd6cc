#include "core/store/statement.h"

#include "core/store/sqlite_failure.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace core {

Statement& Statement::with(std::string_view text) {
    return bound(sqlite3_bind_text(m_statement, ++m_bound, text.data(), static_cast<int>(text.size()),
                                   SQLITE_TRANSIENT));
}

Statement& Statement::withBytes(std::string_view bytes) {
    return bound(sqlite3_bind_blob64(m_statement, ++m_bound, bytes.data(), bytes.size(), SQLITE_TRANSIENT));
}

Statement& Statement::with(std::int64_t value) {
    return bound(sqlite3_bind_int64(m_statement, ++m_bound, value));
}

Statement& Statement::with(double value) {
    return bound(sqlite3_bind_double(m_statement, ++m_bound, value));
}

Statement& Statement::with(std::optional<double> value) {
    return value ? with(*value) : bound(sqlite3_bind_null(m_statement, ++m_bound));
}

Statement& Statement::bound(int code) {
    if (code != SQLITE_OK) fail(sqlite3_db_handle(m_statement), code); // memory: it would be read as NULL
    return *this;
}

bool Statement::step() {
    const int code = sqlite3_step(m_statement);
    if (code == SQLITE_ROW) return true;
    if (code != SQLITE_DONE) fail(sqlite3_db_handle(m_statement), code);
    sqlite3_reset(m_statement); // a statement left open would hold its read transaction
    return false;
}

void Statement::reset() {
    sqlite3_reset(m_statement);
}

std::string Statement::text(int column) const {
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, column));
    if (bytes != nullptr)
        return std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column)));
    sqlite3* handle = sqlite3_db_handle(m_statement);
    if (sqlite3_errcode(handle) == SQLITE_NOMEM) fail(handle, SQLITE_NOMEM); // and no NULL
    return {};
}

std::string Statement::bytes(int column) const {
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_statement, column));
    if (bytes != nullptr)
        return std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column)));
    sqlite3* handle = sqlite3_db_handle(m_statement);
    if (sqlite3_errcode(handle) == SQLITE_NOMEM) fail(handle, SQLITE_NOMEM);
    return {};
}

std::string Statement::row() const {
    std::string cells;
    for (int i = 0; i < sqlite3_column_count(m_statement); ++i)
        cells += fmt::format("{}={} ", sqlite3_column_name(m_statement, i), isNull(i) ? "NULL" : text(i));
    return cells;
}

std::int64_t Statement::integer(int column) const {
    return sqlite3_column_int64(m_statement, column);
}
double Statement::real(int column) const {
    return sqlite3_column_double(m_statement, column);
}
bool Statement::isNull(int column) const {
    return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
}

std::optional<std::string> firstText(Statement query) {
    return query.step() ? std::optional(query.text(0)) : std::nullopt;
}

} // namespace core

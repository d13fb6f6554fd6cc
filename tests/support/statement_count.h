#pragma once

#include <cstdint>
#include <ostream>

namespace support {

/// What SQLite had to do: statements run, rows that came of them.
struct DatabaseWork {
    std::int64_t statements = 0;
    std::int64_t rows = 0;

    bool operator==(const DatabaseWork&) const = default;
};

inline std::ostream& operator<<(std::ostream& out, const DatabaseWork& work) {
    return out << work.statements << " statements, " << work.rows << " rows";
}

/// Counts what SQLite does for each file that is opened while this lives. One at a time, one thread.
class StatementCount {
public:
    StatementCount();
    ~StatementCount();
    StatementCount(const StatementCount&) = delete;
    StatementCount& operator=(const StatementCount&) = delete;

    /// What was done since the last time it was asked.
    DatabaseWork take();
};

} // namespace support

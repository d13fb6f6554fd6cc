#pragma once

struct sqlite3;

namespace core {

/// Throws the StoreFailure that SQLite's result code stands for, with what SQLite says of it and the file.
[[noreturn]] void fail(sqlite3* handle, int code);

} // namespace core

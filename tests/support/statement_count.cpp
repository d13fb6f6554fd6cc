#include "tests/support/statement_count.h"

#include <sqlite3.h>

#include <stdexcept>
#include <utility>

namespace support {
namespace {

DatabaseWork done;

int count(unsigned event, void*, void*, void*) {
    if (event == SQLITE_TRACE_STMT) ++done.statements;
    if (event == SQLITE_TRACE_ROW) ++done.rows;
    return 0;
}

int watch(sqlite3* opened, const char**, const sqlite3_api_routines*) {
    return sqlite3_trace_v2(opened, SQLITE_TRACE_STMT | SQLITE_TRACE_ROW, count, nullptr);
}

/// SQLite takes every extension's entry point as a function without arguments.
void (*entryPoint())() {
    return reinterpret_cast<void (*)()>(watch);
}

} // namespace

StatementCount::StatementCount() {
    if (sqlite3_auto_extension(entryPoint()) != SQLITE_OK)
        throw std::runtime_error("SQLite does not let its statements be counted");
    done = {};
}

StatementCount::~StatementCount() {
    sqlite3_cancel_auto_extension(entryPoint());
}

DatabaseWork StatementCount::take() {
    return std::exchange(done, {});
}

} // namespace support

#include "core/store/sqlite_failure.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"

#include <sqlite3.h>

namespace core {
namespace {

ErrorCode codeOf(int code) {
    // Somebody has to finish what was cut short, and who only reads cannot.
    if (code == SQLITE_READONLY_ROLLBACK || code == SQLITE_READONLY_RECOVERY ||
        code == SQLITE_READONLY_CANTINIT)
        return ErrorCode::FileCutShort;
    switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return ErrorCode::DatabaseLocked;
    case SQLITE_NOTADB:
        return ErrorCode::DatabaseForeign;
    case SQLITE_CORRUPT:
        return ErrorCode::DatabaseDamaged;
    default:
        return ErrorCode::DatabaseFailed;
    }
}

} // namespace

void fail(sqlite3* handle, int code) {
    const char* file = handle != nullptr ? sqlite3_db_filename(handle, "main") : nullptr;
    const char* said = handle != nullptr ? sqlite3_errmsg(handle) : sqlite3_errstr(code);
    throw StoreFailure({codeOf(code), {said}, file != nullptr ? file : ""});
}

} // namespace core

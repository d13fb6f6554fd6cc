#pragma once

#include "core/base/store_failure.h"
#include "core/store/database.h"

#include <filesystem>
#include <sqlite3.h>

namespace support {

/// Whether somebody writes in that file at this moment.
inline bool isBeingWritten(const std::filesystem::path& file) {
    core::Database database(file, core::Database::Mode::ReadWrite);
    sqlite3_busy_timeout(database.handle(), 0);
    try {
        const core::Transaction tried(database);
        return false;
    } catch (const core::StoreFailure&) {
        return true;
    }
}

} // namespace support

#pragma once

#include "core/store/database.h"
#include "core/store/migrations.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <span>

namespace core {

/// Creates and opens club files in the one order that survives a power cut at every write: synchronous=EXTRA
/// while the rollback journal of the creation is in use, then WAL and FULL. All throw StoreFailure.
namespace clubFile {

/// `fill` writes the first facts; it runs in the transaction that also makes the schema, so that the file is
/// either empty ("unfinished") or whole. On failure nothing is left behind.
std::unique_ptr<Database> create(const std::filesystem::path& file,
                                 const std::function<void(Database&)>& fill);

/// Refuses what is not a club file, is newer, or was never finished. An older one is first copied to
/// `<file>.before-<version>` beside it, then migrated. `steps` is for tests.
std::unique_ptr<Database> open(const std::filesystem::path& file, bool readOnly,
                               std::span<const Migration> steps = migrations());

enum class CopyFor {
    OwnerAlone,      ///< a club to work with
    ReadersOfSource, ///< a backup: whoever may read the one may read the other
};
/// The whole content to a new file, which must not exist. On failure nothing is left behind.
void copy(Database& source, const std::filesystem::path& to, CopyFor whom);
/// The file and what SQLite keeps beside it.
void remove(const std::filesystem::path& file);

} // namespace clubFile
} // namespace core

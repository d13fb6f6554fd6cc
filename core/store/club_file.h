#pragma once

#include "core/store/database.h"
#include "core/store/migrations.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <span>
#include <sys/types.h>

namespace core {

/// Creates, copies and opens club files in the one order that survives a power cut at every write. A new file
/// is made beside its place, looked through, synced, renamed, and its folder synced (new_file.h), with
/// synchronous=EXTRA while a rollback journal is in use, then WAL and FULL. All throw StoreFailure.
namespace clubFile {

/// Only its owner reads what a club knows of its people.
constexpr mode_t ownersAlone = 0600;

/// `fill` writes the first facts; it runs in the transaction that also makes the schema. On failure nothing
/// is left behind.
std::unique_ptr<Database> create(const std::filesystem::path& file,
                                 const std::function<void(Database&)>& fill);

/// Refuses what is not a club file, is newer, or was never finished. An older one is first copied to
/// `<file>.before-<version>` beside it, then migrated. What a killed program wrote is on disk before anything
/// is read of it here. Who reads (`readOnly`) changes nothing, but rolls back what was cut short; where
/// nothing can be kept beside the file (its folder or itself cannot be written to, the disk is full), it is
/// read into memory. `steps` is for tests.
std::unique_ptr<Database> open(const std::filesystem::path& file, bool readOnly,
                               std::span<const Migration> steps = migrations());

/// Somebody else's file, to look into and soon be done with: unless another program has it open, which then
/// finds it locked meanwhile, nothing is left beside it and what its log holds stays there.
std::unique_ptr<Database> openAside(const std::filesystem::path& file);

/// Whoever may read the file, and its owner, who goes on working with it; it is never a program.
mode_t readersOf(const std::filesystem::path& file);
/// The whole content to a new file, which must not exist. `look` looks the copy through before it has its
/// name, and throws when it is not to be. On failure nothing is left behind.
void copy(Database& source, const std::filesystem::path& to, mode_t readers,
          const std::function<void(Database&)>& look = {});
/// The file and what SQLite keeps beside it; nobody may have it open.
void remove(const std::filesystem::path& file);

} // namespace clubFile
} // namespace core

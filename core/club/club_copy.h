#pragma once

#include "core/base/result.h"
#include "core/record/verification.h"

#include <filesystem>
#include <string>

namespace core {

class Pin;

/// Copies a club file, also while another program uses it, to a file that must not exist yet, and looks the
/// copy through before it has its name: its chain, its tables, the file itself. With problems the copy stays
/// when `keepDamaged`; else it never stands at its name and the error (FileDamaged) names the first. For one
/// machine's safety: two copies that are both written to afterwards are not one record any more.
Result<Verification> copyClub(const std::filesystem::path& from, const std::filesystem::path& to,
                              bool keepDamaged);

/// A club file from a backup: as copyClub of a record that is not damaged. PinNeeded, where a gear officer
/// who is in the backup has a PIN; `by` is whose `pin` is given (null: none), and its errors are those of
/// ClubPins::unlock. Wrong ones are counted in the user's state folder: nothing is written to a backup.
/// NoSuchPerson: `by`, also without a PIN.
Result<Verification> restoreClub(const std::filesystem::path& from, const std::filesystem::path& to,
                                 const std::string& by, const Pin* pin);

} // namespace core

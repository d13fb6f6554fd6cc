#pragma once

#include "core/store/database.h"
#include "core/store/register_store.h"
#include "core/tag/scanned_text.h"
#include "core/tag/tag_code.h"

#include <optional>
#include <string>

namespace core {

/// The code that a scanned text stands for: its own, the item's that a new tag or a maker's label names.
/// Empty for what is no code of this club's kind and for a tag that was replaced. `year`: for two-digit
/// years.
std::optional<TagCode> scannedCode(const ScannedText& scan, Database& database, const RegisterStore& store,
                                   int year);

} // namespace core

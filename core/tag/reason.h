#pragma once

#include "core/base/result.h"

#include <string>

namespace core {

/// A sentence in which a person says why: an urgent launch, a damage, a log entry. BadInput for what a
/// scanner typed (a tag code) and for fewer than three letters: neither says anything to whoever reads it
/// later.
Outcome checkReason(const std::string& text);

} // namespace core

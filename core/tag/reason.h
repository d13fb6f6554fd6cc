#pragma once

#include "core/base/result.h"

#include <string>

namespace core {

/// A sentence in which a person says why: an urgent launch, a damage, a log entry. Gives it as it is
/// recorded, without outer blanks (see proseFrom). BadInput for what proseFrom refuses, for what a scanner
/// typed (a tag code) and for fewer than three letters: neither says anything to whoever reads it later.
Result<std::string> reasonFrom(const std::string& text);

} // namespace core

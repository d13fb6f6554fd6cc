#pragma once

#include "core/base/store_failure.h"
#include "core/check/boat_check.h"
#include "core/register/operation.h"

#include <functional>
#include <string>

namespace core {

// Documents of the record: parts of a fact that are kept beside it as they were written, in canonical JSON
// (fact.h). An answer is what was asked, what counted and what was found on that day, so that later changes
// of rules or manifest do not change what an old check shows.

using TagOfItem = std::function<std::string(const std::string& id)>;

std::string textOf(const CheckAnswer& answer);
std::string textOf(const Operation& operation);

/// Reads what textOf wrote; of a rule, only what a finding says of it comes back. What an earlier program did
/// not write yet has its default, what a later one added is left alone. `place`: where the text stands, for
/// the error that names the field which is not as a program writes it.
/// The record has the ids of items: `tagOf` says which tag is on the item of that id now.
Result<CheckAnswer> answerFrom(const std::string& text, const CellPlace& place, const TagOfItem& tagOf);
Result<Operation> operationFrom(const std::string& text, const CellPlace& place);

} // namespace core

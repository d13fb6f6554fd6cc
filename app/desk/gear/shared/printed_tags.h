#pragma once

#include "app/desk/check/check_row.h"

#include <map>
#include <string>
#include <vector>

namespace app {

/// Items whose first tag was replaced, with the tag that is on them now. The record names an item by its
/// first code for ever; whoever looks for the thing needs what is printed on it.
using PrintedTags = std::map<std::string, std::string>;

std::string printedTag(const PrintedTags& tags, const std::string& code);
/// Shows and says the printed code in place of the item's. The rows' keys and codes stay.
std::vector<CheckRow> withPrintedTags(std::vector<CheckRow> rows, const PrintedTags& tags);

} // namespace app

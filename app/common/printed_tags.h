#pragma once

#include <QString>

#include <map>
#include <string>

namespace app {

/// Items whose first tag was replaced, with the tag that is on them now. The record names an item by its
/// first code for ever; whoever looks for the thing needs what is printed on it.
using PrintedTags = std::map<std::string, std::string>;

/// The tag that is on an item; the code itself where no tag was replaced.
std::string printedTag(const PrintedTags& tags, const std::string& code);
/// The item that a printed tag names: the other way round. A tag that was replaced stays itself.
std::string itemOfPrintedTag(const PrintedTags& tags, const std::string& tag);
/// A sentence with each code in words ("K7Q2 4RMX 1P") put as it is printed now.
QString inPrintedTags(QString sentence, const PrintedTags& tags);

} // namespace app

#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QString>

#include <map>
#include <string>

namespace core {
struct Finding;
struct NotReadyReason;
} // namespace core

namespace app {

/// Items whose first tag was replaced, with the tag that is on them now. The record names an item by its
/// first code for ever; whoever looks for the thing needs what is printed on it.
using PrintedTags = std::map<std::string, std::string>;

/// The tag that is on an item; the code itself where no tag was replaced.
std::string printedTag(const PrintedTags& tags, const std::string& code);
/// The item that a printed tag names: the other way round. A tag that was replaced stays itself.
std::string itemOfPrintedTag(const PrintedTags& tags, const std::string& tag);
/// The same, named by the tag that is on the thing: for a sentence, where nothing else than the item's own
/// name changes.
core::Finding named(core::Finding finding, const PrintedTags& tags);
core::NotReadyReason named(core::NotReadyReason reason, const PrintedTags& tags);

} // namespace app

#include "app/text/printed_tags.h"

#include "core/answers/board.h"
#include "core/check/finding.h"

#include <algorithm>

namespace app {

std::string printedTag(const PrintedTags& tags, const std::string& code) {
    const auto found = tags.find(code);
    return found == tags.end() ? code : found->second;
}

std::string itemOfPrintedTag(const PrintedTags& tags, const std::string& tag) {
    const auto found =
        std::find_if(tags.begin(), tags.end(), [&](const auto& each) { return each.second == tag; });
    return found == tags.end() ? tag : found->first;
}

core::Finding named(core::Finding finding, const PrintedTags& tags) {
    finding.code = printedTag(tags, finding.code);
    return finding;
}

core::NotReadyReason named(core::NotReadyReason reason, const PrintedTags& tags) {
    reason.code = printedTag(tags, reason.code);
    if (reason.finding) reason.finding = named(*reason.finding, tags);
    return reason;
}

} // namespace app

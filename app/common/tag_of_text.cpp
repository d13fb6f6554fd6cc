#include "app/common/tag_of_text.h"

#include "core/base/instant.h"
#include "core/tag/maker_label.h"
#include "core/tag/tag_code.h"

namespace app {

bool isTagText(const std::string& text) {
    return core::TagCode::exact(text).has_value();
}

std::optional<std::string> tagOfText(const std::string& text) {
    if (isTagText(text)) return text;
    if (!core::looksLikeMakerLabel(text)) return std::nullopt;
    // The year only places two-digit years, and no date is looked at here.
    const auto label = core::parseMakerLabel(text, core::Instant::now().localDay().year());
    if (!label || !isTagText(label->serial)) return std::nullopt;
    return label->serial;
}

} // namespace app

#include "app/flow/seen_text.h"

#include "core/base/instant.h"
#include "core/tag/maker_label.h"
#include "core/tag/tag_code.h"
#include "scanner/seen_code.h"

#include <cmath>

namespace app {

std::optional<std::string> tagOfText(const std::string& text, bool gs1) {
    if (core::TagCode::exact(text)) return text;
    if (!gs1 && !core::looksLikeMakerLabel(text)) return std::nullopt;
    // The year only places two-digit years, and no date is looked at here.
    const auto label = core::parseMakerLabel(text, core::Instant::now().localDay().year());
    if (!label || !core::TagCode::exact(label->serial)) return std::nullopt;
    return label->serial;
}

core::ScannedText scannedText(const scanner::SeenCode& code) {
    core::ScannedText scanned = core::ScannedText::ofSymbol(code.text, code.gs1);
    if (code.printGrade) scanned.print = std::round(*code.printGrade * 10) / 10;
    return scanned;
}

std::string typedText(const scanner::SeenCode& code) {
    if (!code.gs1 || code.text.starts_with(']')) return code.text;
    // Symbology identifiers of GS1 symbols: GS1 General Specifications 5.1.3.
    switch (code.symbology) {
    case scanner::Symbology::DataMatrix:
        return "]d2" + code.text;
    case scanner::Symbology::Qr:
        return "]Q3" + code.text;
    default:
        return "]C1" + code.text;
    }
}

bool isTagText(const std::string& text) {
    return tagOfText(text, true).has_value();
}

} // namespace app

#include "core/tag/scanned_text.h"

#include "core/tag/maker_label.h"

namespace core {
namespace {

constexpr std::size_t identifierLength = 3;

bool hasIdentifier(std::string_view text) {
    return text.size() > identifierLength && text.front() == ']';
}

} // namespace

ScannedText ScannedText::ofSymbol(std::string_view text, bool isGs1) {
    if (!isGs1 || hasIdentifier(text)) return typed(text);
    return {std::string(text), true};
}

ScannedText ScannedText::typed(std::string_view line) {
    if (looksLikeMakerLabel(line)) return {std::string(withoutGs1Symbol(line)), true};
    return {std::string(hasIdentifier(line) ? line.substr(identifierLength) : line), false};
}

} // namespace core

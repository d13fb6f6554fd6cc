#include "core/tag/tag_code.h"

#include "core/base/error_code.h"

#include <array>
#include <fmt/format.h>

namespace core {
namespace {

constexpr std::string_view digitsAndLetters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
constexpr std::string_view printed = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"; // 32: five bits a character
constexpr std::string_view classes = "KBPCS";
constexpr std::size_t codeLength = 10;

bool isIn(std::string_view set, char c) {
    return set.find(c) != std::string_view::npos;
}

bool hasShape(std::string_view text) {
    if (text.size() != codeLength || !isIn(classes, text[0])) return false;
    for (char c : text.substr(1))
        if (!isIn(printed, c)) return false;
    return true;
}

} // namespace

std::string asPrinted(std::string_view typed) {
    std::string text;
    for (char c : typed) {
        if (c == ' ' || c == '\t' || c == '-' || c == '\r' || c == '\n') continue;
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
        text += c == 'O' ? '0' : c == 'I' || c == 'L' ? '1' : c;
    }
    return text;
}

std::optional<char> checkCharacter(std::string_view text) {
    // Pure system: c = (c·2 + value) mod 37 over the text; the check makes the whole come out as 1.
    unsigned sum = 0;
    for (char c : text) {
        const auto value = digitsAndLetters.find(c);
        if (value >= 36) return std::nullopt;
        sum = (sum + static_cast<unsigned>(value)) * 2 % 37;
    }
    return digitsAndLetters[(38 - sum) % 37];
}

std::optional<TagCode> TagCode::exact(std::string_view text) {
    if (!hasShape(text) || checkCharacter(text.substr(0, codeLength - 1)) != text.back()) return std::nullopt;
    return TagCode(std::string(text));
}

Result<TagCode> TagCode::parse(std::string_view typed) {
    const std::string text = asPrinted(typed);
    if (text.size() != codeLength)
        return Error{ErrorCode::TagLength, {std::string(typed), std::to_string(text.size())}};
    if (!isIn(classes, text[0])) return Error{ErrorCode::TagClassUnknown, {std::string(typed)}};
    if (!hasShape(text)) return Error{ErrorCode::TagCharacter, {std::string(typed)}};
    if (auto code = exact(text)) return *code;
    return Error{ErrorCode::TagCheckCharacter, {std::string(typed)}};
}

TagCode TagCode::mint(TagClass tagClass, const std::function<std::uint64_t()>& random) {
    for (;;) {
        std::string text(1, static_cast<char>(tagClass));
        std::uint64_t bits = random();
        for (int i = 0; i < 8; ++i, bits >>= 5)
            text += printed[bits & 31];
        const char check = *checkCharacter(text);
        if (isIn(printed, check)) return TagCode(text + check);
    }
}

std::string TagCode::grouped() const {
    return fmt::format("{} {} {}", m_text.substr(0, 4), m_text.substr(4, 4), m_text.substr(8));
}

std::optional<ControlTag> controlOf(const TagCode& code) {
    static constexpr std::array<std::pair<std::string_view, ControlTag>, 6> known{{
        {"C00000001Y", ControlTag::Finish},
        {"C00000002W", ControlTag::NextBoat},
        {"C00000004S", ControlTag::Undo},
        {"C00000005Q", ControlTag::Damaged},
        {"C00000008K", ControlTag::Clock},
        {"C00000010W", ControlTag::PutAside},
    }};
    for (const auto& [text, control] : known)
        if (code.text() == text) return control;
    return std::nullopt;
}

std::string groupedTag(const std::string& text) {
    const auto code = TagCode::exact(text);
    return code ? code->grouped() : text;
}

} // namespace core

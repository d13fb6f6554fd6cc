#include "core/base/given_text.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"

namespace core {
namespace {

Result<std::string> taken(std::string_view text, std::size_t longest, std::string_view where) {
    const auto refused = [&](ErrorCode code, std::vector<std::string> more = {}) {
        Error error{code, {shown(text)}, std::string(where)};
        error.arguments.insert(error.arguments.end(), more.begin(), more.end());
        return error;
    };
    if (!isUtf8(text)) return refused(ErrorCode::TextNotUtf8);
    if (holdsUnseen(text)) return refused(ErrorCode::TextUnseen);
    std::string kept = composed(text);
    if (charactersIn(kept) > longest) return refused(ErrorCode::TextTooLong, {std::to_string(longest)});
    return kept;
}

} // namespace

std::string onOneLine(std::string_view text) {
    std::string line;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text.substr(at).starts_with("\r\n")) continue;
        const char c = text[at];
        line += c == '\n' || c == '\r' || c == '\t' ? ' ' : c;
    }
    return line;
}

Result<std::string> nameFrom(std::string_view text, std::string_view where) {
    return taken(text, longestName, where);
}

Result<std::string> proseFrom(std::string_view text, std::string_view where) {
    return taken(onOneLine(text), longestProse, where);
}

std::string shown(std::string_view text) {
    constexpr std::size_t longest = 40;
    std::string start;
    std::size_t count = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const bool begins = (static_cast<unsigned char>(text[at]) & 0xC0U) != 0x80U;
        if (begins && ++count > longest) return visibleText(start) + "…";
        start += text[at];
    }
    return visibleText(start);
}

} // namespace core

#include "app/cli/json/json_parts.h"

#include "core/base/plain_text.h"

#include <fmt/format.h>

#include <string_view>

namespace app {
namespace {

void addEscaped(std::string& quiet, std::string_view line) {
    for (const char32_t c : core::decodeUtf8(line).value_or(std::u32string()))
        if (core::isUnseen(c))
            quiet += fmt::format("\\u{:04x}", static_cast<std::uint32_t>(c));
        else
            core::appendUtf8(quiet, c);
}

} // namespace

std::string written(const Json& document) {
    const std::string dumped = document.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
    // The library escapes what JSON itself forbids, so line ends stand between values only.
    std::string quiet;
    quiet.reserve(dumped.size());
    for (std::string_view rest = dumped; !rest.empty();) {
        const std::string_view line = rest.substr(0, rest.find('\n'));
        if (core::holdsUnseen(line))
            addEscaped(quiet, line);
        else
            quiet += line;
        quiet += '\n';
        rest.remove_prefix(line.size() + 1);
    }
    return quiet;
}

} // namespace app

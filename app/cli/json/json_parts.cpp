#include "app/cli/json/json_parts.h"

#include "core/base/plain_text.h"

#include <fmt/format.h>

namespace app {

std::string written(const Json& document) {
    const std::string dumped = document.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
    // The library escapes what JSON itself forbids; line ends stand between values only.
    std::string quiet;
    quiet.reserve(dumped.size());
    const auto characters = core::decodeUtf8(dumped).value_or(std::u32string());
    for (const char32_t c : characters)
        if (core::isUnseen(c) && c != U'\n')
            quiet += fmt::format("\\u{:04x}", static_cast<std::uint32_t>(c));
        else
            core::appendUtf8(quiet, c);
    return quiet;
}

} // namespace app

// libFuzzer target: any bytes as a typed tag code. What is accepted is a code that reads back as itself,
// however it is grouped, and no neighbour of it by one character is a code.

#include "core/tag/tag_code.h"

#include <cstdlib>

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

void checkAccepted(const core::TagCode& code) {
    require(core::TagCode::exact(code.text()) == code);
    const auto again = core::TagCode::parse(code.grouped());
    require(again && *again == code);
    for (std::size_t at = 0; at < code.text().size(); ++at)
        for (const char other : std::string_view("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*")) {
            std::string changed = code.text();
            changed[at] = other;
            require(changed == code.text() || !core::TagCode::exact(changed));
        }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const auto parsed = core::TagCode::parse(text);
    if (parsed)
        checkAccepted(*parsed);
    else
        require(parsed.error().kind() == core::ErrorKind::BadInput && !core::TagCode::exact(text));
    return 0;
}

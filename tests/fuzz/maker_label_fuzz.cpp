// libFuzzer target: any bytes as a maker's label. What is accepted has the forms that GS1 gives its elements;
// what is refused says why in plain text.

#include "core/tag/gs1_identifiers.h"
#include "core/tag/maker_label.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>

namespace {

void require(bool holds) {
    if (!holds) std::abort();
}

void checkAccepted(const core::MakerLabel& label) {
    require(label.gtin.empty() || (label.gtin.size() == 14 && core::hasGs1CheckDigit(label.gtin)));
    require(label.serial.size() <= 20 && label.batch.size() <= 20);
    for (const auto& day : {label.made, label.stamped})
        require(!day || (day->firstDay() <= day->lastDay() && day->firstDay().year() >= 1977 &&
                         day->lastDay().year() <= 2076));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    core::looksLikeMakerLabel(text);
    const auto label = core::parseMakerLabel(text, 2026);
    if (label) {
        checkAccepted(*label);
        return 0;
    }
    for (const std::string& argument : label.error().arguments)
        require(std::all_of(argument.begin(), argument.end(), [](char c) { return c >= ' ' && c <= '~'; }));
    return 0;
}

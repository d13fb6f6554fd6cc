#include "tests/scanner/reader/scenes/near_miss_labels.h"

#include "scanner/reader/general_decoder.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/scenes/chance.h"

#include <cmath>
#include <numbers>

namespace scenes {
namespace {

using scanner::GreyPicture;

bool isReadable(const Label& label) {
    const GreyPicture clean = label.modules.height == 1
                                  ? pictures::stretched(pictures::enlarged(label.modules, 3), 60)
                                  : pictures::enlarged(label.modules, 6);
    const GreyPicture page = pictures::onGround(clean, clean.width + 80, clean.height + 80, 0, 255);
    if (label.modules.height == 1) return scanner::reader::decodeLinearStrip(page.view()).has_value();
    return !scanner::reader::decodeMatrixSymbols(page.view(), scanner::reader::Effort::Thorough).empty();
}

/// The part of `other` beyond a line laid over `label`.
void join(Label& label, const Label& other, std::mt19937& random) {
    const bool bars = label.modules.height == 1;
    const double angle = bars ? 0 : between(0, 2 * std::numbers::pi, random);
    const double off = between(-0.22, 0.22, random) * label.modules.width;
    for (int y = 0; y < label.modules.height; ++y)
        for (int x = 0; x < label.modules.width; ++x) {
            const double u = x + 0.5 - label.modules.width / 2.0, v = y + 0.5 - label.modules.height / 2.0;
            if (std::cos(angle) * u + std::sin(angle) * v > off)
                label.modules.row(y)[x] = other.modules.row(y)[x];
        }
}

void exchangeModules(Label& label, double share, std::mt19937& random) {
    for (auto& module : label.modules.pixels)
        if (between(0, 1, random) < share) module = static_cast<std::uint8_t>(255 - module);
}

void tear(Label& label, std::mt19937& random) {
    const double angle = between(0, 2 * std::numbers::pi, random), ground = between(60, 220, random);
    const double side = std::max(label.wide(), label.high());
    const double off = label.modules.height == 1 ? 0.1 * side : between(-0.1, 0.06, random) * side;
    const double reach = 4 * side;
    label.dirt.push_back({label.wide() / 2 + std::cos(angle) * (off + reach),
                          label.high() / 2 + std::sin(angle) * (off + reach), reach, reach, ground});
}

} // namespace

Label makeJoined(Kind kind, unsigned number, std::mt19937& random) {
    // Bars of a text with many digits are shorter than any among the thousand: then the label has another
    // number.
    constexpr unsigned mostTries = 2000, apart = 1'000'000;
    for (unsigned tries = 0;; ++tries) {
        Label label = makeLabel(kind, number + tries / mostTries * apart);
        const Label other = makeLabel(kind, number + 500'000 + below(1000, random));
        if (other.modules.width != label.modules.width) continue;
        join(label, other, random);
        if (label.modules.pixels == other.modules.pixels || isReadable(label)) continue;
        label.role = "nearmiss";
        label.damage = "splice";
        label.joinedWith = other.text;
        return label;
    }
}

Label makeDestroyed(Kind kind, unsigned number, std::mt19937& random) {
    Label label = makeLabel(kind, number);
    label.role = "nearmiss";
    switch (random() % 3) {
    case 0:
        label.damage = "noise";
        exchangeModules(label, between(0.14, 0.5, random), random);
        break;
    case 1:
        label.damage = "mud";
        for (int i = 0; i < 3; ++i)
            label.dirt.push_back({between(0.1, 0.9, random) * label.wide(),
                                  between(0.1, 0.9, random) * label.high(),
                                  between(0.22, 0.4, random) * label.wide(),
                                  between(0.22, 0.4, random) * label.high(), between(40, 120, random)});
        break;
    default:
        label.damage = "torn";
        tear(label, random);
    }
    return label;
}

} // namespace scenes

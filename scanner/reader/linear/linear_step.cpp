#include "scanner/reader/linear/linear_step.h"

#include "scanner/reader/general_decoder.h"
#include "scanner/reader/linear/bar_decoder.h"
#include "scanner/reader/linear/bar_misfit.h"
#include "scanner/reader/linear/bar_profile.h"
#include "scanner/reader/linear/code128.h"
#include "scanner/reader/text_proof.h"

#include <algorithm>
#include <array>

namespace scanner::reader {
namespace {

struct Band {
    double offset, height; ///< in parts of the region's height
};

constexpr std::array<Band, 7> bands{
    {{0, 0.3}, {-0.25, 0.2}, {0.25, 0.2}, {0, 0.1}, {-0.13, 0.15}, {0.13, 0.15}, {0, 0.7}}};

/// Whether no module, nor one of the quiet zones, is nearly wrong. Of two labels that were cut and joined one
/// in a hundred satisfies the symbol's check character, in every band; of 1,500 that did, drawn in all kinds
/// of light, the most of a module was 0.63 or more. Of sound labels, a third of them soiled, 95 of 100 are
/// under this in some band.
bool isSound(const BarProfile& profile, const BarReading& reading) {
    constexpr double bound = 0.5;
    constexpr int quiet = 3; // modules; the standard asks for ten, but the label's edge is often nearer
    const auto misfit = misfitOf(profile.values, reading, quiet);
    return misfit && misfit->most < bound;
}

/// Of a tag, whose own check stands beside the symbol's, dirt may have hit a part; but where one place is
/// wrong and the rest much less so, it was cut. Of 164 joined labels whose both checks agreed by chance the
/// most of a module was 0.8 or more, and 6.1 times the usual or more.
bool isCut(const BarProfile& profile, const BarReading& reading) {
    constexpr double bound = 0.7, unevenness = 5.5;
    const auto misfit = misfitOf(profile.values, reading, 0);
    return !misfit || (misfit->most >= bound && misfit->most >= unevenness * misfit->usual);
}

/// Any stripes look like a symbol of one or two characters, and each that does has a chance of one in a
/// hundred.
bool isTooShort(const BarReading& reading) {
    constexpr std::size_t fewest = 5; // with those for start and check
    return reading.characters.size() < fewest;
}

/// How much stands for a text beside the check character of its symbol.
enum class Belief { None, OnceMore, Now };

/// A tag is believed for its own check character, unless it was cut and is not sound all the same; where one
/// character was replaced to satisfy the symbol's, all must be sound. A GS1 number says nothing of the serial
/// number beside it.
Belief beliefIn(const Code128Text& text, const BarReading& reading, const BarProfile& profile,
                const TagTest& isTag) {
    const TextProof proof = proofOf(text.text, text.gs1, isTag);
    if (proof == TextProof::Tag && !reading.guessed && !isCut(profile, reading)) return Belief::Now;
    if (reading.guessed ? proof != TextProof::Tag : isTooShort(reading)) return Belief::None;
    if (!isSound(profile, reading)) return Belief::None;
    return proof == TextProof::None ? Belief::OnceMore : Belief::Now;
}

BarProfile bandProfile(const GreyPicture& picture, const BarRegion& region, const Band& band) {
    const double beyond = std::min(40.0, 12 + 0.05 * region.length);
    return profileOf(picture, region, band.offset * region.height, std::max(1.0, band.height * region.height),
                     beyond);
}

SeenCode seenCodeOf(const Code128Text& text, const BarReading& reading, const BarProfile& profile,
                    const BarRegion& region, double offset, bool reversed) {
    double first = reading.first, last = reading.last;
    if (reversed) {
        const double count = static_cast<double>(profile.values.size());
        first = count - reading.first;
        last = count - reading.last;
    }
    const auto at = [&](double index, double up) {
        const double s = index * profile.step, v = up * region.height / 2 - offset;
        return Point{profile.start.x + s * region.along.x + v * region.upright.x,
                     profile.start.y + s * region.along.y + v * region.upright.y};
    };
    SeenCode code;
    code.text = text.text;
    code.gs1 = text.gs1;
    code.symbology = Symbology::Code128;
    code.howRead = reading.guessed ? HowRead::Guessed : HowRead::Fitted;
    const double up = reversed ? 1 : -1; // the upright vector points down when the row runs to the right
    code.corners = {at(first, up), at(last, up), at(last, -up), at(first, -up)};
    return code;
}

/// A picture of the profile as the general decoder likes it: each value dark or light by the middle of its
/// surroundings' extremes, in a few equal rows.
GreyPicture stripOf(const std::vector<float>& profile) {
    constexpr int rows = 8;
    const int count = static_cast<int>(profile.size()), reach = std::max(6, count / 24);
    GreyPicture strip(count, rows, 255);
    for (int x = 0; x < count; ++x) {
        const auto [low, high] = std::minmax_element(profile.begin() + std::max(0, x - reach),
                                                     profile.begin() + std::min(count, x + reach + 1));
        const bool dark = profile[x] < (*low + *high) / 2 && *high - *low > 12;
        for (int y = 0; dark && y < rows; ++y)
            strip.row(y)[x] = 0;
    }
    return strip;
}

Quad cornersOf(const BarRegion& region) {
    const auto at = [&](double a, double b) {
        return Point{region.centre.x + a * region.length / 2 * region.along.x +
                         b * region.height / 2 * region.upright.x,
                     region.centre.y + a * region.length / 2 * region.along.y +
                         b * region.height / 2 * region.upright.y};
    };
    return {at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)};
}

} // namespace

std::optional<SeenCode> readCode128(const GreyPicture& picture, const BarRegion& region, BarEffort effort,
                                    const TagTest& isTag, const TimeBudget& budget) {
    std::vector<std::string> unproved;
    const std::size_t count = effort == BarEffort::TwoBands ? 2 : bands.size();
    for (std::size_t b = 0; b < count; ++b) {
        const double offset = bands[b].offset * region.height;
        BarProfile profile = bandProfile(picture, region, bands[b]);
        for (bool reversed : {false, true}) {
            if (budget.isSpent()) return std::nullopt;
            if (reversed) std::reverse(profile.values.begin(), profile.values.end());
            for (const BarReading& reading : BarDecoder(profile.values).read(effort == BarEffort::AllBands)) {
                const auto text =
                    code128TextOf(std::span(reading.characters).first(reading.characters.size() - 1));
                if (!text) continue;
                const Belief belief = beliefIn(*text, reading, profile, isTag);
                const bool again = belief == Belief::OnceMore &&
                                   std::count(unproved.begin(), unproved.end(), text->text) > 0;
                if (belief == Belief::Now || again)
                    return seenCodeOf(*text, reading, profile, region, offset, reversed);
                if (belief == Belief::OnceMore) unproved.push_back(text->text);
            }
        }
    }
    return std::nullopt;
}

std::optional<SeenCode> readOtherLinear(const GreyPicture& picture, const BarRegion& region,
                                        const TimeBudget& budget) {
    std::vector<SeenCode> found;
    for (const Band& band : {bands[0], bands[1], bands[2]}) {
        if (budget.isSpent()) return std::nullopt;
        const BarProfile profile = bandProfile(picture, region, band);
        auto code = decodeLinearStrip(stripOf(profile.values).view());
        if (!code || code->symbology == Symbology::Code128) continue; // ours is the stricter
        for (const SeenCode& other : found) {
            if (other.text != code->text || other.symbology != code->symbology) continue;
            code->corners = cornersOf(region);
            return code;
        }
        found.push_back(std::move(*code));
    }
    return std::nullopt;
}

} // namespace scanner::reader

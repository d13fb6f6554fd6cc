#include "scanner/reader/qr/qr_tag_decoder.h"

#include "scanner/reader/dissent.h"
#include "scanner/reader/qr/qr_pattern.h"
#include "scanner/reader/qr/tag_word.h"
#include "scanner/reader/reed_solomon.h"
#include "scanner/reader/soft_word.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace scanner::reader {
namespace {

constexpr int size = 21, codewords = TagWord::codewords, checks = TagWord::checks;
constexpr std::array<Threshold, 8> thresholds{
    {{7, 0}, {7, 0.7f}, {0, 0}, {0, 0.7f}, {5, 0}, {11, 0}, {5, 0.7f}, {11, 0.7f}}};

struct Place {
    int column, row;
};

bool isFunction(int column, int row) {
    const bool finders = (column < 9 && row < 9) || (column > 12 && row < 9) || (column < 9 && row > 12);
    return finders || column == 6 || row == 6;
}

/// Where the 208 bits of the codewords lie: two columns at a time, from the right, upward and downward in
/// turn.
std::array<Place, codewords * 8> makeBitPlaces() {
    std::array<Place, codewords * 8> places{};
    int next = 0;
    bool upward = true;
    for (int right = size - 1; right > 0; right -= 2) {
        if (right == 6) right = 5; // the timing column is skipped
        for (int i = 0; i < size; ++i)
            for (int side = 0; side < 2; ++side) {
                const int column = right - side, row = upward ? size - 1 - i : i;
                if (!isFunction(column, row)) places[next++] = {column, row};
            }
        upward = !upward;
    }
    return places;
}

bool isMasked(int mask, int column, int row) {
    switch (mask) {
    case 0:
        return (row + column) % 2 == 0;
    case 1:
        return row % 2 == 0;
    case 2:
        return column % 3 == 0;
    case 3:
        return (row + column) % 3 == 0;
    case 4:
        return (row / 2 + column / 3) % 2 == 0;
    case 5:
        return row * column % 2 + row * column % 3 == 0;
    case 6:
        return (row * column % 2 + row * column % 3) % 2 == 0;
    default:
        return ((row + column) % 2 + row * column % 3) % 2 == 0;
    }
}

/// The 15 format bits of level H with a mask: BCH(15, 5), generator 0x537, then masked by 0x5412.
int formatBits(int mask) {
    const int data = 2 << 3 | mask;
    int remainder = data << 10;
    for (int bit = 14; bit >= 10; --bit)
        if (remainder >> bit & 1) remainder ^= 0x537 << (bit - 10);
    return (data << 10 | remainder) ^ 0x5412;
}

/// Both places of each format bit, bit 0 first.
std::array<std::array<Place, 2>, 15> formatPlaces() {
    std::array<std::array<Place, 2>, 15> places{};
    for (int i = 0; i < 15; ++i) {
        const int up = i < 6 ? i : i + 1; // timing row and column are skipped
        places[i][0] = i < 8 ? Place{8, up} : Place{i == 8 ? 7 : 14 - i, 8};
        places[i][1] = i < 8 ? Place{size - 1 - i, 8} : Place{8, size - 15 + i};
    }
    return places;
}

/// Of the masks of level H, as the format information tells.
int likeliestMask(const GridSamples& soft) {
    static const auto places = formatPlaces();
    std::array<float, 8> score{};
    for (int mask = 0; mask < 8; ++mask) {
        const int bits = formatBits(mask);
        for (int i = 0; i < 15; ++i)
            for (const Place& p : places[i]) {
                const float value = std::clamp(soft.at(p.column, p.row), -0.7f, 0.7f);
                score[mask] += bits >> i & 1 ? -value : value;
            }
    }
    return static_cast<int>(std::max_element(score.begin(), score.end()) - score.begin());
}

SoftWord wordOf(const GridSamples& soft, int mask) {
    static const auto places = makeBitPlaces();
    SoftWord word = softWordOf(codewords, [&](int codeword, int bit) {
        const Place& p = places[codeword * 8 + bit];
        const float lightness = soft.at(p.column, p.row);
        return isMasked(mask, p.column, p.row) ? lightness : -lightness;
    });
    // Mode 0010 (alphanumeric), length 10 in nine bits, and the terminator are the same on every tag.
    word.values[0] = 0x20;
    word.certainty[0] = 99;
    word.values[1] = static_cast<std::uint8_t>(0x50 | (word.values[1] & 7));
    word.values[8] &= 0xF0;
    return word;
}

Dissent dissentFrom(const GridSamples& soft, int mask, const TagWord& word) {
    static const auto places = makeBitPlaces();
    Dissent dissent;
    for (int i = 0; i < codewords * 8; ++i) {
        const Place& p = places[i];
        const bool dark = word.bit(i) != isMasked(mask, p.column, p.row);
        dissent.add(soft.at(p.column, p.row), dark, p.column, p.row);
    }
    return dissent;
}

std::optional<TagReading> decodeWord(const GridSamples& soft, int mask, const TagTest& isTag) {
    const SoftWord word = wordOf(soft, mask);
    const std::vector<int> order = word.leastCertainFirst();
    for (int erased = 0; erased <= 12; erased += 2) {
        TagWord mended;
        std::copy(word.values.begin(), word.values.end(), mended.values.begin());
        const int errors = ReedSolomon::forQr().mend(mended.values, checks, std::span(order).first(erased));
        if (errors < 0) continue;
        const auto text = textOf(mended.values);
        if (!text || !isTag(*text)) continue;
        return TagReading{*text, erased, errors, false, isMuchMended(word.changedIn(mended.values), checks)};
    }
    return std::nullopt;
}

/// What the modules say of each bit, above 0 for a one.
std::array<float, TagWord::bits> evidenceOf(const GridSamples& soft, int mask) {
    static const auto places = makeBitPlaces();
    std::array<float, TagWord::bits> evidence;
    for (int i = 0; i < TagWord::bits; ++i) {
        const Place& p = places[i];
        const float lightness = std::clamp(soft.at(p.column, p.row), -1.0f, 1.0f);
        evidence[i] = isMasked(mask, p.column, p.row) ? lightness : -lightness;
    }
    return evidence;
}

} // namespace

bool contradictsTag(const GridSamples& samples, const std::string& text) {
    constexpr int most = 4; // of eight; by some thresholds the modules of one in five sound labels object
    const auto word = TagWord::of(text);
    if (samples.columns != size || samples.rows != size || !word) return false;
    int objections = 0;
    for (const Threshold& threshold : thresholds) {
        const GridSamples soft = softModules(samples, threshold);
        const int mask = likeliestMask(soft); // of joined labels it may be the other's
        const Dissent dissent = dissentFrom(soft, mask, *word);
        const bool mended = isMuchMended(wordOf(soft, mask).changedIn(word->values), checks);
        objections += dissent.isAnotherSymbol() || (mended && dissent.refuses());
    }
    return objections > most;
}

/// The three finders with their separators, and what lies between them.
static std::vector<int> finderParts() {
    std::vector<int> parts;
    for (int row = 0; row < size; ++row)
        for (int column = 0; column < size; ++column) {
            const bool left = column < 8, right = column >= size - 8, top = row < 8, bottom = row >= size - 8;
            parts.push_back(left && top ? 0 : right && top ? 1 : left && bottom ? 2 : 3);
        }
    return parts;
}

std::optional<PrintedSymbol> printedTag(const GridSamples& samples, const std::string& text) {
    if (samples.columns != size || samples.rows != size) return std::nullopt;
    const auto word = TagWord::of(text);
    if (!word) return std::nullopt;
    static const auto bits = makeBitPlaces();
    static const auto format = formatPlaces();
    const int mask = likeliestMask(softModules(samples, thresholds[0]));
    const GridPattern& pattern = qrPattern(1);
    PrintedSymbol printed;
    printed.modules.columns = printed.modules.rows = size;
    printed.modules.values.assign(static_cast<std::size_t>(size) * size, 1);
    printed.codewords.assign(static_cast<std::size_t>(size) * size, -1);
    printed.parts = finderParts();
    printed.checks = checks;
    const auto set = [&](Place p, bool dark) {
        printed.modules.values[p.row * size + p.column] = dark ? -1.0f : 1.0f;
    };
    for (int row = 0; row < size; ++row)
        for (int column = 0; column < size; ++column)
            set({column, row}, pattern.at(column, row) < 0);
    for (int i = 0; i < 15; ++i)
        for (const Place& p : format[i])
            set(p, formatBits(mask) >> i & 1);
    for (int i = 0; i < codewords * 8; ++i) {
        const Place& p = bits[i];
        set(p, word->bit(i) != isMasked(mask, p.column, p.row));
        printed.codewords[p.row * size + p.column] = i / 8;
    }
    return printed;
}

std::optional<TagReading> decodeByAgreement(const GridSamples& samples, const TagTest& isTag) {
    // Where no tag lies the best of all words has 0.12 to 0.25 against it, the next hardly more; tags that
    // are read so have 0.03 to 0.15, the next 0.15 to 0.23.
    constexpr float mostAgainst = 0.15f, leastAhead = 0.03f, worthAnotherLook = 0.012f;
    if (samples.columns != size || samples.rows != size || !isTag) return std::nullopt;
    std::optional<TagReading> best;
    float bestAgainst = mostAgainst;
    for (const Threshold& threshold : {Threshold{7, 0.7f}, Threshold{0, 0.7f}}) {
        const GridSamples soft = softModules(samples, threshold);
        const auto found = tagWordDecoder().decode(evidenceOf(soft, likeliestMask(soft)));
        const bool leads = found.nextAgainst > found.against + worthAnotherLook;
        if (found.against < bestAgainst && found.nextAgainst >= found.against + leastAhead) {
            const TagWord word = tagWordOf(found.word);
            const auto text = textOf(word.values);
            if (text && isTag(*text)) {
                bestAgainst = found.against;
                best = TagReading{*text, 0, 0, true, true};
            }
        }
        if (!leads) break;
    }
    return best;
}

std::optional<TagReading> decodeQrTag(const GridSamples& samples, const TagTest& isTag, Mending mending) {
    if (samples.columns != size || samples.rows != size || !isTag) return std::nullopt;
    for (const Threshold& threshold : thresholds) {
        const GridSamples soft = softModules(samples, threshold);
        if (auto reading = decodeWord(soft, likeliestMask(soft), isTag)) return reading;
    }
    return mending == Mending::ByCode ? std::nullopt : decodeByAgreement(samples, isTag);
}

} // namespace scanner::reader

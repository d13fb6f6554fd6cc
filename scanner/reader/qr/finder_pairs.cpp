#include "scanner/reader/qr/finder_pairs.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/qr/finder_template.h"
#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <utility>

namespace scanner::reader {
namespace {

constexpr double side = 14; // modules between finder centres of version 1

/// The mean of two finders' shapes.
ModuleShape meanShape(const Finder& a, const Finder& b) {
    ModuleShape mean{};
    for (std::size_t i = 0; i < mean.size(); ++i)
        mean[i] = (a.shape[i] + b.shape[i]) / 2;
    return mean;
}

Point inPixels(const ModuleShape& shape, Point modules) {
    return {shape[0] * modules.x + shape[1] * modules.y, shape[2] * modules.x + shape[3] * modules.y};
}

Point plus(Point a, Point b, double factor = 1) {
    return {a.x + factor * b.x, a.y + factor * b.y};
}

/// Builds the guess with corner, right and below finder at given places; the unknown one is sought first.
/// Nothing when the two that were found do not look like finders of a symbol that lies so.
std::optional<Homography> guessWith(const ContrastMap& map, std::array<Point, 3> places, int unknown,
                                    int sign) {
    constexpr double leastKnown = 0.3; // mean correlation of the two
    const Point right = plus(places[1], places[0], -1), down = plus(places[2], places[0], -1);
    const FinderTemplate pattern(map, {right.x / side, right.y / side}, {down.x / side, down.y / side});
    const double known =
        sign * (pattern.scoreAt(places[(unknown + 1) % 3]) + pattern.scoreAt(places[(unknown + 2) % 3]));
    if (known < 2 * leastKnown) return std::nullopt;
    places[unknown] = pattern.seek(places[unknown], sign).place;
    return affineThrough({Point{3.5, 3.5}, Point{3.5 + side, 3.5}, Point{3.5, 3.5 + side}}, places);
}

/// The guesses from two finders: as a side of the symbol or its diagonal, either way round.
void addGuesses(const ContrastMap& map, const std::array<int, 2>& indices, const Finder& a, const Finder& b,
                std::vector<PairGuess>& guesses) {
    const ModuleShape shape = meanShape(a, b);
    const Point between = inModules(shape, plus(b.centre, a.centre, -1));
    const double distance = std::hypot(between.x, between.y);
    const auto consider = [&](std::array<Point, 3> places, int unknown) {
        if (const auto guess = guessWith(map, places, unknown, a.negative ? -1 : 1)) {
            const double correlation = correlationOnMap(map, qrPattern(1), *guess, a.negative);
            if (correlation > 0.2)
                guesses.push_back({indices[0], indices[1], *guess, correlation, a.negative});
        }
    };
    const Point turned = inPixels(shape, {-between.y, between.x}); // a quarter turn from right to below
    if (std::abs(std::log(distance / side)) < 0.28) {
        consider({a.centre, b.centre, plus(a.centre, turned)}, 2);
        consider({b.centre, a.centre, plus(b.centre, turned, -1)}, 2);
        consider({a.centre, plus(a.centre, turned, -1), b.centre}, 1);
        consider({b.centre, plus(b.centre, turned), a.centre}, 1);
    } else if (std::abs(std::log(distance / (side * std::numbers::sqrt2))) < 0.28) {
        const Point middle = plus(a.centre, plus(b.centre, a.centre, -1), 0.5);
        consider({plus(middle, turned, -0.5), b.centre, a.centre}, 0);
        consider({plus(middle, turned, 0.5), a.centre, b.centre}, 0);
    }
}

void keepBest(std::vector<PairGuess>& guesses, std::size_t most) {
    std::stable_sort(guesses.begin(), guesses.end(),
                     [](const PairGuess& x, const PairGuess& y) { return x.correlation > y.correlation; });
    if (guesses.size() > most) guesses.resize(most);
}

/// The axes of a finder, right but for quarter turns: its shape turned as the template shows it best.
struct Axes {
    Point right, down;
    double score;
};

Axes axesOf(const ContrastMap& map, const Finder& finder) {
    constexpr int turns = 10; // in a quarter
    const int sign = finder.negative ? -1 : 1;
    Axes best{{}, {}, -1};
    for (int i = 0; i < turns; ++i) {
        const double angle = i * std::numbers::pi / 2 / turns, c = std::cos(angle), s = std::sin(angle);
        const Point right = inPixels(finder.shape, {c, s}), down = inPixels(finder.shape, {-s, c});
        const double score = sign * FinderTemplate(map, right, down).scoreAt(finder.centre);
        if (score > best.score) best = {right, down, score};
    }
    return best;
}

} // namespace

std::vector<PairGuess> guessFromPairs(const ContrastMap& map, const std::vector<Finder>& finders,
                                      std::size_t most, const TimeBudget& budget) {
    std::vector<PairGuess> guesses;
    const int count = static_cast<int>(finders.size());
    for (int i = 0; i < count && !budget.isSpent(); ++i)
        for (int k = i + 1; k < count; ++k) {
            const Finder& a = finders[i];
            const Finder& b = finders[k];
            if (a.negative != b.negative) continue;
            if (std::max(a.module, b.module) > 1.6 * std::min(a.module, b.module)) continue;
            addGuesses(map, {i, k}, a, b, guesses);
        }
    keepBest(guesses, most);
    return guesses;
}

std::vector<PairGuess> guessFromSingles(const ContrastMap& map, const std::vector<Finder>& finders,
                                        std::size_t most, const TimeBudget& budget) {
    constexpr double leastOwn = 0.4, leastOther = 0.3; // correlations
    std::vector<PairGuess> guesses;
    for (int i = 0; i < static_cast<int>(finders.size()) && !budget.isSpent(); ++i) {
        const Finder& finder = finders[i];
        const Axes axes = axesOf(map, finder);
        if (axes.score < leastOwn) continue;
        const FinderTemplate pattern(map, axes.right, axes.down);
        for (const auto& [across, below] :
             {std::pair{1, 0}, {0, 1}, {-1, 0}, {0, -1}, {1, 1}, {-1, 1}, {-1, -1}, {1, -1}}) {
            const Point expected =
                plus(plus(finder.centre, axes.right, side * across), axes.down, side * below);
            const auto sought = pattern.seek(expected, finder.negative ? -1 : 1);
            if (sought.score < leastOther) continue;
            Finder other = finder;
            other.centre = sought.place;
            addGuesses(map, {i, i}, finder, other, guesses);
        }
    }
    keepBest(guesses, most);
    return guesses;
}

} // namespace scanner::reader

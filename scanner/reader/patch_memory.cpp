#include "scanner/reader/patch_memory.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/image/sampling.h"
#include "scanner/reader/image/shift_search.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace scanner::reader {
namespace {

constexpr int side = 24;           // places along the patch
constexpr double settled = 0.0005; // parts of the patch: a step that moves it less is none
constexpr int partsAlong = 4;      // fields of a matrix symbol, each way, that are judged each for itself
constexpr Quad unitSquare{{{0, 0}, {1, 0}, {1, 1}, {0, 1}}};

using Level = PatchLevel;

/// The level on which the steps between places are about a pixel or two.
Level levelFor(const PictureLevels& picture, const Homography& toPicture, double steps) {
    const int level = picture.levelFor(modulePixelsAt(toPicture, {0.5, 0.5}) / steps, 2.0);
    return {picture.levels[level], 1.0 / (1 << level)};
}

float valueAt(const Level& level, const Homography& toPicture, Point place) {
    const Point p = toPicture.map(place);
    return sampleAt(level.picture, p.x * level.scale, p.y * level.scale);
}

bool isMatrix(Symbology symbology) {
    return symbology == Symbology::Qr || symbology == Symbology::DataMatrix;
}

/// A field of a matrix symbol.
int partOf(Point place) {
    const auto part = [](double along) {
        return std::clamp(static_cast<int>(along * partsAlong), 0, partsAlong - 1);
    };
    return part(place.y) * partsAlong + part(place.x);
}

/// Grey values along a row of bars, each the mean of five places of its bar.
std::vector<float> barsAlong(const GreyPicture& picture, const Homography& toPicture) {
    constexpr int fine = 1000; // three a module of a long symbol
    std::vector<float> values(fine);
    for (int i = 0; i < fine; ++i)
        for (double v : {0.2, 0.35, 0.5, 0.65, 0.8})
            values[i] += valueAt({picture, 1}, toPicture, {(i + 0.5) / fine, v}) / 5;
    return values;
}

/// Of a stretch of both rows, when the second is shifted by the fraction of a module where it is most.
float likenessOf(const std::vector<float>& now, const std::vector<float>& then, int from, int count) {
    constexpr int reach = 3;
    float most = -1;
    for (int shift = -reach; shift <= reach; ++shift) {
        Correlation<float> part;
        for (int i = from; i < from + count; ++i)
            part.add(now[i], then[std::clamp(i + shift, 0, static_cast<int>(then.size()) - 1)]);
        most = std::max(most, part.value(1, 1));
    }
    return most;
}

/// The look's every n-th place on a level of the picture, when the patch is shifted.
std::vector<WantedValue> lookAt(const std::vector<Point>& where, const std::vector<float>& look, Point shift,
                                double scale, std::size_t every) {
    std::vector<WantedValue> wanted;
    for (std::size_t i = 0; i < where.size(); i += every)
        wanted.push_back({static_cast<float>((where[i].x + shift.x) * scale),
                          static_cast<float>((where[i].y + shift.y) * scale), look[i]});
    return wanted;
}

} // namespace

PatchMemory::PatchMemory(const PictureLevels& picture, const Quad& corners, Symbology symbology)
    : m_symbology(symbology) {
    const auto toPicture = projectionThrough(unitSquare, corners);
    if (!toPicture) return;
    m_places = marginPlaces();
    double sum = 0, power = 0;
    for (const Point& place : m_places) {
        m_look.push_back(valueAt({picture.full(), 1}, *toPicture, place));
        sum += m_look.back();
    }
    const double mean = sum / static_cast<double>(m_look.size());
    for (float& value : m_look) {
        value -= static_cast<float>(mean);
        power += value * value;
    }
    for (float& value : m_look)
        value /= static_cast<float>(std::sqrt(power + 1e-9));
    if (!isMatrix(symbology)) {
        m_own = barsAlong(picture.full(), *toPicture);
        return;
    }
    m_ownPlaces = ownPlaces(symbology);
    const Level level = levelFor(picture, *toPicture, side);
    for (const Point& place : m_ownPlaces)
        m_own.push_back(valueAt(level, *toPicture, place));
}

/// A grid over the symbol and a margin of an eighth, where the label ends and the likeness is sharpest.
PatchMemory::Places PatchMemory::marginPlaces() {
    Places places;
    for (int y = 0; y < side; ++y)
        for (int x = 0; x < side; ++x)
            places.push_back({1.25 * x / (side - 1) - 0.125, 1.25 * y / (side - 1) - 0.125});
    return places;
}

/// Inside a matrix symbol, without what all symbols of its kind share: finder patterns and borders.
PatchMemory::Places PatchMemory::ownPlaces(Symbology symbology) {
    Places places;
    const bool finders = symbology == Symbology::Qr;
    for (int y = 0; y < 2 * side; ++y)
        for (int x = 0; x < 2 * side; ++x) {
            const Point p{(x + 0.5) / (2 * side), (y + 0.5) / (2 * side)};
            const bool left = p.x<0.4, right = p.x> 0.6, top = p.y<0.4, bottom = p.y> 0.6;
            const bool finder = (left && top) || (right && top) || (left && bottom);
            const bool border = p.x < 0.08 || p.y < 0.08 || p.x > 0.92 || p.y > 0.92;
            if (finders ? !finder : !border) places.push_back(p);
        }
    return places;
}

/// From coarse to fine: by whole pixels of a quarter, half and full size, then by half pixels.
std::optional<Point> PatchMemory::seekShift(const PictureLevels& picture, const Homography& toPicture) const {
    std::vector<Point> where;
    for (const Point& place : m_places)
        where.push_back(toPicture.map(place));
    Point best;
    float most = -1;
    const auto look = [&](int level, int reach, std::size_t every) {
        if (level >= static_cast<int>(picture.levels.size())) return;
        const double pixel = 1 << level;
        const LikelyShift shift =
            likeliestShift(picture.levels[level], lookAt(where, m_look, best, 1 / pixel, every), reach);
        best = {best.x + pixel * shift.x, best.y + pixel * shift.y};
        most = shift.likeness;
    };
    look(2, 11, 5);
    look(1, 2, 3);
    look(0, 1, 1);
    const Point from = best;
    for (double y : {-0.5, 0.0, 0.5})
        for (double x : {-0.5, 0.0, 0.5}) {
            if (x == 0 && y == 0) continue; // as found
            const Point shift{from.x + x, from.y + y};
            const float likeness =
                likeliestShift(picture.full(), lookAt(where, m_look, shift, 1, 1), 0).likeness;
            if (likeness <= most) continue;
            most = likeness;
            best = shift;
        }
    if (most < 0.65f) return std::nullopt;
    return best;
}

/// One Gauss-Newton step towards the look; the likeness before it comes out. False when there is none to
/// make.
bool PatchMemory::step(const PatchLevel& level, Homography& toPicture, double& likeness) const {
    constexpr double apart = 0.5 / side;
    Correlation<double> correlation;
    std::vector<std::array<double, 3>> seen; // value, slopes along the unit square
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const Point p = m_places[i];
        const auto at = [&](double u, double v) {
            return static_cast<double>(valueAt(level, toPicture, {p.x + u, p.y + v}));
        };
        seen.push_back({at(0, 0), (at(apart, 0) - at(-apart, 0)) / (2 * apart),
                        (at(0, apart) - at(0, -apart)) / (2 * apart)});
        correlation.add(seen.back()[0], m_look[i]);
    }
    likeness = correlation.value(1, 1e-6);
    if (!(correlation.spread() > 1)) return false;
    const double gain = correlation.covariance() / correlation.spread(),
                 bias = (correlation.targets - gain * correlation.sum) / correlation.count;
    double normal[36]{}, right[6]{};
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        const double u = m_places[i].x - 0.5, v = m_places[i].y - 0.5, gu = gain * seen[i][1],
                     gv = gain * seen[i][2], residual = m_look[i] - gain * seen[i][0] - bias;
        const double j[6] = {gu * u, gu * v, gu, gv * u, gv * v, gv};
        for (int a = 0; a < 6; ++a) {
            right[a] += j[a] * residual;
            for (int b = 0; b < 6; ++b)
                normal[a * 6 + b] += j[a] * j[b];
        }
    }
    for (int a = 0; a < 6; ++a)
        normal[a * 7] *= 1.001;
    if (!solve(normal, right, 6)) return false;
    // About the middle of the square, and no further than some degrees at once.
    double change = 0;
    for (double& value : right) {
        value = std::clamp(value, -0.1, 0.1);
        change = std::max(change, std::abs(value));
    }
    if (change < settled) return false;
    const Homography centred{{1, 0, 0.5, 0, 1, 0.5, 0, 0, 1}}, back{{1, 0, -0.5, 0, 1, -0.5, 0, 0, 1}};
    const Homography moved{{1 + right[0], right[1], right[2], right[3], 1 + right[4], right[5], 0, 0, 1}};
    toPicture = toPicture * centred * moved * back;
    return true;
}

/// Turned, stretched and shifted a little until it looks most alike.
Homography PatchMemory::refined(const PictureLevels& picture, const Homography& start, double& most) const {
    const Level level = levelFor(picture, start, side);
    Homography now = start, best = start;
    most = -1;
    for (int round = 0; round < 6; ++round) {
        const Homography at = now;
        double likeness = -1;
        const bool goOn = step(level, now, likeness);
        if (likeness > most) {
            most = likeness;
            best = at;
        }
        if (!goOn) break;
    }
    return best;
}

/// Two labels may differ by a character and the check character alone, so each stretch of about a character
/// must be like that remembered. What glare has reached is read again.
bool PatchMemory::hasTheSameBars(const PictureLevels& picture, const Homography& toPicture) const {
    constexpr int stretches = 24;
    const auto now = barsAlong(picture.full(), toPicture);
    const int count = static_cast<int>(now.size()), width = count / stretches;
    for (int from = 0; from + width <= count; from += width / 2)
        if (likenessOf(now, m_own, from, width) < 0.6f) return false;
    return true;
}

/// Labels of one kind share their finders, and those of one maker much of their text; so the symbol's own
/// modules must be nearly as much like those remembered as the whole patch is, and hardly a part of it may
/// be unlike. A part that glare has reached is borne.
bool PatchMemory::saysTheSame(const PictureLevels& picture, const Homography& toPicture,
                              double likeness) const {
    if (!isMatrix(m_symbology)) return hasTheSameBars(picture, toPicture);
    const Level level = levelFor(picture, toPicture, side);
    constexpr int mostUnlike = 1;
    Correlation<float> whole;
    std::array<Correlation<float>, partsAlong * partsAlong> parts;
    for (std::size_t i = 0; i < m_ownPlaces.size(); ++i) {
        const float value = valueAt(level, toPicture, m_ownPlaces[i]);
        whole.add(value, m_own[i]);
        parts[partOf(m_ownPlaces[i])].add(value, m_own[i]);
    }
    const float alike = whole.value(1, 1);
    if (alike <= std::max(0.5, 0.8 * likeness)) return false;
    const auto isUnlike = [&](const Correlation<float>& part) {
        return part.count >= 16 && part.value(1, 1) < 0.4f * alike;
    };
    return std::count_if(parts.begin(), parts.end(), isUnlike) <= mostUnlike;
}

std::optional<Quad> PatchMemory::seek(const PictureLevels& picture, const Quad& corners) const {
    const auto from = projectionThrough(unitSquare, corners);
    if (!from || m_look.empty()) return std::nullopt;
    const auto shift = seekShift(picture, *from);
    if (!shift) return std::nullopt;
    const Homography shifted = Homography{{1, 0, shift->x, 0, 1, shift->y, 0, 0, 1}} * *from;
    double likeness = 0;
    const Homography now = refined(picture, shifted, likeness);
    if (!saysTheSame(picture, now, likeness)) return std::nullopt;
    return cornersOf(now, 1, 1);
}

} // namespace scanner::reader

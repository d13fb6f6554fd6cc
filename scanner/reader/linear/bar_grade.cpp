#include "scanner/reader/linear/bar_grade.h"

#include "scanner/reader/linear/bar_decoder.h"
#include "scanner/reader/linear/bar_profile.h"
#include "scanner/reader/linear/code128.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace scanner::reader {
namespace {

/// 0 at `low` or below, 4 at `high` or above.
double between(double value, double low, double high) {
    return 4 * std::clamp((value - low) / (high - low), 0.0, 1.0);
}

std::optional<BarRegion> regionOf(const Quad& corners) {
    const auto middle = [&](int a, int b) {
        return Point{(corners[a].x + corners[b].x) / 2, (corners[a].y + corners[b].y) / 2};
    };
    const Point left = middle(0, 3), right = middle(1, 2), top = middle(0, 1), bottom = middle(3, 2);
    const double length = std::hypot(right.x - left.x, right.y - left.y),
                 height = std::hypot(bottom.x - top.x, bottom.y - top.y);
    if (!(length > 1) || !(height > 1)) return std::nullopt;
    return BarRegion{{(left.x + right.x) / 2, (left.y + right.y) / 2},
                     {(right.x - left.x) / length, (right.y - left.y) / length},
                     {(bottom.x - top.x) / height, (bottom.y - top.y) / height},
                     length,
                     height};
}

/// Grey levels of a line's paper and ink, without the outermost of either.
struct Levels {
    double paper = 0, ink = 0;
};

Levels levelsOf(const std::vector<float>& values, const BarReading& reading) {
    const int count = static_cast<int>(values.size()),
              from = std::clamp(static_cast<int>(reading.first), 0, count),
              to = std::clamp(static_cast<int>(reading.last), from, count);
    std::vector<float> bars(values.begin() + from, values.begin() + to);
    if (bars.size() < 20) return {};
    const auto at = [&](double part) {
        const auto place =
            bars.begin() + static_cast<std::ptrdiff_t>(part * static_cast<double>(bars.size()));
        std::nth_element(bars.begin(), place, bars.end());
        return static_cast<double>(*place);
    };
    return {at(0.92), at(0.08)};
}

/// Modules beside the bars that are free of anything dark, on the side where they are fewer.
double quietModules(const std::vector<float>& values, const BarReading& reading, const Levels& levels,
                    double module) {
    const double dark = levels.ink + 0.5 * (levels.paper - levels.ink);
    const auto freeFrom = [&](double place, double step) {
        int free = 0;
        for (double x = place + step; x >= 0 && x < static_cast<double>(values.size()); x += step / 2, ++free)
            if (values[static_cast<std::size_t>(x)] < dark) break;
        return free / 2.0;
    };
    return std::min(freeFrom(reading.first, -module), freeFrom(reading.last, module));
}

struct LineGrade {
    double contrast = 0, grade = 0;
};

/// Nullopt: it does not read as that text.
std::optional<LineGrade> gradeOf(const BarProfile& profile, const std::string& text) {
    constexpr double enoughQuiet =
        6; // the standard asks for 10, tilt and the step between two looks take some
    for (const BarReading& reading : BarDecoder(profile.values).read(false)) {
        const auto read = code128TextOf(std::span(reading.characters).first(reading.characters.size() - 1));
        if (!read || read->text != text) continue;
        const Levels levels = levelsOf(profile.values, reading);
        const double modules = 11.0 * static_cast<double>(reading.characters.size()) + 13;
        const double quiet =
            quietModules(profile.values, reading, levels, (reading.last - reading.first) / modules);
        return LineGrade{levels.paper > 0 ? 1 - levels.ink / levels.paper : 0,
                         std::min(between(reading.weakest, 0.62, 0.92), between(quiet, 0, enoughQuiet))};
    }
    return std::nullopt;
}

} // namespace

std::optional<double> barGradeOf(const GreyPicture& picture, const SeenCode& code) {
    constexpr int lines = 8;
    constexpr double faded = 0.15, black = 0.55; // as of modules in a square
    const auto region = regionOf(code.corners);
    if (!region) return std::nullopt;
    double sum = 0, contrast = 0;
    int read = 0;
    for (int line = 0; line < lines; ++line) {
        const double offset = 0.8 * ((line + 0.5) / lines - 0.5) * region->height;
        const BarProfile profile = profileOf(
            picture, *region, offset, std::max(1.0, 0.8 * region->height / lines), 0.1 * region->length);
        const auto grade = gradeOf(profile, code.text);
        if (!grade) continue;
        ++read;
        sum += grade->grade;
        contrast += grade->contrast;
    }
    if (read == 0) return std::nullopt;
    return std::min(sum / lines, between(contrast / read, faded, black));
}

} // namespace scanner::reader

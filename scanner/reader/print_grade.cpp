#include "scanner/reader/print_grade.h"

#include "scanner/reader/data_matrix/data_matrix.h"
#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/linear/bar_grade.h"
#include "scanner/reader/qr/qr_pattern.h"
#include "scanner/reader/qr/qr_tag_decoder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace scanner::reader {
namespace {

/// What a module's grey value may be made of besides the print's own state: the paper, the module, what its
/// neighbours blur into it, and light that falls off.
constexpr int causes = 6;
using Causes = std::array<double, causes>;

Causes causesOf(const GridSamples& printed, int column, int row) {
    const auto at = [&](int c, int r) {
        const bool inside = c >= 0 && r >= 0 && c < printed.columns && r < printed.rows;
        return inside ? static_cast<double>(printed.at(c, r)) : 1.0; // the quiet zone is light
    };
    const double beside =
        at(column - 1, row) + at(column + 1, row) + at(column, row - 1) + at(column, row + 1);
    const double corners =
        at(column - 1, row - 1) + at(column + 1, row - 1) + at(column - 1, row + 1) + at(column + 1, row + 1);
    return {1,
            at(column, row),
            beside / 4,
            corners / 4,
            static_cast<double>(column) / printed.columns - 0.5,
            static_cast<double>(row) / printed.rows - 0.5};
}

double sumOf(const Causes& weights, const Causes& parts) {
    double sum = 0;
    for (int i = 0; i < causes; ++i)
        sum += weights[i] * parts[i];
    return sum;
}

/// Least squares; `off` of the last round makes what does not follow count little.
bool fit(const GridSamples& samples, const GridSamples& printed, Causes& weights, double slack) {
    double left[causes * causes]{}, right[causes]{};
    for (int row = 0; row < samples.rows; ++row)
        for (int column = 0; column < samples.columns; ++column) {
            const Causes parts = causesOf(printed, column, row);
            const double seen = samples.at(column, row), off = (seen - sumOf(weights, parts)) / slack;
            const double weight = slack > 0 ? 1 / (1 + off * off) : 1;
            for (int a = 0; a < causes; ++a) {
                right[a] += weight * parts[a] * seen;
                for (int b = 0; b < causes; ++b)
                    left[a * causes + b] += weight * parts[a] * parts[b];
            }
        }
    for (int a = 0; a < causes; ++a)
        left[a * causes + a] *= 1.0001;
    if (!solve(left, right, causes)) return false;
    std::copy(right, right + causes, weights.begin());
    return true;
}

/// Where grades 0 to 4 begin; between them in parts.
double gradeBySteps(double value, const std::array<double, 5>& steps) {
    for (std::size_t i = 1; i < steps.size(); ++i)
        if (value < steps[i]) {
            const double part = (value - steps[i - 1]) / (steps[i] - steps[i - 1]);
            return static_cast<double>(i - 1) + std::max(0.0, part);
        }
    return 4;
}

/// ISO/IEC 15415's steps for unused error correction.
double stepGrade(double unused) {
    return gradeBySteps(unused, {0, 0.25, 0.37, 0.50, 0.62});
}

/// Of what is left of a finder or a side of the border: a side that loses a quarter is about to be
/// overlooked.
double frameGrade(double left) {
    return gradeBySteps(left, {0.75, 0.83, 0.87, 0.91, 1});
}

/// The left, lower, upper and right side of the border.
std::vector<int> borderParts(int modules) {
    std::vector<int> parts;
    for (int row = 0; row < modules; ++row)
        for (int column = 0; column < modules; ++column)
            parts.push_back(column == 0 ? 0 : row == modules - 1 ? 1 : row == 0 ? 2 : 3);
    return parts;
}

/// How much of each part has gone.
class PartLosses {
public:
    void add(int part, double gone) {
        ++m_parts[part].count;
        m_parts[part].gone += gone;
    }
    double worst() const {
        double worst = 0;
        for (const Part& part : m_parts)
            if (part.count > 0) worst = std::max(worst, part.gone / part.count);
        return worst;
    }

private:
    struct Part {
        int count = 0;
        double gone = 0;
    };
    std::array<Part, 4> m_parts;
};

std::optional<PrintedSymbol> printedMatrix(const GridSamples& samples) {
    const auto sizes = matrixSizes();
    const auto size = std::find_if(sizes.begin(), sizes.end(),
                                   [&](const MatrixSize& each) { return each.modules == samples.columns; });
    if (size == sizes.end()) return std::nullopt;
    const auto reading = mendMatrix(softModules(samples, {7, 0}), *size, 0, size->checks - 3);
    if (!reading) return std::nullopt;
    return PrintedSymbol{reading->modules, matrixCodewords(*size), borderParts(size->modules), size->checks};
}

/// The grid where the code was read, seen again.
std::optional<GridSamples> seenAgain(const PictureLevels& picture, const GridPattern& pattern,
                                     const Quad& corners, double& correlation) {
    const double width = pattern.columns, height = pattern.rows;
    const auto guess = rectangleTo(corners, width, height);
    if (!guess) return std::nullopt;
    const GridFit grid = fitGrid(picture, pattern, *guess, false);
    correlation = grid.correlation;
    const auto mapping = [&](double u, double v) { return grid.toPicture.map(u, v); };
    return sampleGrid(picture, mapping, modulePixelsAt(grid.toPicture, {width / 2, height / 2}),
                      pattern.columns, pattern.rows, false);
}

} // namespace

double PrintWear::grade() const {
    constexpr double faded = 0.15, black = 0.55; // black ink on white paper shows 0.6 to 0.85
    const double ink = 4 * std::clamp((contrast - faded) / (black - faded), 0.0, 1.0);
    return std::max(0.0,
                    std::min({ink, stepGrade(unused), 0.5 + 0.875 * stepGrade(firm), frameGrade(1 - fixed)}));
}

PrintWear wearOf(const GridSamples& samples, const PrintedSymbol& printed) {
    Causes weights{};
    if (!fit(samples, printed.modules, weights, 0)) return {};
    for (int round = 0; round < 3; ++round)
        if (!fit(samples, printed.modules, weights, std::max(4.0, std::abs(weights[1]) / 2))) return {};
    const double half = weights[1] + weights[2] + weights[3]; // from grey to all light or all dark
    const double paper = weights[0] + half;
    if (half <= 0 || paper <= 0) return {};
    std::set<int> gone, failing;
    PartLosses fixed;
    for (int row = 0; row < samples.rows; ++row)
        for (int column = 0; column < samples.columns; ++column) {
            const int codeword = printed.codewords[row * samples.columns + column];
            const double off =
                samples.at(column, row) - sumOf(weights, causesOf(printed.modules, column, row));
            const double towards =
                (printed.modules.at(column, row) < 0 ? off : -off) / half; // 2: the other colour
            if (codeword < 0) {
                fixed.add(printed.parts[row * samples.columns + column],
                          std::clamp((towards - 0.3) / 0.7, 0.0, 1.0));
                continue;
            }
            if (towards > 1) gone.insert(codeword);
            if (towards > 0.6) failing.insert(codeword);
        }
    const auto left = [&](const std::set<int>& lost) {
        return 1 - 2.0 * static_cast<double>(lost.size()) / printed.checks;
    };
    return {std::clamp(2 * half / paper, 0.0, 1.0), left(gone), left(failing), fixed.worst()};
}

std::optional<double> printGradeOf(const PictureLevels& picture, const SeenCode& code) {
    constexpr double leastCorrelation = 0.45;
    if (code.symbology == Symbology::Code128) return barGradeOf(picture.full(), code);
    const bool qr = code.symbology == Symbology::Qr;
    if (!qr && code.symbology != Symbology::DataMatrix) return std::nullopt;
    double correlation = 0;
    if (qr) {
        const auto samples = seenAgain(picture, qrPattern(1), code.corners, correlation);
        if (!samples || correlation < leastCorrelation) return std::nullopt;
        const auto printed = printedTag(*samples, code.text);
        return printed ? std::optional(wearOf(*samples, *printed).grade()) : std::nullopt;
    }
    for (const MatrixSize& size : matrixSizes()) {
        const auto samples = seenAgain(picture, matrixPattern(size.modules), code.corners, correlation);
        if (!samples || correlation < leastCorrelation) continue;
        if (const auto printed = printedMatrix(*samples)) return wearOf(*samples, *printed).grade();
    }
    return std::nullopt;
}

} // namespace scanner::reader

#include "scanner/reader/linear/bar_regions.h"

#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace scanner::reader {
namespace {

constexpr int cell = 8;
constexpr std::size_t mostRegions = 40;

using Tensor = BarCells::Tensor;

float energyOf(const Tensor& t) {
    return t.xx + t.yy;
}

float coherenceOf(const Tensor& t) {
    const float difference = t.xx - t.yy;
    return energyOf(t) > 0 ? std::sqrt(difference * difference + 4 * t.xy * t.xy) / energyOf(t) : 0;
}

/// Direction of the gradient, -pi/2 to pi/2.
double angleOf(const Tensor& t) {
    return 0.5 * std::atan2(2 * t.xy, t.xx - t.yy);
}

/// A cell's gradients, row by row.
struct CellGradients {
    std::int16_t dx[cell * cell], dy[cell * cell];
};

using EightBytes __attribute__((vector_size(8))) = std::uint8_t;
using EightShorts __attribute__((vector_size(16))) = std::int16_t;

EightBytes eightAt(const std::uint8_t* pixels) {
    EightBytes eight;
    std::memcpy(&eight, pixels, sizeof eight);
    return eight;
}

/// Of one row of pixels, row `y` of its cells. The pixel before the first and the one after the last are
/// read, too: in the middle rows of a picture they are the neighbouring rows'.
void keepGradients(const std::uint8_t* above, const std::uint8_t* row, const std::uint8_t* below, int columns,
                   int y, CellGradients* cells) {
    static_assert(cell == 8);
    for (int c = 0; c < columns; ++c) {
        const int x = c * cell;
        const auto less = [](EightBytes a, EightBytes b) {
            return __builtin_convertvector(a, EightShorts) - __builtin_convertvector(b, EightShorts);
        };
        const EightShorts dx = less(eightAt(row + x + 1), eightAt(row + x - 1)),
                          dy = less(eightAt(below + x), eightAt(above + x));
        std::memcpy(&cells[c].dx[y * cell], &dx, sizeof dx);
        std::memcpy(&cells[c].dy[y * cell], &dy, sizeof dy);
    }
}

SCANNER_VECTORISED std::int32_t sumOfProducts(const std::int16_t* a, const std::int16_t* b) {
    std::int32_t sum = 0;
    for (int i = 0; i < cell * cell; ++i)
        sum += a[i] * b[i];
    return sum;
}

/// Each cell with its eight neighbours.
BarCells spread(const BarCells& grid) {
    BarCells result = grid;
    for (int r = 0; r < grid.rows; ++r)
        for (int c = 0; c < grid.columns; ++c) {
            Tensor sum;
            for (int y = std::max(0, r - 1); y <= std::min(grid.rows - 1, r + 1); ++y)
                for (int x = std::max(0, c - 1); x <= std::min(grid.columns - 1, c + 1); ++x) {
                    const Tensor& t = grid.cells[y * grid.columns + x];
                    sum.xx += t.xx;
                    sum.xy += t.xy;
                    sum.yy += t.yy;
                }
            result.cells[r * grid.columns + c] = sum;
        }
    return result;
}

double turnBetween(double a, double b) {
    const double d = std::abs(std::remainder(a - b, 3.14159265358979));
    return d;
}

class RegionGrower {
public:
    /// Of cells with at least this energy.
    RegionGrower(const BarCells& grid, float leastEnergy)
        : m_grid(grid)
        , m_state(grid.cells.size(), 0) {
        m_angle.resize(grid.cells.size());
        for (std::size_t i = 0; i < grid.cells.size(); ++i) {
            const Tensor& t = grid.cells[i];
            if (energyOf(t) < leastEnergy || coherenceOf(t) < 0.55f) continue;
            m_state[i] = 1;
            m_angle[i] = angleOf(t);
        }
    }

    std::vector<std::vector<int>> regions() {
        constexpr std::size_t fewestCells = 8;
        std::vector<std::vector<int>> found;
        for (std::size_t i = 0; i < m_state.size(); ++i) {
            if (m_state[i] != 1) continue;
            auto cells = grow(static_cast<int>(i));
            if (cells.size() >= fewestCells) found.push_back(std::move(cells));
        }
        return found;
    }

private:
    std::vector<int> grow(int seed) {
        std::vector<int> cells{seed};
        m_state[seed] = 2;
        for (std::size_t k = 0; k < cells.size(); ++k) {
            const int r = cells[k] / m_grid.columns, c = cells[k] % m_grid.columns;
            for (int y = std::max(0, r - 1); y <= std::min(m_grid.rows - 1, r + 1); ++y)
                for (int x = std::max(0, c - 1); x <= std::min(m_grid.columns - 1, c + 1); ++x) {
                    const int next = y * m_grid.columns + x;
                    if (m_state[next] != 1 || turnBetween(m_angle[next], m_angle[cells[k]]) > 0.2) continue;
                    m_state[next] = 2;
                    cells.push_back(next);
                }
        }
        return cells;
    }

    const BarCells& m_grid;
    std::vector<std::uint8_t> m_state;
    std::vector<double> m_angle;
};

/// The row direction: where the cells lie, if they lie stretched out and not far off the gradient; else the
/// gradient.
Point rowDirection(const std::vector<Point>& centres, Point middle, Point gradient) {
    double xx = 0, xy = 0, yy = 0;
    for (const Point& p : centres) {
        xx += (p.x - middle.x) * (p.x - middle.x);
        xy += (p.x - middle.x) * (p.y - middle.y);
        yy += (p.y - middle.y) * (p.y - middle.y);
    }
    const double angle = 0.5 * std::atan2(2 * xy, xx - yy);
    const double root = std::hypot(xx - yy, 2 * xy),
                 stretch = (xx + yy + root) / std::max(1e-9, xx + yy - root);
    Point axis{std::cos(angle), std::sin(angle)};
    const double cosine = axis.x * gradient.x + axis.y * gradient.y;
    if (cosine < 0) axis = {-axis.x, -axis.y};
    return stretch > 2.5 && std::abs(cosine) > 0.8 ? axis : gradient;
}

BarRegion regionOf(const BarCells& raw, const std::vector<int>& cells) {
    Tensor sum;
    Point middle;
    std::vector<Point> centres;
    for (int i : cells) {
        sum.xx += raw.cells[i].xx;
        sum.xy += raw.cells[i].xy;
        sum.yy += raw.cells[i].yy;
        centres.push_back({(i % raw.columns + 0.5) * cell, (i / raw.columns + 0.5) * cell});
        middle.x += centres.back().x / static_cast<double>(cells.size());
        middle.y += centres.back().y / static_cast<double>(cells.size());
    }
    const Point gradient{std::cos(angleOf(sum)), std::sin(angleOf(sum))};
    BarRegion region;
    region.upright = {-gradient.y, gradient.x};
    region.along = rowDirection(centres, middle, gradient);
    const double area = region.along.x * region.upright.y - region.along.y * region.upright.x;
    std::vector<double> a, b;
    for (const Point& p : centres) {
        const double dx = p.x - middle.x, dy = p.y - middle.y;
        a.push_back((dx * region.upright.y - dy * region.upright.x) / area);
        b.push_back((region.along.x * dy - region.along.y * dx) / area);
    }
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    const std::size_t trim = cells.size() / 20;
    const double left = a.front(), right = a.back(), low = b[trim], high = b[b.size() - 1 - trim];
    region.length = right - left + cell;
    region.height = high - low + cell;
    const double ma = (left + right) / 2, mb = (low + high) / 2;
    region.centre = {middle.x + ma * region.along.x + mb * region.upright.x,
                     middle.y + ma * region.along.y + mb * region.upright.y};
    return region;
}

/// What a search asks of a cell: a mean square of its gradients, in grey levels over two pixels.
float leastEnergyOf(BarSearch search) {
    constexpr float pixels = cell * cell;
    switch (search) {
    case BarSearch::Faint:
        return 9 * pixels * 6;
    case BarSearch::Parted:
        return pixels * 100;
    default:
        return 9 * pixels * 25;
    }
}

} // namespace

BarCells barCellsOf(const GreyPicture& picture) {
    BarCells grid{picture.width / cell, picture.height / cell, {}};
    if (grid.columns == 0 || grid.rows == 0) return grid;
    grid.cells.resize(static_cast<std::size_t>(grid.columns) * grid.rows);
    std::vector<CellGradients> gradients(grid.columns);
    for (int row = 0; row < grid.rows; ++row) {
        std::fill(gradients.begin(), gradients.end(), CellGradients{});
        for (int y = std::max(1, row * cell); y < std::min(picture.height - 1, row * cell + cell); ++y) {
            keepGradients(picture.row(y - 1), picture.row(y), picture.row(y + 1), grid.columns, y % cell,
                          gradients.data());
            gradients.front().dx[y % cell * cell] = gradients.front().dy[y % cell * cell] = 0;
            if (grid.columns * cell == picture.width) {
                const int last = y % cell * cell + cell - 1;
                gradients.back().dx[last] = gradients.back().dy[last] = 0;
            }
        }
        for (int column = 0; column < grid.columns; ++column) {
            const CellGradients& g = gradients[column];
            grid.cells[row * grid.columns + column] = {static_cast<float>(sumOfProducts(g.dx, g.dx)),
                                                       static_cast<float>(sumOfProducts(g.dx, g.dy)),
                                                       static_cast<float>(sumOfProducts(g.dy, g.dy))};
        }
    }
    return grid;
}

std::vector<BarRegion> findBarRegions(const BarCells& raw, BarSearch search) {
    if (raw.cells.empty()) return {};
    const BarCells grid = search == BarSearch::Parted ? raw : spread(raw);
    std::vector<BarRegion> regions;
    for (const auto& cells : RegionGrower(grid, leastEnergyOf(search)).regions()) {
        const BarRegion region = regionOf(raw, cells);
        if (region.length >= 48 && region.height >= 12) regions.push_back(region);
    }
    std::stable_sort(regions.begin(), regions.end(), [](const BarRegion& a, const BarRegion& b) {
        return a.length * a.height > b.length * b.height;
    });
    if (regions.size() > mostRegions) regions.resize(mostRegions);
    return regions;
}

} // namespace scanner::reader

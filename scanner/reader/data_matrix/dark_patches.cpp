#include "scanner/reader/data_matrix/dark_patches.h"

#include "scanner/reader/image/byte_search.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>

namespace scanner::reader {
namespace {

constexpr int clearlyDark = 6; // grey levels
constexpr int smallestSide = 9, largestSide = 420;
constexpr std::size_t mostPatches = 60;

/// One byte a pixel, 255 for dark.
struct Mask {
    int width, height;
    std::vector<std::uint8_t> values;

    std::uint8_t* row(int y) { return values.data() + static_cast<std::ptrdiff_t>(y) * width; }
    const std::uint8_t* row(int y) const { return values.data() + static_cast<std::ptrdiff_t>(y) * width; }
};

SCANNER_VECTORISED void threshold(const std::int8_t* in, std::uint8_t* out, std::size_t n, int sign) {
    for (std::size_t i = 0; i < n; ++i)
        out[i] = sign * in[i] < -clearlyDark ? 255 : 0;
}

SCANNER_VECTORISED void orInto(std::uint8_t* to, const std::uint8_t* from, int n) {
    for (int i = 0; i < n; ++i)
        to[i] |= from[i];
}

SCANNER_VECTORISED void andInto(std::uint8_t* to, const std::uint8_t* from, int n) {
    for (int i = 0; i < n; ++i)
        to[i] &= from[i];
}

/// Widens (or narrows) by `reach` pixels in the eight directions' square.
void spread(Mask& mask, int reach, bool widen) {
    const auto combine = widen ? orInto : andInto;
    Mask across = mask;
    for (int y = 0; y < mask.height; ++y)
        for (int k = 1; k <= std::min(reach, mask.width - 1); ++k) {
            combine(across.row(y), mask.row(y) + k, mask.width - k);
            combine(across.row(y) + k, mask.row(y), mask.width - k);
        }
    mask = across;
    for (int y = 0; y < mask.height; ++y)
        for (int k = -reach; k <= reach; ++k)
            if (k != 0 && y + k >= 0 && y + k < mask.height)
                combine(mask.row(y), across.row(y + k), mask.width);
}

/// A stretch of dark pixels in a row; `patch` is the index of its patch.
struct Run {
    int y, from, to, patch;
};

struct Box {
    int left = std::numeric_limits<int>::max(), right = 0, top = std::numeric_limits<int>::max(), bottom = 0;

    void add(const Run& run) {
        left = std::min(left, run.from);
        right = std::max(right, run.to);
        top = std::min(top, run.y);
        bottom = std::max(bottom, run.y + 1);
    }
    bool isPlausible() const {
        const int wide = right - left, high = bottom - top;
        return std::min(wide, high) >= smallestSide && std::max(wide, high) <= largestSide;
    }
};

/// Connected runs by union-find, row by row.
class Patches {
public:
    explicit Patches(const Mask& mask) {
        std::size_t above = 0, aboveEnd = 0;
        for (int y = 0; y < mask.height; ++y) {
            const std::size_t begin = m_runs.size();
            addRow(mask.row(y), mask.width, y);
            join(above, aboveEnd, begin);
            above = begin;
            aboveEnd = m_runs.size();
        }
    }

    /// The runs of each patch of a size that a symbol may have, top to bottom; grain gives thousands more.
    std::vector<std::vector<Run>> collect() {
        std::vector<Box> boxes(m_runs.size());
        for (std::size_t i = 0; i < m_runs.size(); ++i)
            boxes[rootOf(static_cast<int>(i))].add(m_runs[i]);
        std::vector<int> index(m_runs.size(), -1);
        std::vector<std::vector<Run>> patches;
        for (Run& run : m_runs) {
            const int root = rootOf(run.patch);
            if (!boxes[root].isPlausible()) continue;
            if (index[root] < 0) {
                index[root] = static_cast<int>(patches.size());
                patches.emplace_back();
            }
            patches[index[root]].push_back(run);
        }
        return patches;
    }

private:
    void addRow(const std::uint8_t* row, int width, int y) {
        for (int x = 0; x < width;) {
            x = firstUnlike(row, x, width, 0, 255);
            const int from = x;
            x = firstUnlike(row, x, width, 255, 255);
            if (x > from) m_runs.push_back({y, from, x, static_cast<int>(m_runs.size())});
        }
    }

    void join(std::size_t above, std::size_t aboveEnd, std::size_t begin) {
        for (std::size_t i = begin; i < m_runs.size(); ++i) {
            while (above < aboveEnd && m_runs[above].to < m_runs[i].from)
                ++above;
            for (std::size_t k = above; k < aboveEnd && m_runs[k].from <= m_runs[i].to; ++k)
                m_runs[rootOf(static_cast<int>(i))].patch = rootOf(static_cast<int>(k));
        }
    }

    int rootOf(int i) {
        while (m_runs[i].patch != i)
            i = m_runs[i].patch = m_runs[m_runs[i].patch].patch;
        return i;
    }

    std::vector<Run> m_runs;
};

double cross(Point o, Point a, Point b) {
    return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

/// Convex hull of a patch, clockwise on the screen: the rows come in order, so the right side is wrapped
/// going down and the left side going up.
std::vector<Point> hullOf(const std::vector<Run>& runs) {
    std::vector<Point> left, right;
    for (std::size_t i = 0; i < runs.size();) {
        const int y = runs[i].y;
        int from = runs[i].from, to = runs[i].to;
        for (; i < runs.size() && runs[i].y == y; ++i) {
            from = std::min(from, runs[i].from);
            to = std::max(to, runs[i].to);
        }
        for (double edge : {y + 0.0, y + 1.0}) {
            left.push_back({static_cast<double>(from), edge});
            right.push_back({static_cast<double>(to), edge});
        }
    }
    const auto wrap = [](const std::vector<Point>& chain) {
        std::vector<Point> kept;
        for (const Point& p : chain) {
            while (kept.size() >= 2 && cross(kept[kept.size() - 2], kept.back(), p) <= 0)
                kept.pop_back();
            kept.push_back(p);
        }
        return kept;
    };
    std::reverse(left.begin(), left.end());
    std::vector<Point> hull = wrap(right);
    const auto rising = wrap(left);
    hull.insert(hull.end(), rising.begin(), rising.end());
    return hull;
}

/// Drops the corners that matter least until few are left, so that the search for the best four is short.
void simplify(std::vector<Point>& hull, std::size_t most) {
    while (hull.size() > most) {
        std::size_t least = 0;
        double smallest = 1e18;
        for (std::size_t i = 0; i < hull.size(); ++i) {
            const double area = std::abs(
                cross(hull[(i + hull.size() - 1) % hull.size()], hull[i], hull[(i + 1) % hull.size()]));
            if (area < smallest) {
                smallest = area;
                least = i;
            }
        }
        hull.erase(hull.begin() + static_cast<std::ptrdiff_t>(least));
    }
}

double areaOf(const std::vector<Point>& polygon) {
    double area = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point a = polygon[i], b = polygon[(i + 1) % polygon.size()];
        area += (a.x * b.y - b.x * a.y) / 2;
    }
    return area;
}

/// The four corners of the hull that span most.
Quad largestQuad(const std::vector<Point>& hull, double& area) {
    const int n = static_cast<int>(hull.size());
    Quad best{};
    area = 0;
    for (int i = 0; i < n; ++i)
        for (int k = i + 2; k < n; ++k) {
            double one = 0, other = 0;
            int a = -1, b = -1;
            for (int m = i + 1; m < k; ++m)
                if (const double size = std::abs(cross(hull[i], hull[m], hull[k])); size > one) {
                    one = size;
                    a = m;
                }
            for (int m = k + 1; m < n + i; ++m)
                if (const double size = std::abs(cross(hull[k], hull[m % n], hull[i])); size > other) {
                    other = size;
                    b = m % n;
                }
            if (a < 0 || b < 0 || (one + other) / 2 <= area) continue;
            area = (one + other) / 2;
            best = {hull[i], hull[a], hull[k], hull[b]};
        }
    return best;
}

bool isPlausible(const Quad& quad, double area, double hullArea) {
    double shortest = 1e9, longest = 0;
    for (int i = 0; i < 4; ++i) {
        const double side = std::hypot(quad[(i + 1) % 4].x - quad[i].x, quad[(i + 1) % 4].y - quad[i].y);
        shortest = std::min(shortest, side);
        longest = std::max(longest, side);
    }
    return area > 0.72 * hullArea && shortest >= smallestSide && longest <= 3.2 * shortest;
}

} // namespace

std::vector<Quad> findDarkPatches(const ContrastMap& map, int reach, bool negative) {
    Mask mask{map.width, map.height, std::vector<std::uint8_t>(map.values.size())};
    threshold(map.values.data(), mask.values.data(), map.values.size(), negative ? -1 : 1);
    spread(mask, reach, true);
    spread(mask, reach, false);
    std::vector<std::pair<double, Quad>> found;
    for (const auto& runs : Patches(mask).collect()) {
        auto hull = hullOf(runs);
        const double hullArea = areaOf(hull);
        simplify(hull, 20);
        double area = 0;
        const Quad quad = largestQuad(hull, area);
        if (isPlausible(quad, area, hullArea)) found.push_back({area, quad});
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    if (found.size() > mostPatches) found.resize(mostPatches);
    std::vector<Quad> quads;
    for (const auto& [area, quad] : found)
        quads.push_back(quad);
    return quads;
}

} // namespace scanner::reader

#include "scanner/reader/data_matrix/dark_patches.h"

#include "scanner/reader/image/bit_mask.h"

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

/// A stretch of dark pixels in a row. `patch`: while patches are joined, the index of an earlier stretch of
/// its patch, or its own if it is the first; then the number of its patch.
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
    explicit Patches(const BitMask& mask) {
        std::size_t above = 0, aboveEnd = 0;
        for (int y = 0; y < mask.height(); ++y) {
            const std::size_t begin = m_runs.size();
            forEachRun(mask.row(y), mask.words(), [&](int from, int to) {
                m_runs.push_back({y, from, to, static_cast<int>(m_runs.size())});
            });
            join(above, aboveEnd, begin);
            above = begin;
            aboveEnd = m_runs.size();
        }
    }

    /// The runs of each patch of a size that a symbol may have, top to bottom; grain gives thousands more.
    std::vector<std::vector<Run>> collect() {
        std::vector<Box> boxes;
        for (Run& run : m_runs) { // `patch` becomes the number of its patch
            const bool isFirst = &m_runs[run.patch] == &run;
            run.patch = isFirst ? static_cast<int>(boxes.size()) : m_runs[run.patch].patch;
            if (isFirst) boxes.emplace_back();
            boxes[run.patch].add(run);
        }
        std::vector<int> index(boxes.size(), -1);
        std::vector<std::vector<Run>> patches;
        for (const Run& run : m_runs) {
            if (!boxes[run.patch].isPlausible()) continue;
            if (index[run.patch] < 0) {
                index[run.patch] = static_cast<int>(patches.size());
                patches.emplace_back();
            }
            patches[index[run.patch]].push_back(run);
        }
        return patches;
    }

private:
    void join(std::size_t above, std::size_t aboveEnd, std::size_t begin) {
        for (std::size_t i = begin; i < m_runs.size(); ++i) {
            while (above < aboveEnd && m_runs[above].to < m_runs[i].from)
                ++above;
            for (std::size_t k = above; k < aboveEnd && m_runs[k].from <= m_runs[i].to; ++k) {
                const auto [first, later] =
                    std::minmax({rootOf(static_cast<int>(i)), rootOf(static_cast<int>(k))});
                m_runs[later].patch = first;
            }
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
    BitMask mask = negative ? lightPixels(map, clearlyDark) : darkPixels(map, clearlyDark);
    mask.close(reach);
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

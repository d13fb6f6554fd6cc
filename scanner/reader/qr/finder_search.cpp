#include "scanner/reader/qr/finder_search.h"

#include "scanner/reader/image/bit_mask.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/image/sampling.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace scanner::reader {
namespace {

constexpr int noise = 2; // grey levels
constexpr int rayCount = 24;
constexpr int raysNeeded = 11;
constexpr std::size_t mostFinders = 150;
constexpr double smallestModule = 0.8, largestModule = 7;

/// Rays in rounds, each between those of the ones before, and how many must have shown the edges by then:
/// most places where a line shows the ratio are none, and few rays tell.
struct RayRound {
    int first, step, fewest;
};
constexpr RayRound rayRounds[] = {{0, 4, 1}, {2, 4, 3}, {1, 4, 6}, {3, 4, raysNeeded}};

/// A place where a line shows the ratio.
struct Hit {
    float x, y, module;
    bool negative;
};

/// Where a line crosses its surroundings' mean, between pixels; every second crossing leads into the dark.
struct Crossings {
    std::vector<float> at;
    bool firstIntoDark = false;
};

/// One over each number: two grey levels of a map lie up to 254 apart.
constexpr std::array<float, 255> reciprocals = [] {
    std::array<float, 255> over{};
    for (std::size_t i = 1; i < over.size(); ++i)
        over[i] = 1.0f / static_cast<float>(i);
    return over;
}();

/// Between the middles of two pixels, of which one is light and one dark: how far from the first the grey
/// level crosses 0, from 0 to 1. Asked for each edge of a picture, so it does not divide.
float crossingBetween(int first, int second) {
    return static_cast<float>(std::abs(first)) * reciprocals[std::abs(first - second)];
}

/// The crossings of a line of `n` pixels. `dark`, `light`: of each pixel whether it is so beyond noise, in
/// `words` words.
void findCrossings(const std::int8_t* line, int n, const std::uint64_t* dark, const std::uint64_t* light,
                   int words, Crossings& out) {
    out.at.clear();
    bool isLight = line[0] >= 0;
    out.firstIntoDark = isLight;
    for (int x = firstSet(isLight ? dark : light, words, 1); x < n;
         x = firstSet(isLight ? dark : light, words, x + 1)) {
        int before = x - 1;
        while (before > 0 && (isLight ? line[before] < 0 : line[before] >= 0))
            --before;
        out.at.push_back(static_cast<float>(before) + 0.5f + crossingBetween(line[before], line[before + 1]));
        isLight = !isLight;
    }
}

/// Module width if six successive crossings show 1:1:3:1:1, else 0. Like edges are compared, which uneven
/// light and spreading ink do not shift against each other.
float ratioModule(const float* e) {
    const float module = (e[4] - e[0] + e[5] - e[1]) / 12.0f;
    if (module < smallestModule || module > largestModule) return 0;
    const float slack = 0.5f * module + 0.25f;
    const auto near = [&](float length, float modules) {
        return std::abs(length - modules * module) < slack;
    };
    const bool like =
        near(e[2] - e[0], 2) && near(e[3] - e[1], 4) && near(e[4] - e[2], 4) && near(e[5] - e[3], 2);
    const bool core = std::abs(e[3] - e[2] - 3 * module) < 1.1f * module;
    const float thinnest = std::min({e[1] - e[0], e[2] - e[1], e[4] - e[3], e[5] - e[4]});
    return like && core && thinnest > 0.25f * module ? module : 0;
}

void findHits(const ContrastMap& map, bool columns, std::vector<Hit>& hits) {
    const BitMask dark = darkPixels(map, noise), light = lightPixels(map, noise);
    Crossings crossings;
    for (int y = 0; y < map.height; ++y) {
        findCrossings(map.row(y), map.width, dark.row(y), light.row(y), dark.words(), crossings);
        const auto& at = crossings.at;
        for (std::size_t i = 0; i + 5 < at.size(); ++i) {
            const float module = ratioModule(at.data() + i);
            if (module <= 0) continue;
            const bool intoDark = crossings.firstIntoDark == (i % 2 == 0);
            const float along = (at[i] + at[i + 1] + at[i + 2] + at[i + 3] + at[i + 4] + at[i + 5]) / 6;
            const float across = static_cast<float>(y) + 0.5f;
            hits.push_back({columns ? across : along, columns ? along : across, module, !intoDark});
        }
    }
}

struct Cluster {
    float x, y, module;
    bool negative;
    int hits;
};

/// Joins hits of both directions that tell of the same centre; a grid of cells keeps it linear.
class Clustering {
public:
    Clustering(int width, int height)
        : m_columns(width / cell + 1)
        , m_cells(m_columns * (height / cell + 1)) {}

    void add(const Hit& hit) {
        const int cx = static_cast<int>(hit.x) / cell, cy = static_cast<int>(hit.y) / cell;
        Cluster* best = nearest(hit, cx, cy);
        if (best == nullptr) {
            m_cells[cy * m_columns + cx].push_back(static_cast<int>(m_clusters.size()));
            m_clusters.push_back({hit.x, hit.y, hit.module, hit.negative, 1});
            return;
        }
        const float part = 1.0f / static_cast<float>(++best->hits);
        best->x += (hit.x - best->x) * part;
        best->y += (hit.y - best->y) * part;
        best->module += (hit.module - best->module) * part;
    }

    /// Those that enough lines tell of, most hits first: gravel gives thousands, and a stream's frame has no
    /// time to look at them all.
    std::vector<Cluster> strongest(const FinderLimits& limits) const {
        constexpr int fewestHits = 3;
        std::vector<Cluster> strong;
        for (const Cluster& cluster : m_clusters)
            if (cluster.hits >= fewestHits && !limits.isLeftOut({cluster.x, cluster.y}))
                strong.push_back(cluster);
        std::stable_sort(strong.begin(), strong.end(),
                         [](const Cluster& a, const Cluster& b) { return a.hits > b.hits; });
        if (strong.size() > limits.mostPlaces) strong.resize(limits.mostPlaces);
        return strong;
    }

private:
    static constexpr int cell = 16;

    Cluster* nearest(const Hit& hit, int cx, int cy) {
        const int rows = static_cast<int>(m_cells.size()) / m_columns;
        for (int y = std::max(0, cy - 1); y <= std::min(rows - 1, cy + 1); ++y)
            for (int x = std::max(0, cx - 1); x <= std::min(m_columns - 1, cx + 1); ++x)
                for (int id : m_cells[y * m_columns + x]) {
                    Cluster& c = m_clusters[id];
                    const float reach = 1.6f * std::min(c.module, hit.module);
                    if (c.negative == hit.negative && std::abs(c.x - hit.x) < reach &&
                        std::abs(c.y - hit.y) < reach &&
                        std::max(c.module, hit.module) < 1.7f * std::min(c.module, hit.module))
                        return &c;
                }
        return nullptr;
    }

    int m_columns;
    std::vector<std::vector<int>> m_cells;
    std::vector<Cluster> m_clusters;
};

float contrastAt(const ContrastMap& map, float x, float y) {
    return sampleInside(map.values.data(), map.width, x, y);
}

/// How much lighter the light ring is than the core, as the map tells.
double contrastOfRings(const ContrastMap& map, const Finder& finder) {
    double core = 0, ring = 0;
    for (int i = 0; i < 8; ++i) {
        const double dx = std::cos(i * std::numbers::pi / 4), dy = std::sin(i * std::numbers::pi / 4);
        const double px = finder.shape[0] * dx + finder.shape[1] * dy,
                     py = finder.shape[2] * dx + finder.shape[3] * dy;
        const auto at = [&](double r) {
            return contrastAt(map,
                              std::clamp(static_cast<float>(finder.centre.x + r * px), 0.5f,
                                         static_cast<float>(map.width) - 1.6f),
                              std::clamp(static_cast<float>(finder.centre.y + r * py), 0.5f,
                                         static_cast<float>(map.height) - 1.6f));
        };
        core += at(0.8);
        ring += at(2.2);
    }
    return (finder.negative ? core - ring : ring - core) / 8;
}

/// Length of a module along a ray from the centre, from its first three edges, or 0.
float moduleAlongRay(const ContrastMap& map, Point centre, float dx, float dy, float module, float sign) {
    const float step = std::max(0.5f, 0.2f * module), furthest = 7.5f * module;
    float reach = furthest;
    float edges[3];
    int found = 0;
    float last = -1; // inside the core it is "dark"
    for (float r = step; r < reach && found < 3; r += step) {
        const float x = static_cast<float>(centre.x) + r * dx, y = static_cast<float>(centre.y) + r * dy;
        if (x < 1 || y < 1 || x > static_cast<float>(map.width) - 1.5f ||
            y > static_cast<float>(map.height) - 1.5f)
            break;
        const float value = sign * contrastAt(map, x, y);
        const bool wantsLight = found != 1;
        if (wantsLight ? value > 0 : value < 0) {
            const float part = std::clamp(last / (last - value), 0.0f, 1.0f);
            edges[found++] = r - step + part * step;
            // The next edge, if it lay further out, could not be even with those before it, as is asked
            // below.
            if (found == 1) reach = std::min(furthest, 4.6f * edges[0] + step);
            if (found == 2) reach = std::min(furthest, 1.88f * edges[0] + 0.88f * edges[1] + step);
        }
        last = value;
    }
    if (found < 3) return 0;
    const float inner = (edges[0] + edges[1]) / 4, outer = (edges[1] + edges[2]) / 6;
    const float mean = (inner + outer) / 2;
    const bool even =
        std::abs(inner - outer) < 0.22f * mean && edges[0] < 2.3f * mean && edges[0] > 0.8f * mean;
    return even && edges[2] - edges[1] > 0.3f * mean ? mean : 0;
}

/// Area moments of a polygon about its centroid.
struct Moments {
    double area = 0, x = 0, y = 0, xx = 0, xy = 0, yy = 0;
};

Moments momentsOf(const std::array<Point, rayCount>& corner, int n) {
    Moments m;
    for (int i = 0; i < n; ++i) {
        const Point a = corner[i], b = corner[(i + 1) % n];
        const double cross = a.x * b.y - b.x * a.y;
        m.area += cross / 2;
        m.x += cross * (a.x + b.x) / 6;
        m.y += cross * (a.y + b.y) / 6;
        m.xx += cross * (a.x * a.x + a.x * b.x + b.x * b.x) / 12;
        m.yy += cross * (a.y * a.y + a.y * b.y + b.y * b.y) / 12;
        m.xy += cross * (2 * a.x * a.y + a.x * b.y + b.x * a.y + 2 * b.x * b.y) / 24;
    }
    if (m.area <= 0) return {};
    m.x /= m.area;
    m.y /= m.area;
    m.xx = m.xx / m.area - m.x * m.x;
    m.yy = m.yy / m.area - m.y * m.y;
    m.xy = m.xy / m.area - m.x * m.y;
    return m;
}

std::array<std::pair<float, float>, rayCount> rayDirections() {
    std::array<std::pair<float, float>, rayCount> directions;
    for (int i = 0; i < rayCount; ++i) {
        const double angle = 2 * std::numbers::pi * i / rayCount;
        directions[i] = {static_cast<float>(std::cos(angle)), static_cast<float>(std::sin(angle))};
    }
    return directions;
}

/// Looks along the rays from the finder's centre and sets its shape; false when too few show the three edges.
bool measureShape(const ContrastMap& map, Finder& finder) {
    static const auto directions = rayDirections();
    std::array<float, rayCount> modules{};
    int n = 0, tried = 0;
    const float sign = finder.negative ? -1.0f : 1.0f;
    for (const auto& [first, step, fewest] : rayRounds) {
        for (int i = first; i < rayCount; i += step, ++tried) {
            const auto [dx, dy] = directions[i];
            modules[i] = moduleAlongRay(map, finder.centre, dx, dy, static_cast<float>(finder.module), sign);
            n += modules[i] > 0;
        }
        if (n < std::max(fewest, raysNeeded + tried - rayCount)) return false;
    }
    finder.rays = n;
    std::array<Point, rayCount> contour;
    int corners = 0;
    for (int i = 0; i < rayCount; ++i)
        if (modules[i] > 0)
            contour[corners++] = {modules[i] * directions[i].first, modules[i] * directions[i].second};
    const Moments m = momentsOf(contour, n);
    const double determinant = m.xx * m.yy - m.xy * m.xy;
    if (m.area <= 0 || determinant <= 0) return false;
    // The second moment of a square of half side 1 is 1/3; the symmetric root of 3·moments maps it to what is
    // seen.
    const double root = std::sqrt(determinant), scale = 1 / std::sqrt(m.xx + m.yy + 2 * root);
    const double unit = std::numbers::sqrt3 * scale;
    finder.shape = {(m.xx + root) * unit, m.xy * unit, m.xy * unit, (m.yy + root) * unit};
    finder.module = std::sqrt(std::sqrt(9 * determinant));
    finder.centre.x += m.x;
    finder.centre.y += m.y;
    const double trace = m.xx + m.yy, spread = std::sqrt(std::max(0.0, trace * trace / 4 - determinant));
    return trace / 2 + spread < 20 * (trace / 2 - spread); // under a tilt of about 75°
}

} // namespace

bool FinderLimits::isLeftOut(Point place) const {
    return std::any_of(leftOut.begin(), leftOut.end(),
                       [&](const Quad& area) { return contains(area, place); });
}

std::vector<Finder> findFinders(const ContrastMap& map, const FinderLimits& limits) {
    if (map.width < 16 || map.height < 16) return {};
    std::vector<Hit> hits;
    findHits(map, false, hits);
    findHits(transposed(map), true, hits);
    Clustering clustering(map.width, map.height);
    for (const Hit& hit : hits)
        clustering.add(hit);
    std::vector<Finder> finders;
    for (const Cluster& c : clustering.strongest(limits)) {
        if (limits.budget.isSpent()) break;
        Finder finder{{c.x, c.y}, {}, c.module, c.negative, 0};
        if (!measureShape(map, finder)) continue;
        const Finder first = finder;
        if (!measureShape(map, finder)) finder = first; // the second look is from a better centre
        const bool known = std::any_of(finders.begin(), finders.end(), [&](const Finder& other) {
            const double dx = other.centre.x - finder.centre.x, dy = other.centre.y - finder.centre.y;
            return dx * dx + dy * dy < 4 * finder.module * finder.module;
        });
        finder.contrast = contrastOfRings(map, finder);
        if (!known && finder.contrast > 8) finders.push_back(finder);
    }
    std::stable_sort(finders.begin(), finders.end(), [](const Finder& a, const Finder& b) {
        return a.contrast * a.rays > b.contrast * b.rays;
    });
    if (finders.size() > mostFinders) finders.resize(mostFinders);
    return finders;
}

} // namespace scanner::reader

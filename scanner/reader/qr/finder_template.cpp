#include "scanner/reader/qr/finder_template.h"

#include "scanner/reader/image/correlation.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

int levelAt(const ContrastMap& map, int x, int y) {
    return x >= 0 && y >= 0 && x < map.width && y < map.height ? map.row(y)[x] : 0;
}

} // namespace

FinderTemplate::FinderTemplate(const ContrastMap& map, Point right, Point down)
    : m_map(map)
    , m_right(right)
    , m_down(down) {
    int i = 0;
    for (int row = -reach; row <= reach; ++row)
        for (int column = -reach; column <= reach; ++column, ++i) {
            const int ring = std::max(std::abs(row), std::abs(column));
            const int x = static_cast<int>(std::lround(column * right.x + row * down.x)),
                      y = static_cast<int>(std::lround(column * right.y + row * down.y));
            m_taps[i] = {x, y, ring == 2 || ring == 4 ? 1 : -1};
            m_offsets[i] = static_cast<std::ptrdiff_t>(y) * map.width + x;
            m_wide = std::max(m_wide, std::abs(x));
            m_high = std::max(m_high, std::abs(y));
        }
}

double FinderTemplate::scoreAt(Point place) const {
    if (!(std::abs(place.x) < 1e6 && std::abs(place.y) < 1e6)) return 0;
    const int x = static_cast<int>(std::floor(place.x)), y = static_cast<int>(std::floor(place.y));
    Correlation<int> correlation;
    if (x >= m_wide && y >= m_high && x + m_wide < m_map.width && y + m_high < m_map.height) {
        const std::int8_t* middle = m_map.row(y) + x;
        for (int i = 0; i < count; ++i)
            correlation.add(middle[m_offsets[i]], m_taps[i].target);
    } else {
        for (const Tap& tap : m_taps)
            correlation.add(levelAt(m_map, x + tap.x, y + tap.y), tap.target);
    }
    return correlation.value(1);
}

FinderTemplate::Sought FinderTemplate::seek(Point expected, int sign) const {
    Sought best{expected, 0.2}; // below this the expected place is as good
    const auto look = [&](Point from, double farthest, double step) {
        for (double v = -farthest; v <= farthest; v += step)
            for (double u = -farthest; u <= farthest; u += step) {
                const Point at{from.x + u * m_right.x + v * m_down.x, from.y + u * m_right.y + v * m_down.y};
                const double score = sign * scoreAt(at) - 0.01 * std::hypot(u, v);
                if (score > best.score) best = {at, score};
            }
    };
    look(expected, 4, 1);
    look(best.place, 0.5, 0.5);
    return best;
}

} // namespace scanner::reader

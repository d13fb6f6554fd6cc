#include "scanner/reader/picture_faults.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/local_contrast.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/qr/finder_search.h"
#include "scanner/reader/qr/finder_triples.h"
#include "scanner/reader/qr/qr_pattern.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace scanner::reader {
namespace {

constexpr int glareCell = 8; // pixels; glare is looked for in cells

/// The grey level that all but a fiftieth of the pixels stay under.
int lightestOf(GreyView picture) {
    constexpr int every = 4;
    std::array<int, 256> count{};
    int all = 0;
    for (int y = 0; y < picture.height; y += every)
        for (int x = 0; x < picture.width; x += every, ++all)
            ++count[picture.at(x, y)];
    int level = 255;
    for (int above = 0; level > 0 && above + count[level] <= all / 50; --level)
        above += count[level];
    return level;
}

/// The steepest rise over two pixels in each stretch of 24 along rows or columns, in parts of what the
/// stretch spans; only stretches with an edge.
void addSteepness(GreyView picture, bool columns, std::vector<float>& steepness) {
    constexpr int length = 24, every = 6, edge = 50;
    const int lines = columns ? picture.width : picture.height,
              along = columns ? picture.height : picture.width;
    for (int line = every / 2; line < lines; line += every)
        for (int from = 0; from + length <= along; from += length) {
            int least = 255, most = 0, rise = 0, before = 0, last = 0;
            for (int i = 0; i < length; ++i) {
                const int value = columns ? picture.at(line, from + i) : picture.at(from + i, line);
                least = std::min(least, value);
                most = std::max(most, value);
                if (i > 1) rise = std::max(rise, std::abs(value - before));
                before = last;
                last = value;
            }
            if (most - least >= edge)
                steepness.push_back(static_cast<float>(rise) / static_cast<float>(most - least));
        }
}

struct Cell {
    int least = 255, most = 0;

    bool isWhite() const { return least >= 250; }
    bool isPaper() const { return least >= 225; } ///< or white with noise
    bool isFading() const { return !isPaper() && most >= 235 && least >= 110; }
    bool isPrinted() const { return least < 110 && most - least > 60; }
};

/// Darkest and lightest of every second pixel of each cell.
class GlareGrid {
public:
    explicit GlareGrid(GreyView picture)
        : m_columns(picture.width / glareCell)
        , m_rows(picture.height / glareCell)
        , m_cells(static_cast<std::size_t>(m_columns) * m_rows) {
        for (int y = 0; y < m_rows * glareCell; y += 2)
            for (int x = 0; x < m_columns * glareCell; x += 2) {
                Cell& c = m_cells[y / glareCell * m_columns + x / glareCell];
                const int value = picture.at(x, y);
                c.least = std::min(c.least, value);
                c.most = std::max(c.most, value);
            }
    }

    std::size_t size() const { return m_cells.size(); }
    const Cell& operator[](std::size_t i) const { return m_cells[i]; }

    /// Of all the cells, in pixels.
    Point middleOf(const std::vector<std::size_t>& cells) const {
        Point middle;
        for (const std::size_t index : cells) {
            middle.x +=
                (static_cast<int>(index) % m_columns + 0.5) * glareCell / static_cast<double>(cells.size());
            middle.y +=
                (static_cast<int>(index) / m_columns + 0.5) * glareCell / static_cast<double>(cells.size());
        }
        return middle;
    }

    /// Cells up to `reach` away in both directions.
    template <class Visit>
    void visitAround(std::size_t index, int reach, const Visit& visit) const {
        const int row = static_cast<int>(index) / m_columns, column = static_cast<int>(index) % m_columns;
        for (int y = std::max(0, row - reach); y <= std::min(m_rows - 1, row + reach); ++y)
            for (int x = std::max(0, column - reach); x <= std::min(m_columns - 1, column + reach); ++x)
                visit(static_cast<std::size_t>(y) * m_columns + x);
    }

private:
    int m_columns, m_rows;
    std::vector<Cell> m_cells;
};

/// The white cells that hang together with one.
std::vector<std::size_t> patchFrom(std::size_t seed, const GlareGrid& grid, std::vector<bool>& known) {
    std::vector<std::size_t> patch{seed};
    known[seed] = true;
    for (std::size_t k = 0; k < patch.size(); ++k)
        grid.visitAround(patch[k], 1, [&](std::size_t next) {
            if (known[next] || !grid[next].isWhite()) return;
            known[next] = true;
            patch.push_back(next);
        });
    return patch;
}

bool fadesIntoPrint(const std::vector<std::size_t>& patch, const GlareGrid& grid) {
    int around = 0, fading = 0, printed = 0;
    for (const std::size_t index : patch) {
        grid.visitAround(index, 1, [&](std::size_t next) {
            around += !grid[next].isPaper();
            fading += grid[next].isFading();
        });
        grid.visitAround(index, 4, [&](std::size_t next) { printed += grid[next].isPrinted(); });
    }
    return fading > 0.6 * around && printed > 0;
}

GreyPicture middlePart(GreyView picture, int& left, int& top) {
    constexpr int wide = 512, high = 288;
    const int width = std::min(wide, picture.width), height = std::min(high, picture.height);
    left = (picture.width - width) / 2;
    top = (picture.height - height) / 2;
    GreyView part = picture;
    part.data += top * static_cast<std::ptrdiff_t>(picture.stride) + left * picture.pixelStride;
    part.width = width;
    part.height = height;
    return copyOf(part);
}

/// Whether a place lies on or close by a symbol that was read.
bool isOnReadSymbol(const std::vector<SeenCode>& read, Point place) {
    return std::any_of(read.begin(), read.end(), [&](const SeenCode& code) {
        const auto& c = code.corners;
        const Point middle = middleOf(c);
        const double reach = std::hypot(c[2].x - c[0].x, c[2].y - c[0].y) * 0.7;
        return std::hypot(middle.x - place.x, middle.y - place.y) < reach;
    });
}

} // namespace

bool isTooDark(GreyView picture) {
    constexpr int darkGrey = 60;
    return lightestOf(picture) < darkGrey;
}

bool showsGlare(GreyView picture, const std::vector<SeenCode>& read) {
    const GlareGrid grid(picture);
    const std::size_t fewest = std::max<std::size_t>(4, grid.size() / 3000), most = grid.size() / 12;
    std::vector<bool> known(grid.size(), false);
    for (std::size_t i = 0; i < grid.size(); ++i) {
        if (known[i] || !grid[i].isWhite()) continue;
        const auto patch = patchFrom(i, grid, known);
        if (patch.size() < fewest || patch.size() > most || isOnReadSymbol(read, grid.middleOf(patch)))
            continue;
        if (fadesIntoPrint(patch, grid)) return true;
    }
    return false;
}

bool isOutOfFocus(GreyView picture) {
    constexpr std::size_t fewest = 40;
    constexpr float steep = 0.36f; // of the steepest tenth: a blur of about two pixels
    std::vector<float> steepness;
    addSteepness(picture, false, steepness);
    addSteepness(picture, true, steepness);
    if (steepness.size() < fewest) return false;
    const auto tenth = steepness.end() - static_cast<std::ptrdiff_t>(steepness.size() / 10) - 1;
    std::nth_element(steepness.begin(), tenth, steepness.end());
    return *tenth < steep;
}

bool showsSmallTag(GreyView picture, const std::vector<SeenCode>& read) {
    constexpr double smallest = 1.8, certain = 0.5; // pixels a module; correlation
    constexpr int mostTriples = 20, side = 21;
    int left = 0, top = 0;
    const ContrastMap map = contrastOf(middlePart(picture, left, top), 15);
    const auto finders = findFinders(map);
    int tried = 0;
    for (const FinderTriple& triple : findTriples(finders)) {
        if (++tried > mostTriples) return false;
        const auto mapping = mappingOf(finders, triple, side);
        const bool negative = finders[triple.corner].negative;
        if (!mapping || correlationOnMap(map, qrPattern(1), *mapping, negative) < certain) continue;
        const double module = modulePixelsAt(*mapping, {side / 2.0, side / 2.0});
        const Point middle = mapping->map(side / 2.0, side / 2.0);
        if (module < smallest && !isOnReadSymbol(read, {middle.x + left, middle.y + top})) return true;
    }
    return false;
}

} // namespace scanner::reader

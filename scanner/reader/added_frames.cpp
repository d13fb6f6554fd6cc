#include "scanner/reader/added_frames.h"

#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/image/sampling.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace scanner::reader {
namespace {

constexpr int apart = 64;    // pixels between the middles of blocks, and a block's side
constexpr int furthest = 40; // pixels that the camera may have moved since the first frame
constexpr int tile = 8;      // pixels along a side of what shares a shift
constexpr double notSeen = 1e9;

/// Sum of squares of the differences of two blocks, of each `step`-th row of them. Both lie in pictures of
/// the same width.
SCANNER_VECTORISED std::int64_t sumOfSquares(const std::uint8_t* a, const std::uint8_t* b, int pictureWidth,
                                             int width, int height, int step) {
    std::int64_t sum = 0;
    for (int y = 0; y < height; y += step) {
        const std::ptrdiff_t begin = static_cast<std::ptrdiff_t>(y) * pictureWidth;
        int ofRow = 0;
        for (int x = 0; x < width; ++x) {
            const int d = a[begin + x] - b[begin + x];
            ofRow += d * d;
        }
        sum += ofRow;
    }
    return sum;
}

/// Mean square difference of a square of the mean and the frame's square that lies shifted from it, as far as
/// that is in the frame; notSeen where hardly any of it is.
double difference(const GreyPicture& mean, const GreyPicture& frame, int left, int top, int side, int step,
                  int dx, int dy) {
    const int fromX = std::max({left, 0, -dx}), fromY = std::max({top, 0, -dy});
    const int toX = std::min({left + side, mean.width, mean.width - dx}),
              toY = std::min({top + side, mean.height, mean.height - dy});
    const int width = toX - fromX, height = toY - fromY;
    if (std::min(width, height) < std::max(1, side / 8)) return notSeen;
    const std::int64_t sum = sumOfSquares(mean.row(fromY) + fromX, frame.row(fromY + dy) + fromX + dx,
                                          mean.width, width, height, step);
    return static_cast<double>(sum) / (width * ((height + step - 1) / step));
}

struct Shift {
    int x = 0, y = 0;
    double difference = 1e18;
};

/// The shift near `from` with the least difference; what is further off must be clearly better.
Shift bestShift(const GreyPicture& mean, const GreyPicture& frame, int left, int top, int side, int step,
                Shift from, int reach) {
    Shift best;
    for (int dy = from.y - reach; dy <= from.y + reach; ++dy)
        for (int dx = from.x - reach; dx <= from.x + reach; ++dx) {
            const int x = dx - from.x, y = dy - from.y;
            const double off = std::sqrt(x * x + y * y);
            const double much = difference(mean, frame, left, top, side, step, dx, dy) * (1 + 0.004 * off);
            if (much < best.difference) best = {dx, dy, much};
        }
    return best;
}

/// Where a block's square begins along one side of a picture of that length: at the edges it is moved inside.
int beginOf(int block, int side, int length) {
    return std::clamp(block * side - side / 2, 0, length - side);
}

/// How far a parabola's lowest point lies from the middle of three values.
double lowest(double before, double middle, double after) {
    const double bend = before - 2 * middle + after;
    return bend > 1e-9 ? std::clamp(0.5 * (before - after) / bend, -0.5, 0.5) : 0;
}

/// The mean takes its part of what is seen; its grey level.
inline std::uint8_t blended(float& mean, float seen, float weight) {
    mean += weight * (seen - mean);
    // Of a positive number, and as a vector instruction.
    // NOLINTNEXTLINE(bugprone-incorrect-roundings)
    return static_cast<std::uint8_t>(mean + 0.5f);
}

/// Blends a tile that lies in the frame with all its neighbours. `seen`: its first pixel there; its pixels
/// lie `right` and `down` (0 to 1) further.
SCANNER_VECTORISED void blendTile(const std::uint8_t* seen, float right, float down, float weight,
                                  int pictureWidth, float* mean, std::uint8_t* levels) {
    for (int y = 0; y < tile; ++y) {
        const std::uint8_t* low = seen + pictureWidth;
        for (int x = 0; x < tile; ++x) {
            const float upper =
                static_cast<float>(seen[x]) + right * static_cast<float>(seen[x + 1] - seen[x]);
            const float lower = static_cast<float>(low[x]) + right * static_cast<float>(low[x + 1] - low[x]);
            levels[x] = blended(mean[x], upper + down * (lower - upper), weight);
        }
        seen = low;
        mean += pictureWidth;
        levels += pictureWidth;
    }
}

double medianOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

bool isNoisy(const GreyPicture& picture) {
    constexpr int side = 16;
    constexpr double strong = 0.12; // sigma in parts of the mean level
    std::vector<double> bends;      // of single rows of a block; the lower quarter shows no print
    double light = 0;
    for (int y = side / 2; y < picture.height; y += side)
        for (int x = 1; x + side < picture.width; x += side) {
            int sum = 0;
            const std::uint8_t* row = picture.row(y);
            for (int i = x; i < x + side - 1; ++i) {
                sum += std::abs(row[i - 1] - 2 * row[i] + row[i + 1]);
                light += row[i];
            }
            bends.push_back(sum / (side - 1.0));
        }
    if (bends.size() < 16) return false;
    light /= static_cast<double>(bends.size()) * (side - 1);
    const auto quarter = bends.begin() + static_cast<std::ptrdiff_t>(bends.size() / 4);
    std::nth_element(bends.begin(), quarter, bends.end());
    return *quarter / 1.95 > strong * light; // of grain with sigma 1 the mean bend is 1.95
}

void AddedFrames::begin(const GreyPicture& frame) {
    m_frames = 1;
    m_columns = std::max(2, frame.width / apart + 1);
    m_rows = std::max(2, frame.height / apart + 1);
    m_blocks.assign(static_cast<std::size_t>(m_columns) * m_rows, {});
    m_mean.assign(frame.pixels.begin(), frame.pixels.end());
    m_picture = frame;
}

void AddedFrames::add(const GreyPicture& frame) {
    if (m_frames == 0 || frame.width != m_picture.width || frame.height != m_picture.height ||
        std::min(frame.width, frame.height) < 4 * apart)
        return begin(frame);
    const PictureLevels mean(m_picture), seen(frame);
    if (mean.levels.size() < 3) return begin(frame);
    const GreyPicture& small = mean.levels[2];
    const Shift whole = bestShift(small, seen.levels[2], furthest / 4, furthest / 4,
                                  std::min(small.width, small.height) - furthest / 2, 3, {}, furthest / 4);
    if (std::max(std::abs(whole.x), std::abs(whole.y)) >= furthest / 4) return begin(frame);
    for (int row = 0; row < m_rows; ++row)
        for (int column = 0; column < m_columns; ++column) {
            Shift shift = whole;
            for (int level = 2; level >= 0; --level) {
                const int side = apart >> level;
                if (level < 2) shift = {2 * shift.x, 2 * shift.y, 0};
                const GreyPicture& picture = mean.levels[level];
                shift = bestShift(picture, seen.levels[level], beginOf(column, side, picture.width),
                                  beginOf(row, side, picture.height), side, level == 0 ? 2 : 1, shift,
                                  level == 2 ? 3 : 1);
            }
            const auto at = [&](int dx, int dy) {
                return difference(m_picture, frame, beginOf(column, apart, frame.width),
                                  beginOf(row, apart, frame.height), apart, 2, shift.x + dx, shift.y + dy);
            };
            const double here = at(0, 0);
            m_blocks[row * m_columns + column] = {shift.x + lowest(at(-1, 0), here, at(1, 0)),
                                                  shift.y + lowest(at(0, -1), here, at(0, 1)), here};
        }
    ++m_frames;
    smoothShifts();
    markChanges();
    blend(frame);
}

/// Each block takes the median of its neighbourhood: a block without print has no shift of its own.
void AddedFrames::smoothShifts() {
    const std::vector<Block> found = m_blocks;
    for (int row = 0; row < m_rows; ++row)
        for (int column = 0; column < m_columns; ++column) {
            std::vector<double> xs, ys;
            for (int r = std::max(0, row - 1); r <= std::min(m_rows - 1, row + 1); ++r)
                for (int c = std::max(0, column - 1); c <= std::min(m_columns - 1, column + 1); ++c) {
                    xs.push_back(found[r * m_columns + c].x);
                    ys.push_back(found[r * m_columns + c].y);
                }
            m_blocks[row * m_columns + column].x = medianOf(xs);
            m_blocks[row * m_columns + column].y = medianOf(ys);
        }
}

/// Where the grain alone does not explain the difference something else lies there now.
void AddedFrames::markChanges() {
    constexpr double much = 2;
    std::vector<double> all;
    for (const Block& block : m_blocks)
        all.push_back(block.difference);
    const double usual = medianOf(all);
    for (Block& block : m_blocks)
        block.changed = block.difference > much * usual + 4;
}

AddedFrames::Block AddedFrames::between(double column, double row) const {
    const int c = std::clamp(static_cast<int>(column), 0, m_columns - 2),
              r = std::clamp(static_cast<int>(row), 0, m_rows - 2);
    const double fx = std::clamp(column - c, 0.0, 1.0), fy = std::clamp(row - r, 0.0, 1.0);
    const Block* top = m_blocks.data() + r * m_columns + c;
    const Block* low = top + m_columns;
    const auto mix = [&](double Block::*part) {
        return (1 - fy) * ((1 - fx) * top[0].*part + fx * top[1].*part) +
               fy * ((1 - fx) * low[0].*part + fx * low[1].*part);
    };
    return {mix(&Block::x), mix(&Block::y), 0,
            top[0].changed || top[1].changed || low[0].changed || low[1].changed};
}

/// The newest frame counts as one of all, of eight at most.
void AddedFrames::blend(const GreyPicture& frame) {
    const float usual = 1.0f / static_cast<float>(std::min(m_frames, 8));
    for (int top = 0; top < frame.height; top += tile)
        for (int left = 0; left < frame.width; left += tile) {
            const Block block = between((left + tile / 2.0) / apart, (top + tile / 2.0) / apart);
            const float weight = block.changed ? 1 : usual;
            const double x = left + block.x, y = top + block.y; // of the tile's corner in the frame
            const std::size_t at = static_cast<std::size_t>(top) * frame.width + left;
            if (x >= 0 && y >= 0 && std::max(x, 1.0 * left) + tile + 1 < frame.width &&
                std::max(y, 1.0 * top) + tile + 1 < frame.height) {
                const int ix = static_cast<int>(x), iy = static_cast<int>(y);
                blendTile(frame.row(iy) + ix, static_cast<float>(x - ix), static_cast<float>(y - iy), weight,
                          frame.width, m_mean.data() + at, m_picture.pixels.data() + at);
            } else
                blendAtEdge(frame, left, top, block, weight);
        }
}

/// A tile of which a part may lie outside of the mean or the frame.
void AddedFrames::blendAtEdge(const GreyPicture& frame, int left, int top, const Block& block, float weight) {
    for (int y = top; y < std::min(frame.height, top + tile); ++y)
        for (int x = left; x < std::min(frame.width, left + tile); ++x) {
            const std::size_t at = static_cast<std::size_t>(y) * frame.width + x;
            const float seen = sampleAt(frame, x + 0.5 + block.x, y + 0.5 + block.y);
            m_picture.pixels[at] = blended(m_mean[at], seen, weight);
        }
}

Point AddedFrames::shiftAt(Point place) const {
    if (m_blocks.empty()) return {};
    const Block block = between(place.x / apart, place.y / apart);
    return {block.x, block.y};
}

} // namespace scanner::reader

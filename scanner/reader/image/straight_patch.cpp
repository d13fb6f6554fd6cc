#include "scanner/reader/image/straight_patch.h"

#include "scanner/reader/image/raster.h"
#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <cstddef>

namespace scanner::reader {
namespace {

SCANNER_VECTORISED void smoothAcross(const float* above, const float* here, const float* below, float* sum,
                                     float* out, int count) {
    for (int x = 0; x < count; ++x)
        sum[x + 1] = above[x] + 2 * here[x] + below[x];
    sum[0] = sum[1];
    sum[count + 1] = sum[count];
    for (int x = 0; x < count; ++x)
        out[x] = (sum[x] + 2 * sum[x + 1] + sum[x + 2]) * (1.0f / 16);
}

/// The least and most of some rows, column by column.
SCANNER_VECTORISED void extremesOfRows(const float* rows, int width, int count, float* least, float* most) {
    for (int x = 0; x < width; ++x)
        least[x] = most[x] = rows[x];
    for (int y = 1; y < count; ++y)
        for (int x = 0; x < width; ++x) {
            const float value = rows[y * width + x];
            least[x] = std::min(least[x], value);
            most[x] = std::max(most[x], value);
        }
}

SCANNER_VECTORISED void evenOutRow(float* row, const float* middle, const float* gain, int count) {
    for (int x = 0; x < count; ++x)
        row[x] = (row[x] - middle[x]) * gain[x];
}

/// The least and most of each module of a patch, then of the modules around it.
class ModuleExtremes {
public:
    ModuleExtremes(const float* patch, int width, int height)
        : m_columns(width / p)
        , m_rows(height / p)
        , m_least(static_cast<std::size_t>(m_columns) * m_rows)
        , m_most(m_least.size()) {
        std::vector<float> least(width), most(width);
        for (int r = 0; r < m_rows; ++r) {
            extremesOfRows(patch + r * p * width, width, p, least.data(), most.data());
            for (int c = 0; c < m_columns; ++c) {
                m_least[r * m_columns + c] = *std::min_element(&least[c * p], &least[c * p] + p);
                m_most[r * m_columns + c] = *std::max_element(&most[c * p], &most[c * p] + p);
            }
        }
    }

    /// Takes those of the square of 2·reach + 1 modules, as far as the patch goes.
    void widen(int reach) {
        std::vector<float> least(m_least.size()), most(m_most.size());
        for (int r = 0; r < m_rows; ++r)
            for (int c = 0; c < m_columns; ++c) {
                const int from = r * m_columns + std::max(0, c - reach),
                          to = r * m_columns + std::min(m_columns - 1, c + reach) + 1;
                least[r * m_columns + c] = *std::min_element(&m_least[from], &m_least[0] + to);
                most[r * m_columns + c] = *std::max_element(&m_most[from], &m_most[0] + to);
            }
        for (int r = 0; r < m_rows; ++r) {
            const int from = std::max(0, r - reach), to = std::min(m_rows - 1, r + reach) + 1;
            for (int c = 0; c < m_columns; ++c) {
                float& low = m_least[r * m_columns + c] = least[from * m_columns + c];
                float& high = m_most[r * m_columns + c] = most[from * m_columns + c];
                for (int k = from + 1; k < to; ++k) {
                    low = std::min(low, least[k * m_columns + c]);
                    high = std::max(high, most[k * m_columns + c]);
                }
            }
        }
    }

    int rows() const { return m_rows; }
    float least(int column, int row) const { return m_least[row * m_columns + column]; }
    float most(int column, int row) const { return m_most[row * m_columns + column]; }

private:
    static constexpr int p = StraightPatch::pixelsPerModule;

    int m_columns, m_rows;
    std::vector<float> m_least, m_most;
};

} // namespace

StraightPatch::StraightPatch(const PictureLevels& picture, const Homography& guess, int columns, int rows,
                             bool negative)
    : m_guess(guess)
    , m_width((columns + 2 * margin) * pixelsPerModule)
    , m_height((rows + 2 * margin) * pixelsPerModule)
    , m_values(static_cast<std::size_t>(m_width) * m_height) {
    sampleRaster(picture, toPicture(), m_width, m_height, m_values.data());
    evenOut(negative);
    smooth();
}

Homography StraightPatch::fromModules() {
    constexpr double p = pixelsPerModule;
    return {{p, 0, p * margin, 0, p, p * margin, 0, 0, 1}};
}

Homography StraightPatch::toPicture() const {
    constexpr double p = pixelsPerModule;
    return m_guess * Homography{{1 / p, 0, -margin, 0, 1 / p, -margin, 0, 0, 1}};
}

/// Subtracts the middle of the local extremes and divides by half their distance: extremes of five modules'
/// square.
void StraightPatch::evenOut(bool negative) {
    constexpr int p = pixelsPerModule;
    constexpr float floorOfRange = 8; // grey levels; less is noise
    ModuleExtremes around(m_values.data(), m_width, m_height);
    around.widen(2);
    const float sign = negative ? -1.0f : 1.0f;
    std::vector<float> middle(m_width), gain(m_width);
    for (int r = 0; r < around.rows(); ++r) {
        for (int x = 0; x < m_width; ++x) {
            const float least = around.least(x / p, r), most = around.most(x / p, r);
            middle[x] = (least + most) / 2;
            gain[x] = sign / std::max(floorOfRange, (most - least) / 2);
        }
        for (int y = r * p; y < r * p + p; ++y)
            evenOutRow(m_values.data() + y * m_width, middle.data(), gain.data(), m_width);
    }
}

/// 1-2-1 both ways, so that slopes lead from further off.
void StraightPatch::smooth() {
    std::vector<float> sum(m_width + 2);
    std::vector<float> result(m_values.size());
    for (int y = 0; y < m_height; ++y) {
        const float* above = row(std::max(0, y - 1));
        const float* here = row(y);
        const float* below = row(std::min(m_height - 1, y + 1));
        smoothAcross(above, here, below, sum.data(), result.data() + y * m_width, m_width);
    }
    m_values.swap(result);
}

} // namespace scanner::reader

#include "scanner/reader/image/local_contrast.h"

#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <bit>
#include <cstring>

namespace scanner::reader {
namespace {

SCANNER_VECTORISED void addRows(const std::uint8_t* a, const std::uint8_t* b, const std::uint8_t* c,
                                std::uint16_t* sum, int n) {
    for (int x = 0; x < n; ++x)
        sum[x] = static_cast<std::uint16_t>(a[x] + 2 * b[x] + c[x]);
}

SCANNER_VECTORISED void smoothRow(const std::uint16_t* sum, std::uint8_t* out, int n) {
    for (int x = 0; x < n; ++x)
        out[x] = static_cast<std::uint8_t>((sum[x] + 2 * sum[x + 1] + sum[x + 2] + 8) >> 4);
}

SCANNER_VECTORISED void slideColumns(std::uint16_t* sum, const std::uint8_t* in, const std::uint8_t* out,
                                     int n) {
    for (int x = 0; x < n; ++x)
        sum[x] = static_cast<std::uint16_t>(sum[x] + in[x] - out[x]);
}

/// The sum of the numbers up to each, on top of `before`; the last of them comes out. Four at once: each sum
/// would wait for the one before it.
SCANNER_VECTORISED std::uint32_t sumUpTo(const std::uint16_t* numbers, std::uint32_t before,
                                         std::uint32_t* sums, int n) {
    using FourShorts __attribute__((vector_size(8))) = std::uint16_t;
    using FourSums __attribute__((vector_size(16))) = std::uint32_t;
    const FourSums none{};
    FourSums carried = none + before;
    int x = 0;
    for (; x + 4 <= n; x += 4) {
        FourShorts four;
        std::memcpy(&four, numbers + x, sizeof four);
        FourSums sum = __builtin_convertvector(four, FourSums);
        sum += __builtin_shufflevector(sum, none, 4, 0, 1, 2);
        sum += __builtin_shufflevector(sum, none, 4, 4, 0, 1);
        sum += carried;
        std::memcpy(sums + x, &sum, sizeof sum);
        carried = __builtin_shufflevector(sum, sum, 3, 3, 3, 3);
    }
    std::uint32_t last = carried[0];
    for (; x < n; ++x)
        sums[x] = last += numbers[x];
    return last;
}

SCANNER_VECTORISED void subtractMean(const std::uint8_t* row, const std::uint32_t* prefix, int window,
                                     float scale, std::int8_t* out, int n) {
    for (int x = 0; x < n; ++x) {
        const auto total = static_cast<std::int32_t>(prefix[x + window] - prefix[x]);
        // Of a positive number, and as a vector instruction. NOLINTNEXTLINE(bugprone-incorrect-roundings)
        const int mean = static_cast<int>(static_cast<float>(total) * scale + 0.5f);
        out[x] = static_cast<std::int8_t>(std::clamp(static_cast<int>(row[x]) - mean, -127, 127));
    }
}

SCANNER_VECTORISED void halveRow(const std::uint8_t* a, const std::uint8_t* b, std::uint8_t* out, int n) {
    for (int x = 0; x < n; ++x)
        out[x] = static_cast<std::uint8_t>((a[2 * x] + a[2 * x + 1] + b[2 * x] + b[2 * x + 1] + 2) >> 2);
}

} // namespace

GreyPicture smoothed(const GreyPicture& picture) {
    const int w = picture.width, h = picture.height;
    GreyPicture result(w, h);
    if (w == 0 || h == 0) return result;
    std::vector<std::uint16_t> sum(static_cast<std::size_t>(w) + 2);
    for (int y = 0; y < h; ++y) {
        addRows(picture.row(std::max(0, y - 1)), picture.row(y), picture.row(std::min(h - 1, y + 1)),
                sum.data() + 1, w);
        sum[0] = sum[1];
        sum[w + 1] = sum[w];
        smoothRow(sum.data(), result.row(y), w);
    }
    return result;
}

GreyPicture halved(const GreyPicture& picture) {
    const int w = picture.width / 2, h = picture.height / 2;
    if (w < 16 || h < 16) return {};
    GreyPicture result(w, h);
    for (int y = 0; y < h; ++y)
        halveRow(picture.row(2 * y), picture.row(2 * y + 1), result.row(y), w);
    return result;
}

ContrastMap contrastOf(const GreyPicture& picture, int radius) {
    const int w = picture.width, h = picture.height, window = 2 * radius + 1;
    ContrastMap map{w, h, std::vector<std::int8_t>(picture.pixels.size())};
    if (w == 0 || h == 0) return map;
    const auto clampedRow = [&](int y) { return picture.row(std::clamp(y, 0, h - 1)); };
    std::vector<std::uint16_t> columns(w, 0);
    for (int y = -radius - 1; y < radius; ++y) {
        const std::uint8_t* row = clampedRow(y);
        for (int x = 0; x < w; ++x)
            columns[x] = static_cast<std::uint16_t>(columns[x] + row[x]);
    }
    std::vector<std::uint32_t> prefix(static_cast<std::size_t>(w) + window);
    const float scale = 1.0f / static_cast<float>(window * window);
    for (int y = 0; y < h; ++y) {
        slideColumns(columns.data(), clampedRow(y + radius), clampedRow(y - radius - 1), w);
        prefix[0] = 0;
        std::uint32_t total = 0;
        for (int i = 0; i < radius; ++i)
            prefix[i + 1] = total += columns[0];
        total = sumUpTo(columns.data(), total, prefix.data() + radius + 1, w);
        for (int i = 0; i < radius; ++i)
            prefix[w + radius + 1 + i] = total += columns[w - 1];
        subtractMean(picture.row(y), prefix.data(), window, scale,
                     map.values.data() + static_cast<std::ptrdiff_t>(y) * w, w);
    }
    return map;
}

namespace {

/// Eight rows of eight bytes, the first lowest in each number, to columns: pairs of 1, 2 and 4 change places.
void transposeEight(std::uint64_t (&rows)[8]) {
    constexpr std::uint64_t kept[] = {0x00FF00FF00FF00FFU, 0x0000FFFF0000FFFFU, 0x00000000FFFFFFFFU};
    for (int k = 0; k < 3; ++k) {
        const int apart = 1 << k, bits = 8 << k;
        for (int i = 0; i < 8; ++i) {
            if ((i & apart) != 0) continue;
            const std::uint64_t upper = rows[i], lower = rows[i + apart];
            rows[i] = (upper & kept[k]) | (lower & kept[k]) << bits;
            rows[i + apart] = (upper >> bits & kept[k]) | (lower & ~kept[k]);
        }
    }
}

void transposeBlock(const ContrastMap& map, int left, int top, ContrastMap& result) {
    std::uint64_t rows[8];
    for (int i = 0; i < 8; ++i)
        std::memcpy(&rows[i], map.row(top + i) + left, 8);
    transposeEight(rows);
    for (int i = 0; i < 8; ++i)
        std::memcpy(result.values.data() + static_cast<std::size_t>(left + i) * map.height + top, &rows[i],
                    8);
}

} // namespace

ContrastMap transposed(const ContrastMap& map) {
    constexpr int block = 8;
    ContrastMap result{map.height, map.width, std::vector<std::int8_t>(map.values.size())};
    const bool whole = std::endian::native == std::endian::little;
    for (int top = 0; top < map.height; top += block)
        for (int left = 0; left < map.width; left += block) {
            if (whole && top + block <= map.height && left + block <= map.width) {
                transposeBlock(map, left, top, result);
                continue;
            }
            for (int y = top; y < std::min(top + block, map.height); ++y)
                for (int x = left; x < std::min(left + block, map.width); ++x)
                    result.values[static_cast<std::size_t>(x) * map.height + y] = map.row(y)[x];
        }
    return result;
}

} // namespace scanner::reader

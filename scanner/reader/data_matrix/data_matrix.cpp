#include "scanner/reader/data_matrix/data_matrix.h"

#include "scanner/reader/reed_solomon.h"
#include "scanner/reader/soft_word.h"

#include <algorithm>
#include <array>
#include <map>

namespace scanner::reader {
namespace {

constexpr std::array<MatrixSize, matrixSizeCount> sizes{{{10, 3, 5},
                                                         {12, 5, 7},
                                                         {14, 8, 10},
                                                         {16, 12, 12},
                                                         {18, 18, 14},
                                                         {20, 22, 18},
                                                         {22, 30, 20},
                                                         {24, 36, 24},
                                                         {26, 44, 28}}};

/// Where the bits of the codewords lie in the data region: the walk of ISO/IEC 16022, annex F.
class Placement {
public:
    explicit Placement(int side)
        : m_side(side)
        , m_used(static_cast<std::size_t>(side) * side, false) {
        walk();
    }

    /// Eight modules (row × side + column) a codeword, most significant bit first.
    const std::vector<std::array<int, 8>>& places() const { return m_places; }

private:
    int moduleAt(int row, int column) const {
        if (row < 0) {
            row += m_side;
            column += 4 - (m_side + 4) % 8;
        }
        if (column < 0) {
            column += m_side;
            row += 4 - (m_side + 4) % 8;
        }
        return row * m_side + column;
    }

    void place(const std::array<std::array<int, 2>, 8>& rowsAndColumns) {
        std::array<int, 8> modules{};
        for (int bit = 0; bit < 8; ++bit) {
            modules[bit] = moduleAt(rowsAndColumns[bit][0], rowsAndColumns[bit][1]);
            m_used[modules[bit]] = true;
        }
        m_places.push_back(modules);
    }

    void placeShape(int r, int c) {
        place({{{r - 2, c - 2},
                {r - 2, c - 1},
                {r - 1, c - 2},
                {r - 1, c - 1},
                {r - 1, c},
                {r, c - 2},
                {r, c - 1},
                {r, c}}});
    }

    void placeCorners(int row, int column) {
        const int n = m_side;
        if (row == n && column == 0)
            place({{{n - 1, 0},
                    {n - 1, 1},
                    {n - 1, 2},
                    {0, n - 2},
                    {0, n - 1},
                    {1, n - 1},
                    {2, n - 1},
                    {3, n - 1}}});
        if (row == n - 2 && column == 0 && n % 4 != 0)
            place({{{n - 3, 0},
                    {n - 2, 0},
                    {n - 1, 0},
                    {0, n - 4},
                    {0, n - 3},
                    {0, n - 2},
                    {0, n - 1},
                    {1, n - 1}}});
        if (row == n - 2 && column == 0 && n % 8 == 4)
            place({{{n - 3, 0},
                    {n - 2, 0},
                    {n - 1, 0},
                    {0, n - 2},
                    {0, n - 1},
                    {1, n - 1},
                    {2, n - 1},
                    {3, n - 1}}});
        if (row == n + 4 && column == 2 && n % 8 == 0)
            place({{{n - 1, 0},
                    {n - 1, n - 1},
                    {0, n - 3},
                    {0, n - 2},
                    {0, n - 1},
                    {1, n - 3},
                    {1, n - 2},
                    {1, n - 1}}});
    }

    void walk() {
        int row = 4, column = 0;
        const int n = m_side;
        do {
            placeCorners(row, column);
            for (; row >= 0 && column < n; row -= 2, column += 2)
                if (row < n && column >= 0 && !m_used[row * n + column]) placeShape(row, column);
            row += 1;
            column += 3;
            for (; row < n && column >= 0; row += 2, column -= 2)
                if (row >= 0 && column < n && !m_used[row * n + column]) placeShape(row, column);
            row += 3;
            column += 1;
        } while (row < n || column < n);
    }

    int m_side;
    std::vector<bool> m_used;
    std::vector<std::array<int, 8>> m_places;
};

const Placement& placementFor(int side) {
    static const auto placements = [] {
        std::map<int, Placement> all;
        for (const MatrixSize& size : sizes)
            all.emplace(size.modules - 2, Placement(size.modules - 2));
        return all;
    }();
    return placements.at(side);
}

GridPattern makePattern(int n) {
    GridPattern pattern(n, n);
    for (int i = -1; i <= n; ++i)
        for (int edge : {-1, n}) {
            pattern.set(i, edge, 1);
            pattern.set(edge, i, 1);
        }
    for (int i = 0; i < n; ++i) {
        pattern.set(i, 0, i % 2 ? 1 : -1);
        pattern.set(n - 1, i, i % 2 ? -1 : 1);
    }
    for (int i = 0; i < n; ++i) {
        pattern.set(0, i, -1);
        pattern.set(i, n - 1, -1);
    }
    pattern.listPoints();
    return pattern;
}

} // namespace

std::span<const MatrixSize> matrixSizes() {
    return sizes;
}

const GridPattern& matrixPattern(int modules) {
    static const auto patterns = [] {
        std::map<int, GridPattern> all;
        for (const MatrixSize& size : sizes)
            all.emplace(size.modules, makePattern(size.modules));
        return all;
    }();
    return patterns.at(modules);
}

std::vector<int> matrixCodewords(const MatrixSize& size) {
    const int n = size.modules, side = n - 2;
    std::vector<int> codewords(static_cast<std::size_t>(n) * n, -1);
    const auto& places = placementFor(side).places();
    for (int i = 0; i < size.data + size.checks; ++i)
        for (const int place : places[i])
            codewords[(place / side + 1) * n + place % side + 1] = i;
    return codewords;
}

std::vector<float> matrixEvidence(const GridSamples& soft, const MatrixSize& size) {
    const int side = size.modules - 2;
    const auto& places = placementFor(side).places();
    std::vector<float> evidence;
    for (int i = 0; i < size.data + size.checks; ++i)
        for (const int place : places[i])
            evidence.push_back(-soft.at(place % side + 1, place / side + 1));
    return evidence;
}

/// What neither finder nor codewords fill is the fixed corner of some sizes.
GridSamples drawnMatrix(const std::vector<std::uint8_t>& word, const MatrixSize& size) {
    const int n = size.modules, side = n - 2;
    GridSamples modules{n, n, std::vector<float>(static_cast<std::size_t>(n) * n, 1)};
    const GridPattern& pattern = matrixPattern(n);
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c)
            if (pattern.at(c, r) != 0) modules.values[r * n + c] = pattern.at(c, r);
    const auto& places = placementFor(side).places();
    if (side * side % 8 != 0) {
        modules.values[(n - 2) * n + n - 2] = -1;
        modules.values[(n - 3) * n + n - 3] = -1;
    }
    for (std::size_t i = 0; i < word.size(); ++i)
        for (int bit = 0; bit < 8; ++bit) {
            const int place = places[i][bit];
            modules.values[(place / side + 1) * n + place % side + 1] =
                word[i] >> (7 - bit) & 1 ? -1.0f : 1.0f;
        }
    return modules;
}

std::optional<MatrixReading> mendMatrix(const GridSamples& soft, const MatrixSize& size, int fewestErased,
                                        int mostErased) {
    const std::vector<float> evidence = matrixEvidence(soft, size);
    const SoftWord word = softWordOf(size.data + size.checks,
                                     [&](int codeword, int bit) { return evidence[codeword * 8 + bit]; });
    const std::vector<int> order = word.leastCertainFirst();
    for (int erased = fewestErased; erased <= mostErased; erased += 2) {
        auto mended = word.values;
        const int errors = ReedSolomon::forDataMatrix().mend(
            mended, size.checks, std::span(order).first(static_cast<std::size_t>(erased)));
        if (errors >= 0)
            return MatrixReading{drawnMatrix(mended, size), erased, errors, size.checks,
                                 word.changedIn(mended)};
    }
    return std::nullopt;
}

} // namespace scanner::reader

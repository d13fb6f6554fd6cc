#include "scanner/reader/linear/bar_misfit.h"

#include "scanner/reader/image/homography.h"
#include "scanner/reader/linear/code128.h"
#include "scanner/reader/linear/profile_sums.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace scanner::reader {
namespace {

constexpr int perCharacter = 11; // modules
constexpr int reach = 2;         // modules beside one that blur lays on it
constexpr int placing = 4;       // coefficients of a cubic

/// 1 light, -1 dark, the quiet zones with them.
std::vector<double> modulesOf(const std::vector<int>& characters, int quiet) {
    std::vector<double> modules(static_cast<std::size_t>(quiet), 1.0);
    const auto add = [&](const char* widths) {
        double colour = -1;
        for (; *widths != 0; ++widths, colour = -colour)
            modules.insert(modules.end(), static_cast<std::size_t>(*widths - '0'), colour);
    };
    for (const int character : characters)
        add(code128Widths[static_cast<std::size_t>(character)]);
    add(code128Stop);
    modules.insert(modules.end(), static_cast<std::size_t>(quiet), 1.0);
    return modules;
}

std::array<double, placing> powersOf(double u) {
    return {1, u, u * u, u * u * u};
}

/// Least squares with up to 16 unknowns.
template <int n>
class Equations {
public:
    void add(const std::array<double, n>& row, double value) {
        for (int i = 0; i < n; ++i) {
            for (int k = 0; k < n; ++k)
                m_left[i * n + k] += row[i] * row[k];
            m_right[i] += row[i] * value;
        }
    }
    /// False when they do not say enough.
    bool solve(std::array<double, n>& x) {
        for (int i = 0; i < n; ++i)
            m_left[i * n + i] = m_left[i * n + i] * (1 + 1e-9) + 1e-9;
        if (!reader::solve(m_left.data(), m_right.data(), n)) return false;
        x = m_right;
        return true;
    }

private:
    std::array<double, static_cast<std::size_t>(n) * n> m_left{};
    std::array<double, n> m_right{};
};

/// The symbol laid over a profile: where its modules lie, and what is seen there.
class LaidSymbol {
public:
    LaidSymbol(std::span<const float> profile, const BarReading& reading, int quiet)
        : m_sums(profile)
        , m_modules(modulesOf(reading.characters, quiet))
        , m_seen(m_modules.size())
        , m_edges(m_modules.size())
        , m_left(m_modules.size())
        , m_isInside(m_modules.size())
        , m_quiet(quiet)
        , m_count(static_cast<int>(m_modules.size())) {}

    /// False when the symbol cannot be laid so.
    bool layBy(const std::vector<double>& places);
    bool fit();
    BarMisfit misfit() const;

private:
    /// Three of the light's slope, three of blur, one of the contrast's slope, one of ink that spread, the
    /// places.
    static constexpr int unknowns = 8 + placing;
    using Row = std::array<double, unknowns>;

    double alongOf(double module) const { return 2 * module / m_count - 1; }
    double placeOf(double module) const;
    double colourOf(int module) const { return module < 0 || module >= m_count ? 1 : m_modules[module]; }
    bool look(int module);
    double modelled(int module) const;
    double changeAt(int module, int by) const;
    double against(int first, int count) const;
    Row rowOf(int module) const;

    ProfileSums m_sums;
    std::vector<double> m_modules; ///< 1 light, -1 dark
    std::vector<double> m_seen, m_edges, m_left;
    std::vector<char> m_isInside; ///< whether the module lies within the profile; a quiet zone may not
    std::array<double, placing> m_places{};
    Row m_model{};
    int m_quiet, m_count;
};

/// A cubic through where the characters begin, as the tilt of a label needs.
bool LaidSymbol::layBy(const std::vector<double>& places) {
    Equations<placing> equations;
    for (std::size_t i = 0; i < places.size(); ++i)
        equations.add(powersOf(alongOf(m_quiet + perCharacter * static_cast<double>(i))), places[i]);
    return equations.solve(m_places);
}

double LaidSymbol::placeOf(double module) const {
    const auto powers = powersOf(alongOf(module));
    double place = 0;
    for (int i = 0; i < placing; ++i)
        place += m_places[i] * powers[i];
    return place;
}

LaidSymbol::Row LaidSymbol::rowOf(int module) const {
    const double u = alongOf(module + 0.5), colour = colourOf(module),
                 next = colourOf(module - 1) + colourOf(module + 1);
    Row row{1,          u,
            u * u,      colour,
            next,       colourOf(module - 2) + colourOf(module + 2),
            u * colour, colour > 0 ? 2 - next : 0};
    const auto powers = powersOf(u);
    for (int i = 0; i < placing; ++i)
        row[8 + i] = m_edges[module] * powers[i];
    return row;
}

/// What the profile has at the module's place. Where the places are moved, a module's mean takes what comes
/// in at one end and loses the other. False when it has no width.
bool LaidSymbol::look(int module) {
    const double from = placeOf(module), to = placeOf(module + 1), width = to - from;
    if (!(width > 0.5)) return false;
    const double edges =
        m_sums.to(to + 0.5) - m_sums.to(to - 0.5) - m_sums.to(from + 0.5) + m_sums.to(from - 0.5);
    m_seen[module] = (m_sums.to(to) - m_sums.to(from)) / width;
    m_edges[module] = edges / width;
    const bool isInside = from >= 0 && to <= m_sums.count();
    m_isInside[module] = isInside ? 1 : 0;
    return true;
}

bool LaidSymbol::fit() {
    constexpr int rounds = 3;
    for (int round = 0; round < rounds; ++round) {
        Equations<unknowns> equations;
        for (int module = 0; module < m_count; ++module) {
            if (!look(module)) return false;
            if (m_isInside[module]) equations.add(rowOf(module), m_seen[module]);
        }
        if (!equations.solve(m_model)) return false;
        for (int i = 0; i < placing && round + 1 < rounds; ++i)
            m_places[i] -= m_model[8 + i];
    }
    for (int module = 0; module < m_count; ++module)
        m_left[module] = m_isInside[module] ? m_seen[module] - modelled(module) : 0;
    return m_model[3] > 0; // light is lighter than dark
}

double LaidSymbol::modelled(int module) const {
    const Row row = rowOf(module);
    double value = 0;
    for (int i = 0; i < unknowns; ++i)
        value += m_model[i] * row[i];
    return value;
}

/// What a module of the other colour would change there and beside it.
double LaidSymbol::changeAt(int module, int by) const {
    if (std::abs(module - by) > reach || by < 0 || by >= m_count) return 0;
    const double slope = module == by ? m_model[6] * alongOf(by + 0.5) : 0;
    return -2 * colourOf(by) * (m_model[3 + std::abs(module - by)] + slope);
}

/// How far what is left looks like that some modules have the other colour.
double LaidSymbol::against(int first, int count) const {
    double seen = 0, whole = 0;
    for (int at = std::max(0, first - reach); at < std::min(m_count, first + count + reach); ++at) {
        double change = 0;
        for (int by = first; by < first + count; ++by)
            change += changeAt(at, by);
        seen += m_left[at] * change;
        whole += change * change;
    }
    return whole > 0 ? seen / whole : 1;
}

BarMisfit LaidSymbol::misfit() const {
    BarMisfit misfit;
    double squares = 0;
    for (int module = 0; module < m_count; ++module) {
        const double one = against(module, 1);
        misfit.most = std::max(misfit.most, one);
        if (module + 1 < m_count && colourOf(module) != colourOf(module + 1))
            misfit.most = std::max(misfit.most, against(module, 2));
        squares += one * one;
    }
    misfit.usual = std::sqrt(squares / m_count);
    return misfit;
}

} // namespace

std::optional<BarMisfit> misfitOf(std::span<const float> profile, const BarReading& reading, int quiet) {
    LaidSymbol symbol(profile, reading, quiet);
    if (!symbol.layBy(reading.places) || !symbol.fit()) return std::nullopt;
    return symbol.misfit();
}

} // namespace scanner::reader

#include "core/plan/gauss_laguerre.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core {
namespace {

/// The Jacobi matrix of the weight x^(shape−1)·e^(−x), and the first row of its eigenvectors in the making.
struct Tridiagonal {
    std::vector<double> diagonal; ///< becomes the eigenvalues
    std::vector<double> beside;   ///< beside[i] joins i and i + 1; the last is 0
    std::vector<double> first;

    Tridiagonal(double shape, int count)
        : diagonal(static_cast<std::size_t>(count))
        , beside(diagonal.size())
        , first(diagonal.size()) {
        for (std::size_t i = 0; i < diagonal.size(); ++i) {
            const auto k = static_cast<double>(i);
            diagonal[i] = 2 * k + shape;
            if (i + 1 < diagonal.size()) beside[i] = std::sqrt((k + 1) * (k + shape));
        }
        first[0] = 1;
    }

    std::size_t size() const { return diagonal.size(); }

    /// The first split at or after `from`: beside[it] is nothing.
    std::size_t splitAfter(std::size_t from) const {
        while (from + 1 < size()) {
            const double scale = std::abs(diagonal[from]) + std::abs(diagonal[from + 1]);
            if (std::abs(beside[from]) <= std::numeric_limits<double>::epsilon() * scale) break;
            ++from;
        }
        return from;
    }

    /// One implicit QL step with Wilkinson's shift on the block low … high.
    void step(std::size_t low, std::size_t high) {
        double g = (diagonal[low + 1] - diagonal[low]) / (2 * beside[low]);
        g = diagonal[high] - diagonal[low] + beside[low] / (g + std::copysign(std::hypot(g, 1.0), g));
        double sine = 1, cosine = 1, shift = 0;
        for (std::size_t i = high; i-- > low;) {
            const double f = sine * beside[i], b = cosine * beside[i];
            const double r = std::hypot(f, g);
            beside[i + 1] = r;
            if (r == 0) { // the block falls apart on its own
                diagonal[i + 1] -= shift;
                beside[high] = 0;
                return;
            }
            sine = f / r;
            cosine = g / r;
            const double ahead = diagonal[i + 1] - shift;
            const double turned = (diagonal[i] - ahead) * sine + 2 * cosine * b;
            shift = sine * turned;
            diagonal[i + 1] = ahead + shift;
            g = cosine * turned - b;
            const double of = first[i + 1];
            first[i + 1] = sine * first[i] + cosine * of;
            first[i] = cosine * first[i] - sine * of;
        }
        diagonal[low] -= shift;
        beside[low] = g;
        beside[high] = 0;
    }

    void solve() {
        for (std::size_t low = 0; low < size(); ++low)
            for (std::size_t high = splitAfter(low); high != low; high = splitAfter(low))
                step(low, high);
    }
};

} // namespace

std::vector<QuadratureNode> gaussLaguerre(double shape, int count) {
    constexpr double nothing = 1e-20;
    Tridiagonal matrix(shape, count);
    matrix.solve();
    std::vector<QuadratureNode> nodes;
    for (std::size_t i = 0; i < matrix.size(); ++i) {
        const double weight = matrix.first[i] * matrix.first[i];
        if (weight > nothing) nodes.push_back({std::max(matrix.diagonal[i], 0.0), weight});
    }
    std::sort(nodes.begin(), nodes.end(),
              [](const QuadratureNode& a, const QuadratureNode& b) { return a.at < b.at; });
    return nodes;
}

} // namespace core

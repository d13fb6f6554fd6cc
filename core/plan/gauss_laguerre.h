#pragma once

#include <vector>

namespace core {

/// A node of a quadrature rule.
struct QuadratureNode {
    double at = 0;
    double weight = 0;
};

/// Generalised Gauss–Laguerre: the mean of f(X) for X ~ Gamma(shape, 1) is about the sum of weight · f(at).
/// Nodes rise, weights add up to 1; nodes whose weight is below 1e-20 are left out. `shape` above 0, `count`
/// at least 1; takes O(count²). Source: Golub and Welsch, Mathematics of Computation 23 (1969) 221.
std::vector<QuadratureNode> gaussLaguerre(double shape, int count);

} // namespace core

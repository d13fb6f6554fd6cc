#pragma once

#include "scanner/reader/image/grid_pattern.h"
#include "scanner/reader/image/homography.h"
#include "scanner/reader/image/local_contrast.h"

#include <cmath>
#include <type_traits>

namespace scanner::reader {

/// Pearson's correlation of what is seen with what should be there (the target), as pairs come one by one.
/// Whole numbers are summed as such: the sums of squares must fit.
template <class Number>
struct Correlation {
    using Real = std::conditional_t<std::is_integral_v<Number>, double, Number>;

    Number count{}, sum{}, squares{}, targets{}, targetSquares{}, products{};

    void add(Number seen, Number target) {
        count += 1;
        sum += seen;
        squares += seen * seen;
        targets += target;
        targetSquares += target * target;
        products += seen * target;
    }

    /// Sum of squares about the mean; not-a-number while nothing was added.
    Real spread() const { return reduced(squares, sum, sum); }
    Real targetSpread() const { return reduced(targetSquares, targets, targets); }
    Real covariance() const { return reduced(products, sum, targets); }

    /// -1 to 1; 0 unless both spreads are larger than the least that is told from noise.
    Real value(Real leastSpread, Real leastTargetSpread = 0) const {
        const Real seen = spread(), wanted = targetSpread();
        return seen > leastSpread && wanted > leastTargetSpread ? covariance() / std::sqrt(seen * wanted) : 0;
    }

private:
    Real reduced(Number product, Number a, Number b) const {
        return static_cast<Real>(product) -
               static_cast<Real>(a) * static_cast<Real>(b) / static_cast<Real>(count);
    }
};

/// How a map agrees with a pattern's known modules where the mapping (modules to pixels of the map) puts
/// them, -1 to 1; one pixel a module, 0 outside the map. `negative`: light on dark.
double correlationOnMap(const ContrastMap& map, const GridPattern& pattern, const Homography& toMap,
                        bool negative);

} // namespace scanner::reader

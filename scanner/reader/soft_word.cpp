#include "scanner/reader/soft_word.h"

#include <numeric>

namespace scanner::reader {

int SoftWord::changedIn(std::span<const std::uint8_t> mended) const {
    int changed = 0;
    for (std::size_t i = 0; i < values.size(); ++i)
        changed += values[i] != mended[i];
    return changed;
}

std::vector<int> SoftWord::leastCertainFirst() const {
    std::vector<int> order(certainty.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return certainty[a] < certainty[b]; });
    return order;
}

} // namespace scanner::reader

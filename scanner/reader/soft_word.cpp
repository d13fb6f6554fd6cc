#include "scanner/reader/soft_word.h"

#include <numeric>

namespace scanner::reader {

std::vector<int> SoftWord::leastCertainFirst() const {
    std::vector<int> order(certainty.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return certainty[a] < certainty[b]; });
    return order;
}

} // namespace scanner::reader

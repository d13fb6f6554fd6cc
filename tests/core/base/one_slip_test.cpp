#include "core/base/one_slip.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace {

/// Damerau–Levenshtein distance of neighbours exchanged at most once (optimal string alignment), as the
/// textbook table fills it (from memory): slow, and another way than the one that is tested.
int distance(const std::string& a, const std::string& b) {
    std::vector<std::vector<int>> d(a.size() + 1, std::vector<int>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = static_cast<int>(i + j);
                continue;
            }
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] != b[j - 1])});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

void addTexts(std::vector<std::string>& texts, const std::string& text, std::size_t longest) {
    texts.push_back(text);
    if (text.size() == longest) return;
    for (const char c : {'a', 'b', 'c'})
        addTexts(texts, text + c, longest);
}

} // namespace

TEST(OneSlip, agreesWithTheDistanceOfAllShortTexts) {
    std::vector<std::string> texts;
    addTexts(texts, "", 5);
    int slips = 0;
    for (const std::string& a : texts)
        for (const std::string& b : texts) {
            const bool isSlip = distance(a, b) == 1;
            ASSERT_EQ(core::isOneSlip(a, b), isSlip) << a << " and " << b;
            slips += isSlip;
        }
    EXPECT_GT(slips, 1000);
}

TEST(OneSlip, isWhatHandsDo) {
    EXPECT_TRUE(core::isOneSlip("rib", "rhib"));
    EXPECT_TRUE(core::isOneSlip("paddle", "padlde"));
    EXPECT_FALSE(core::isOneSlip("rib", "rib"));
    EXPECT_FALSE(core::isOneSlip("rib", "rhibs"));
}

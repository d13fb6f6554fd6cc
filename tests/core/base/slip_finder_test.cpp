#include "core/base/one_slip.h"
#include "core/base/slip_finder.h"

#include <gtest/gtest.h>

namespace {

// Against the comparison of each with each.
TEST(SlipFinder, findsWhatTheComparisonOfAllFinds) {
    std::vector<std::string> texts{""};
    for (std::size_t from = 0; texts.size() < 121; ++from) // up to four letters of three
        for (const char c : {'a', 'b', 'c'})
            texts.push_back(texts[from] + c);
    core::SlipFinder finder;
    for (const std::string& text : texts)
        finder.add(text, "name of " + text);
    int found = 0;
    for (const std::string& text : texts) {
        std::vector<std::string> expected;
        for (const std::string& other : texts)
            if (core::isOneSlip(text, other)) expected.push_back("name of " + other);
        EXPECT_EQ(finder.oneSlipFrom(text), expected) << text;
        found += static_cast<int>(expected.size());
    }
    EXPECT_GT(found, 500);
    EXPECT_TRUE(finder.oneSlipFrom("zzzzzz").empty());
}

} // namespace

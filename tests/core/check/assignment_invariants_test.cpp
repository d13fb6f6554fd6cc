#include "core/check/boat_check.h"

#include "tests/core/check/check_support.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>

namespace core {
namespace {

// What must hold of every check, on large random ones: too large for brute force.

/// Twelve kit types, lines with substitutes, worn jackets for six people, and some 65 items of mixed state
/// and date for about as many places.
class RandomCheck {
public:
    explicit RandomCheck(unsigned seed)
        : m_random(seed) {
        for (int t = 0; t < types; ++t)
            check.type(typeName(t)).rules = {expiry(pick(2) ? Severity::Stop : Severity::Remark)};
        check.sizedType("jacket");
        check.line("jacket");
        for (int p = 0; p < 6; ++p)
            check.name("person " + std::to_string(p), 50 + pick(60));
        for (int t = 0; t < types; ++t) {
            std::vector<std::string> substitutes;
            for (int s = 0; s < types; ++s)
                if (s != t && pick(4) == 0) substitutes.push_back(typeName(s));
            check.line(typeName(t), 1 + pick(12), pick(3) > 0, substitutes);
        }
        const int items = 30 + pick(70);
        for (int i = 0; i < items; ++i)
            addItem(i);
        shuffle();
    }

    void shuffle() { std::shuffle(check.input.seen.begin(), check.input.seen.end(), m_random); }
    int pick(int below) { return static_cast<int>(m_random() % static_cast<unsigned>(below)); }

    SeenItem& addItem(int number) {
        const bool jacket = pick(10) == 0;
        SeenItem& seen =
            check.see("K" + std::to_string(1000 + number), jacket ? "jacket" : typeName(pick(types)));
        if (jacket) seen.record.item.size = std::string(1, "SML"[pick(3)]);
        if (pick(5) == 0) seen.record.item.boat = pick(2) ? "Teal" : "";
        if (pick(12) == 0) seen.record.item.state = ItemState::Unserviceable;
        seen.record.item.stamped = day("2026-01-01").plusDays(pick(900));
        return seen;
    }

    CheckBuilder check;

private:
    static constexpr int types = 12;
    static std::string typeName(int t) { return "type " + std::string(1, static_cast<char>('a' + t)); }

    std::mt19937 m_random;
};

int stops(const CheckAnswer& answer) {
    int count = 0;
    for (const Finding& finding : answer.findings)
        if (finding.severity == Severity::Stop) count += finding.quantity;
    return count;
}

std::vector<std::string> wholeAnswer(const CheckAnswer& answer) {
    auto text = briefOf(answer);
    for (const LineAnswer& line : answer.lines)
        text.push_back(briefOf(line));
    return text;
}

TEST(CheckInvariants, theOrderOfScanningNeverMatters) {
    for (unsigned seed = 0; seed < 40; ++seed) {
        RandomCheck random(seed);
        const auto before = random.check.answer();
        for (int i = 0; i < 3; ++i) {
            random.shuffle();
            const auto after = random.check.answer();
            ASSERT_EQ(wholeAnswer(after), wholeAnswer(before)) << "seed " << seed;
            ASSERT_EQ(after.score, before.score);
        }
    }
}

TEST(CheckInvariants, aGoodItemNeverAddsAStop) {
    int mattered = 0;
    for (unsigned seed = 100; seed < 160; ++seed) {
        RandomCheck random(seed);
        const auto before = random.check.answer();
        SeenItem& added = random.addItem(-500 + random.pick(2000));
        added.record.item.id += "X";
        added.record.item.state = ItemState::Serviceable;
        added.record.item.stamped = known("2030");
        if (added.record.item.kitType == "jacket") added.record.item.size.clear(); // it fits anybody
        const auto after = random.check.answer();
        ASSERT_LE(stops(after), stops(before)) << "seed " << seed;
        ASSERT_GE(after.score.required, before.score.required) << "seed " << seed;
        mattered += stops(after) < stops(before) ? 1 : 0;
    }
    EXPECT_GT(mattered, 5) << "the random checks are too full to prove anything";
}

TEST(CheckInvariants, takingAnItemAwayNeverFillsAPlace) {
    int mattered = 0;
    for (unsigned seed = 200; seed < 260; ++seed) {
        RandomCheck random(seed);
        const auto before = random.check.answer();
        random.check.input.seen.erase(random.check.input.seen.begin() + random.pick(30));
        const auto after = random.check.answer();
        const auto filled = [](const CheckAnswer& a) { return a.score.required + a.score.other; };
        ASSERT_LE(after.score.required, before.score.required) << "seed " << seed;
        ASSERT_LE(filled(after), filled(before)) << "seed " << seed;
        ASSERT_GE(filled(after), filled(before) - 1) << "seed " << seed;
        mattered += filled(after) < filled(before) ? 1 : 0;
    }
    EXPECT_GT(mattered, 5) << "the random checks are too full to prove anything";
}

TEST(CheckInvariants, theCountsOfTheLinesAddUpToTheBest) {
    for (unsigned seed = 300; seed < 320; ++seed) {
        const auto answer = RandomCheck(seed).check.answer();
        int required = 0, other = 0;
        for (const LineAnswer& line : answer.lines) {
            (line.line.required ? required : other) += line.counted;
            EXPECT_LE(line.counted, line.wanted);
            EXPECT_EQ(line.counted, std::count_if(line.items.begin(), line.items.end(),
                                                  [](const LineItem& i) { return i.counts; }));
        }
        EXPECT_EQ(required, answer.score.required);
        EXPECT_EQ(other, answer.score.other);
    }
}

} // namespace
} // namespace core

#include "app/gui/gear/bench/bench_round.h"

#include <gtest/gtest.h>

namespace {

std::vector<core::KitType> kitTypes() {
    core::KitType jacket;
    jacket.name = "life jacket";
    core::LifeRule test;
    test.name = "float test";
    test.kind = core::RuleKind::InspectEvery;
    core::LifeRule retire;
    retire.name = "retire";
    retire.kind = core::RuleKind::FromMade;
    jacket.rules = {test, retire};
    core::KitType oar;
    oar.name = "oar";
    return {jacket, oar};
}

QStringList inWords(const std::vector<app::ListRow>& rows) {
    QStringList words;
    for (const app::ListRow& row : rows)
        words << (row.isHeading ? row.title + ' ' + row.aside : row.code);
    return words;
}

const app::BenchScan jacketA{"KAAA", {"KAAA", "KAAA"}, "life jacket", "M"};
const app::BenchScan jacketB{"KBBB", {"KBBB", "KBBB"}, "life jacket", "L"};
const app::BenchScan oar{"KCCC", {"KCCC", "KCCC"}, "oar", ""};

} // namespace

TEST(BenchRound, onlyRulesThatARecordFulfilsAreOffered) {
    EXPECT_EQ(app::recordedRulesOf(kitTypes()), QStringList{"float test"});
}

TEST(BenchRound, eachThingCountsOnce) {
    app::BenchRound round;
    EXPECT_TRUE(round.add(jacketA));
    EXPECT_FALSE(round.add({"a maker's label", {"KAAA", "KAAA"}, "life jacket", "M"}));
    EXPECT_TRUE(round.add({"rubbish", {}, "", ""}));
    EXPECT_FALSE(round.add({"rubbish", {}, "", ""}));
    EXPECT_TRUE(round.add({"more rubbish", {}, "", ""}));
    EXPECT_EQ(round.scans().size(), 3u);
}

TEST(BenchRound, failuresStandApartAndTheNewestOnTop) {
    app::BenchRound round;
    round.add(jacketA);
    round.add(jacketB);
    round.add(oar);
    EXPECT_EQ(inWords(round.lines(kitTypes(), "Float test")),
              (QStringList{"passed 2", "KBBB", "KAAA", "not for this rule 1", "KCCC"}));
    round.toggle("KAAA");
    EXPECT_EQ(inWords(round.lines(kitTypes(), "float test")),
              (QStringList{"failed 1", "KAAA", "passed 1", "KBBB", "not for this rule 1", "KCCC"}));
    EXPECT_EQ(round.countOf(true, kitTypes(), "float test"), 1);
    EXPECT_EQ(round.countOf(false, kitTypes(), "float test"), 1);
    EXPECT_EQ(round.textsOf(true), std::vector<std::string>{"KAAA"});
    round.toggle("KAAA");
    EXPECT_EQ(round.textsOf(true), std::vector<std::string>{});
}

TEST(BenchRound, theLastOneIsTakenBack) {
    app::BenchRound round;
    round.takeBackLast();
    round.add(jacketA);
    round.add(jacketB);
    round.takeBackLast();
    EXPECT_EQ(round.textsOf(false), std::vector<std::string>{"KAAA"});
}

#include "core/base/error_code.h"
#include "core/exchange/csv_import.h"

#include "tests/core/exchange/exchange_support.h"

#include <gmock/gmock.h>

namespace {

using core::ErrorCode;
using support::MapRegister;
using support::planOf;
using testing::ElementsAre;
using testing::IsEmpty;

/// "boats.csv 2: code arguments": the code as its number.
std::vector<std::string> told(const core::ImportPlan& plan) {
    std::vector<std::string> texts;
    for (const core::RejectedRow& row : plan.warnings) {
        std::string text = row.file + ' ' + std::to_string(row.row) + ':';
        for (const std::string& argument : row.reason.arguments)
            text += ' ' + argument;
        texts.push_back(text);
        EXPECT_TRUE(row.column.empty());
    }
    return texts;
}

// A club of which each thing fits the others.
support::Files soundClub() {
    return {{"kit_types.csv", "kit_type,worn\nlife jacket,yes\nknife,\n"},
            {"life_rules.csv", "kit_type,rule,kind,n,source\nlife jacket,rearm,service_every,12,maker\n"},
            {"boats.csv", "boat,boat_class\nHeron,rhib\n"},
            {"manifest_lines.csv", "boat_class,kit_type\nrhib,life jacket\nrhib,knife\n"},
            {"items.csv", "code,kit_type\n,life jacket\n,knife\n"}};
}

ErrorCode firstCode(const core::ImportPlan& plan) {
    return plan.warnings.at(0).reason.code;
}

} // namespace

TEST(ImportWarnings, areNoneWhereAllFits) {
    MapRegister rows;
    const auto plan = planOf(soundClub(), rows);
    EXPECT_THAT(plan.rejected, IsEmpty());
    EXPECT_THAT(told(plan), IsEmpty());
    EXPECT_FALSE(plan.changes.empty());
}

TEST(ImportWarnings, nameALastDayOfWhatKitBelongsTo) {
    MapRegister rows;
    auto files = soundClub();
    files["places.csv"] = "place,until\nStore,2026-12-31\nLoft,2026-12-31\n";
    files["boats.csv"] = "boat,boat_class,until\nHeron,rhib,2026-10-31\nTeal,rhib,\n";
    files["people.csv"] = "person,until\nAda,2026-09-30\nBo,2026-09-30\n";
    files["items.csv"] = "kit_type,boat,place,person,state\nlife jacket,heron,,,\nknife,Heron,,,missing\n"
                         "knife,Teal,,,\nknife,,Loft,,written off\nknife,,Store,,\nlife jacket,,,Ada,\n";
    const auto plan = planOf(files, rows);
    EXPECT_THAT(told(plan), ElementsAre("places.csv 2: Store 2026-12-31 1", "boats.csv 2: Heron 2026-10-31 2",
                                        "people.csv 2: Ada 2026-09-30 1"));
    EXPECT_EQ(firstCode(plan), ErrorCode::KitOfEnded);
    EXPECT_FALSE(plan.changes.empty()) << "it is taken all the same";
}

TEST(ImportWarnings, nameOnceAHomeOfOldThatHasALastDay) {
    MapRegister rows;
    support::importInto(rows, {{"places.csv", "place,until\nLoft,2025-12-31\nStore,\n"}});
    auto files = soundClub();
    files["items.csv"] =
        "kit_type,place,state\nlife jacket,Loft,\nknife,loft,\nknife,Store,\nknife,Loft,written off\n";
    EXPECT_THAT(told(planOf(files, rows)), ElementsAre("items.csv 2: Loft 2025-12-31 2"));
    support::importInto(rows, {{"places.csv", "place,until\nLoft,-\n"}});
    EXPECT_THAT(told(planOf(files, rows)), IsEmpty());
}

/// docs/register-csv.md: an import takes them, with a warning.
TEST(ImportWarnings, nameDaysToComeAndUseBeforeAThingWasMade) {
    MapRegister rows;
    auto files = soundClub();
    files["items.csv"] = "code,kit_type,made,first_use\nKGFB6J8WF9,life jacket,2099-01-01,2098-05\n"
                         "KBDWAF2K6T,knife,2020-05,2020-05-01\n";
    files["services.csv"] = "code,rule,day\nKGFB6J8WF9,rearm,2072-01-31\nKGFB6J8WF9,rearm,2020-01-31\n";
    files["log.csv"] = "code,day,text\nKGFB6J8WF9,2072-01-31,torn\n";
    const auto plan = planOf(files, rows);
    EXPECT_THAT(plan.rejected, IsEmpty());
    EXPECT_THAT(told(plan), testing::IsSupersetOf({"items.csv 2: 2099-01-01", "items.csv 2: 2098-05",
                                                   "items.csv 2: 2098-05 2099-01-01"}));
    ASSERT_EQ(plan.warnings.size(), 5u);
    EXPECT_EQ(plan.warnings[3].file, "services.csv");
    EXPECT_EQ(plan.warnings[3].reason.code, ErrorCode::ServiceInFuture);
    EXPECT_EQ(plan.warnings[4].file, "log.csv");
}

TEST(ImportWarnings, nameAClassWithoutBoatAndABoatWithoutManifest) {
    MapRegister rows;
    auto files = soundClub();
    files["boats.csv"] = "boat,boat_class\nHeron,rib\nTeal,canoe\n";
    const auto plan = planOf(files, rows);
    EXPECT_THAT(told(plan), ElementsAre("boats.csv 2: Heron rib", "boats.csv 2: rib rhib",
                                        "boats.csv 3: Teal canoe", "manifest_lines.csv 2: rhib"));
    EXPECT_EQ(firstCode(plan), ErrorCode::BoatWithoutManifest);
    EXPECT_EQ(plan.warnings[1].reason.code, ErrorCode::ClassLikeAnother);
    EXPECT_EQ(plan.warnings[3].reason.code, ErrorCode::ClassWithoutBoat);
    EXPECT_FALSE(plan.changes.empty()) << "a warning refuses nothing";
}

TEST(ImportWarnings, nameABoatWithoutAClass) {
    MapRegister rows;
    auto files = soundClub();
    files["boats.csv"] = "boat,boat_class\nHeron,rhib\nTeal,\n";
    files["manifest_lines.csv"] = "boat_class,boat,kit_type\nrhib,,life jacket\n,Heron,knife\n";
    EXPECT_THAT(told(planOf(files, rows)), ElementsAre("boats.csv 3: Teal "));
}

TEST(ImportWarnings, aBoatsOwnLinesAreAManifest) {
    MapRegister rows;
    auto files = soundClub();
    files["boats.csv"] = "boat,boat_class\nHeron,rhib\nTeal,\n";
    EXPECT_THAT(told(planOf(files, rows)), ElementsAre("boats.csv 3: Teal "));
    files["manifest_lines.csv"] = "boat_class,boat,kit_type\nrhib,,life jacket\nrhib,,knife\n,Teal,knife\n";
    EXPECT_THAT(told(planOf(files, rows)), IsEmpty());
}

TEST(ImportWarnings, nameAKitTypeThatIsAlmostAnother) {
    MapRegister rows;
    auto files = soundClub();
    files["kit_types.csv"] = "kit_type,worn\nlife jacket,yes\nknife,\nknive,\nradio 1,\nradio 2,\n";
    const auto plan = planOf(files, rows);
    EXPECT_THAT(told(plan), ElementsAre("kit_types.csv 3: knife knive")) << "a number may be meant";
    EXPECT_EQ(firstCode(plan), ErrorCode::KitTypeLikeAnother);
}

TEST(ImportWarnings, nameAKitTypeThatNobodyHas) {
    MapRegister rows;
    auto files = soundClub();
    files["items.csv"] = "code,kit_type\n,life jacket\n";
    const auto plan = planOf(files, rows);
    EXPECT_THAT(told(plan), ElementsAre("manifest_lines.csv 3: knife"));
    EXPECT_EQ(firstCode(plan), ErrorCode::TypeWithoutItem);
    files["manifest_lines.csv"] = "boat_class,kit_type,quantity\nrhib,life jacket,1\nrhib,knife,0\n";
    EXPECT_THAT(told(planOf(files, rows)), IsEmpty()) << "none is asked for";
}

TEST(ImportWarnings, nameARuleWithoutSourceAndJacketsThatAreNotWorn) {
    MapRegister rows;
    auto files = soundClub();
    files["kit_types.csv"] = "kit_type,worn\nLife Jacket,\nknife,\n";
    files["life_rules.csv"] = "kit_type,rule,kind,n\nlife jacket,rearm,service_every,12\n";
    const auto plan = planOf(files, rows);
    EXPECT_THAT(told(plan),
                ElementsAre("kit_types.csv 2: Life Jacket", "life_rules.csv 2: rearm Life Jacket"));
    EXPECT_EQ(firstCode(plan), ErrorCode::JacketNotWorn);
    EXPECT_EQ(plan.warnings[1].reason.code, ErrorCode::RuleWithoutSource);
}

#include "core/exchange/csv_import.h"

#include "tests/core/exchange/exchange_support.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>

namespace {

using core::ErrorCode;
using support::MapRegister;
using support::planOf;

/// One file whose last row is bad, and the same row mended. The rules are the design's: the register as CSV,
/// rules 1–3.
struct BadRow {
    const char* file;
    const char* head; ///< header, and rows that stay as they are
    const char* bad;
    const char* good; ///< the twin that shows what the rejection hangs on
    const char* column;
    ErrorCode code;
    std::string first = {}, second = {}, third = {}, fourth = {}; ///< the arguments of the code
};

core::Error reasonOf(const BadRow& row) {
    core::Error reason{row.code};
    for (const std::string& argument : {row.first, row.second, row.third, row.fourth})
        if (!argument.empty()) reason.arguments.push_back(support::withCodes(argument));
    return reason;
}

void PrintTo(const BadRow& row, std::ostream* out) {
    *out << row.file << ' ' << row.bad << " (" << reasonOf(row) << ')';
}

class ImportRejections : public testing::TestWithParam<BadRow> {
protected:
    ImportRejections() { support::importInto(rows, support::smallClub()); }
    MapRegister rows;
};

TEST_P(ImportRejections, theBadRowIsNamedAndItsTwinIsGood) {
    const BadRow& given = GetParam();
    const std::string head = given.head;
    const auto lastRow = static_cast<int>(std::count(head.begin(), head.end(), '\n')) + 1;

    const auto bad = planOf({{given.file, head + given.bad + "\n"}}, rows);
    ASSERT_EQ(bad.rejected.size(), 1U) << support::describe(bad);
    EXPECT_EQ(bad.rejected[0].file, given.file);
    EXPECT_EQ(bad.rejected[0].row, lastRow);
    EXPECT_EQ(bad.rejected[0].column, given.column);
    EXPECT_EQ(bad.rejected[0].reason, reasonOf(given));
    EXPECT_TRUE(bad.changes.empty());

    const auto good = planOf({{given.file, head + given.good + "\n"}}, rows);
    EXPECT_EQ(support::describe(good), "");
}

INSTANTIATE_TEST_SUITE_P(
    Header, ImportRejections,
    testing::Values(
        BadRow{"places.csv", "", "place,colour\nLoft,red", "place,note\nLoft,red", "colour",
               ErrorCode::ColumnUnknown, "colour", "places.csv", "place, tag, until, note"},
        BadRow{"places.csv", "", "place,Place\nLoft,Loft", "place\nLoft", "Place", ErrorCode::ColumnTwice,
               "Place"},
        BadRow{"places.csv", "", "note\nLoft", "place\nLoft", "place", ErrorCode::KeyColumnMissing, "place"},
        BadRow{"places.csv", "", "place;note\nLoft;red", "place,note\nLoft,red", "place;note",
               ErrorCode::ImportNotByCommas},
        BadRow{"places.csv", "", "place,\nLoft,", "place\nLoft", "", ErrorCode::ColumnWithoutName, "2"}));

INSTANTIATE_TEST_SUITE_P(
    Shape, ImportRejections,
    testing::Values(
        BadRow{"places.csv", "place,note\nLoft,x\n", "Bench,a,b", "Bench,\"a,b\"", "", ErrorCode::RowLength,
               "3", "2"},
        BadRow{"places.csv", "place,note\nLoft,x\n", "Bench", "Bench,", "", ErrorCode::RowLength, "1", "2"},
        BadRow{"places.csv", "place,note\n", "Bench,8\" rope", "Bench,\"8\"\" rope\"", "",
               ErrorCode::CsvQuoteInCell},
        BadRow{"places.csv", "place,note\n", "M\xFCller,x", "M\xC3\xBCller,x", "place",
               ErrorCode::TextNotUtf8, "M\uFFFDller"},
        BadRow{"places.csv", "place,note\n", "Loft,a\x01", "Loft,a", "note", ErrorCode::TextUnseen, "a\\x01"},
        BadRow{"places.csv", "place,note\nLoft,x\n", "LOFT,y", "Loft 2,y", "place", ErrorCode::KeyTwice, "2"},
        BadRow{"places.csv", "place,note\n", ",y", "Loft,y", "place", ErrorCode::KeyCellMissing, "place"},
        BadRow{"sizes.csv", "kit_type,size\nlife jacket,L\n", "Life Jacket,l", "life jacket,XL", "size",
               ErrorCode::KeyTwice, "2"},
        BadRow{"services.csv", "code,rule,day\n{K2},yearly look,2026-01-02\n", "{K2},Yearly look,2026-01-02",
               "{K2},yearly look,2026-01-03", "day", ErrorCode::KeyTwice, "2"}));

INSTANTIATE_TEST_SUITE_P(
    Cells, ImportRejections,
    testing::Values(
        BadRow{"items.csv", "code,kit_type,made\n", "{K3},paddle,2026-02-30", "{K3},paddle,2026-02-28",
               "made", ErrorCode::CellNotInCalendar, "2026-02-30"},
        BadRow{"items.csv", "code,kit_type,made\n", "{K3},paddle,14/03/2026", "{K3},paddle,2026-03", "made",
               ErrorCode::CellNotADay, "14/03/2026"},
        BadRow{"items.csv", "code,kit_type,state\n", "{K3},paddle,broken", "{K3},paddle,missing", "state",
               ErrorCode::CellNotAChoice, "broken", "serviceable, unserviceable, missing, written off"},
        BadRow{"items.csv", "code,kit_type,why\n", "{K3},paddle,stolen", "{K3},paddle,lost", "why",
               ErrorCode::CellNotAChoice, "stolen", "lost, damaged, worn, expired, mistake"},
        BadRow{"items.csv", "code,kit_type,gtin\n", "{K3},paddle,4006381333930", "{K3},paddle,4006381333931",
               "gtin", ErrorCode::CellGtinCheckDigit, "4006381333930"},
        BadRow{"items.csv", "code,kit_type\n", "K0000000000,paddle", "{K3},paddle", "code",
               ErrorCode::TagLength, "K0000000000", "11"},
        BadRow{"items.csv", "code,kit_type\n", "{B1},paddle", "{K3},paddle", "code",
               ErrorCode::CellNotAKitTag, "{B1}"},
        BadRow{"places.csv", "place,tag\n", "Loft,{B3}", "Loft,{S2}", "tag", ErrorCode::CellNotAShelfTag,
               "{B3}"},
        BadRow{"boats.csv", "boat,until\n", "Teal,soon", "Teal,2026-10-31", "until", ErrorCode::CellNotADay,
               "soon"},
        BadRow{"people.csv", "person,tag\n", "Cy,{K3}", "Cy,{P2}", "tag", ErrorCode::CellNotAPersonTag,
               "{K3}"},
        BadRow{"people.csv", "person,mass_kg\n", "Cy,\"72,5\"", "Cy,72.5", "mass_kg",
               ErrorCode::CellNumberWithComma, "72,5"},
        BadRow{"people.csv", "person,mass_kg\n", "Cy,-70", "Cy,70", "mass_kg", ErrorCode::CellNegative,
               "-70"},
        BadRow{"people.csv", "person,role\n", "Cy,captain", "Cy,Gear Officer", "role",
               ErrorCode::CellNotAChoice, "captain", "crew, driver, gear officer"},
        BadRow{"boats.csv", "boat,priority\n", "Snipe,-1", "Snipe,0.5", "priority", ErrorCode::CellNegative,
               "-1"},
        BadRow{"kit_types.csv", "kit_type,worn\n", "rope,maybe", "rope,NO", "worn", ErrorCode::CellNotAChoice,
               "maybe", "yes, no"},
        BadRow{"kit_types.csv", "kit_type,spares\n", "rope,-2", "rope,2", "spares", ErrorCode::CellNegative,
               "-2"},
        BadRow{"kit_types.csv", "kit_type,pack\n", "rope,0", "rope,6", "pack", ErrorCode::PackOfNothing},
        BadRow{"manifest_lines.csv", "boat_class,kit_type,quantity\n", "Inshore,oar,1.5", "Inshore,oar,0",
               "quantity", ErrorCode::CellNotWhole, "1.5"},
        BadRow{"manifest_lines.csv", "boat_class,kit_type,quantity\n", "Inshore,oar,1001", "Inshore,oar,1000",
               "quantity", ErrorCode::LineTooLarge, "1001", "1000"},
        BadRow{"use.csv", "code,day,launches\n", "{K1},2026-03-01,some", "{K1},2026-03-01,3", "launches",
               ErrorCode::CellNotANumber, "some"}));

INSTANTIATE_TEST_SUITE_P(
    References, ImportRejections,
    testing::Values(
        BadRow{"items.csv", "code,kit_type\n", "{K3},pedal", "{K3},Paddle", "kit_type",
               ErrorCode::ReferredRowMissing, "kit_type", "pedal", "kit_types.csv"},
        BadRow{"items.csv", "code,kit_type\n", "{K3},", "{K3},paddle", "kit_type", ErrorCode::CellMissing,
               "kit_type"},
        BadRow{"items.csv", "code,kit_type,size\n", "{K3},life jacket,XL", "{K3},life jacket,m", "size",
               ErrorCode::ReferredSizeMissing, "XL", "life jacket"},
        BadRow{"items.csv", "code,kit_type,size\n", "{K3},paddle,M", "{K3},paddle,", "size",
               ErrorCode::ReferredSizeMissing, "M", "paddle"},
        BadRow{"items.csv", "code,kit_type\n", "{K2},paddle", "{K2},LIFE JACKET", "size",
               ErrorCode::ReferredSizeMissing, "M", "paddle"},
        BadRow{"items.csv", "code,kit_type,boat\n", "{K3},paddle,Swan", "{K3},paddle,Teal", "boat",
               ErrorCode::ReferredRowMissing, "boat", "Swan", "boats.csv"},
        BadRow{"items.csv", "code,kit_type,place\n", "{K3},paddle,Loft", "{K3},paddle,boat shed", "place",
               ErrorCode::ReferredRowMissing, "place", "Loft", "places.csv"},
        BadRow{"items.csv", "code,kit_type,person\n", "{K3},whistle,Cy", "{K3},whistle,Bo", "person",
               ErrorCode::ReferredRowMissing, "person", "Cy", "people.csv"},
        BadRow{"boats.csv", "boat,place\n", "Snipe,Loft", "Snipe,Boat Shed", "place",
               ErrorCode::ReferredRowMissing, "place", "Loft", "places.csv"},
        BadRow{"sizes.csv", "kit_type,size\n", "wetsuit,M", "vest,M", "kit_type",
               ErrorCode::ReferredRowMissing, "kit_type", "wetsuit", "kit_types.csv"},
        BadRow{"life_rules.csv", "kit_type,rule,kind\n", "flare,printed,stamped", "vest,printed,stamped",
               "kit_type", ErrorCode::ReferredRowMissing, "kit_type", "flare", "kit_types.csv"},
        BadRow{"manifest_lines.csv", "boat,kit_type\n", "Swan,oar", "Heron,oar", "boat",
               ErrorCode::ReferredRowMissing, "boat", "Swan", "boats.csv"},
        BadRow{"manifest_lines.csv", "boat,kit_type,substitutes\n", "Heron,oar,paddle;pole",
               "Heron,oar,paddle", "substitutes", ErrorCode::ReferredRowMissing, "kit_type", "pole",
               "kit_types.csv"},
        BadRow{"points.csv", "boat,phase,point,kind\n", "Swan,launch,hull,look", "Heron,launch,hull,look",
               "boat", ErrorCode::ReferredRowMissing, "boat", "Swan", "boats.csv"},
        BadRow{"parts.csv", "code,part\n", "{K9},strap", "{K1},strap", "code", ErrorCode::ReferredItemMissing,
               "{K9}", "items.csv"},
        BadRow{"services.csv", "code,rule,day\n", "{K1},yearly look,2026", "{K2},yearly look,2026", "rule",
               ErrorCode::ReferredRuleMissing, "yearly look", "paddle"},
        BadRow{"services.csv", "code,part,rule,day\n", "{K2},cylinder,yearly look,2026",
               "{K2},cylinder,cylinder weight,2026", "rule", ErrorCode::ReferredPartRuleMissing,
               "yearly look", "cylinder", "life jacket"},
        BadRow{"services.csv", "code,rule,day\n", "{K2},yearly look,", "{K2},yearly look,2025-06", "day",
               ErrorCode::KeyCellMissing, "day"},
        BadRow{"happenings.csv", "code,event,day\n", "{K9},impact,2026", "{K1},impact,2026", "code",
               ErrorCode::ReferredItemMissing, "{K9}", "items.csv"},
        BadRow{"use.csv", "code,day,hours\n", "{K9},2026,1", "{K1},2026,1", "code",
               ErrorCode::ReferredItemMissing, "{K9}", "items.csv"},
        BadRow{"log.csv", "boat,day,text\n", "Swan,2026-03-01,torn", "Teal,2026-03-01,torn", "boat",
               ErrorCode::ReferredRowMissing, "boat", "Swan", "boats.csv"},
        BadRow{"log.csv", "code,day,text\n", "{K9},2026-03-01,torn", "{K1},2026-03-01,torn", "code",
               ErrorCode::ReferredItemMissing, "{K9}", "items.csv"}));

INSTANTIATE_TEST_SUITE_P(
    CellsTogether, ImportRejections,
    testing::Values(
        BadRow{"items.csv", "code,kit_type,boat,place\n", "{K3},paddle,Heron,Boat shed", "{K3},paddle,Heron,",
               "place", ErrorCode::ItemWithTwoHomes, "Heron", "Boat shed"},
        BadRow{"log.csv", "boat,code,day,text\n", "Heron,{K1},2026-03-01,torn", "Heron,,2026-03-01,torn",
               "code", ErrorCode::BothGiven, "boat", "code"},
        BadRow{"log.csv", "boat,code,day,text\n", ",,2026-03-01,torn", ",{K1},2026-03-01,torn", "boat",
               ErrorCode::NeitherGiven, "boat", "code"},
        BadRow{"manifest_lines.csv", "boat_class,boat,kit_type\n", "Inshore,Heron,oar", "Inshore,,oar",
               "boat", ErrorCode::BothGiven, "boat_class", "boat"},
        BadRow{"points.csv", "boat_class,boat,phase,point,kind\n", ",,launch,hull,look",
               ",Heron,launch,hull,look", "boat_class", ErrorCode::NeitherGiven, "boat_class", "boat"},
        BadRow{"points.csv", "boat_class,phase,point,kind\n", "Inshore,launch,hull,",
               "Inshore,launch,hull,look", "kind", ErrorCode::CellMissing, "kind"},
        BadRow{"points.csv", "boat_class,phase,point,kind\n", "Inshore,,hull,look",
               "Inshore,return,hull,look", "phase", ErrorCode::KeyCellMissing, "phase"},
        BadRow{"points.csv", "boat_class,phase,point,kind,low,high\n", "Inshore,launch,air,measure,20,17",
               "Inshore,launch,air,measure,-17,20", "low", ErrorCode::RangeReversed, "low", "20", "high",
               "17"},
        BadRow{"sizes.csv", "kit_type,size,mass_low_kg,mass_high_kg\n", "vest,M,70,50", "vest,M,70,70",
               "mass_low_kg", ErrorCode::RangeReversed, "mass_low_kg", "70", "mass_high_kg", "50"},
        BadRow{"sizes.csv", "kit_type,size,chest_low_cm,chest_high_cm\n", "vest,M,100,90", "vest,M,90,",
               "chest_low_cm", ErrorCode::RangeReversed, "chest_low_cm", "100", "chest_high_cm", "90"},
        BadRow{"sizes.csv", "kit_type,size,mass_high_kg\n", "life jacket,M,40", "life jacket,M,90",
               "mass_low_kg", ErrorCode::RangeReversed, "mass_low_kg", "50", "mass_high_kg", "40"},
        BadRow{"manifest_lines.csv", "boat,kit_type,substitutes\n", "Heron,life jacket,paddle",
               "Heron,life jacket,vest", "substitutes", ErrorCode::SubstituteDisagrees, "paddle",
               "life jacket", "worn"},
        BadRow{"manifest_lines.csv", "boat,kit_type,substitutes\n", "Heron,whistle,paddle",
               "Heron,paddle,oar", "substitutes", ErrorCode::SubstituteDisagrees, "paddle", "whistle",
               "personal"},
        BadRow{"kit_types.csv", "kit_type,worn\n", "oar,yes", "oar,no", "worn", ErrorCode::LineWouldDisagree,
               "paddle", "worn"},
        BadRow{"kit_types.csv", "kit_type,personal\n", "paddle,yes", "whistle,no", "personal",
               ErrorCode::LineWouldDisagree, "paddle", "personal"}));

INSTANTIATE_TEST_SUITE_P(
    LifeRules, ImportRejections,
    testing::Values(
        BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,from_made,", "vest,r,from_made,120", "n",
               ErrorCode::RuleNeedsNumber, "from_made"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,every_hours,0", "vest,r,every_hours,0.5",
               "n", ErrorCode::RuleNeedsNumber, "every_hours"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,service_every,1.5",
               "vest,r,service_every,2", "n", ErrorCode::RuleNeedsWholeNumber, "1.5", "service_every"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,year_end_from_made,20000",
               "vest,r,year_end_from_made,12", "n", ErrorCode::RuleNumberTooLarge, "20000"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,stamped,12", "vest,r,stamped,", "n",
               ErrorCode::RuleCountsNothing, "stamped"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n,event\n", "vest,r,after_event,3,impact",
               "vest,r,after_event,,impact", "n", ErrorCode::RuleCountsNothing, "after_event"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,event\n", "vest,r,after_event,",
               "vest,r,after_event,impact", "event", ErrorCode::EventMissing},
        BadRow{"life_rules.csv", "kit_type,rule,kind,event\n", "vest,r,stamped,impact", "vest,r,stamped,",
               "event", ErrorCode::EventNotWaitedFor},
        BadRow{"life_rules.csv", "kit_type,rule,kind\n", "vest,r,", "vest,r,stamped", "kind",
               ErrorCode::CellMissing, "kind"},
        BadRow{"life_rules.csv", "kit_type,rule,kind\n", "vest,r,monthly", "vest,r,STAMPED", "kind",
               ErrorCode::CellNotAChoice, "monthly",
               "stamped, from_made, from_first_use, year_end_from_made, inspect_every, service_every, "
               "every_hours, every_uses, after_event"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n", "vest,r,inspect_every,24,108:12;100:6",
               "vest,r,inspect_every,24,100:12;108:6", "steps", ErrorCode::CellNotSteps, "108:12;100:6"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n", "vest,r,inspect_every,24,108:0",
               "vest,r,inspect_every,24,108:1", "steps", ErrorCode::CellNotSteps, "108:0"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n", "vest,r,inspect_every,24,108:1.5",
               "vest,r,every_hours,24,108:1.5", "steps", ErrorCode::StepsNotWhole, "inspect_every"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n", "vest,r,from_made,24,108:12",
               "vest,r,service_every,24,108:12", "steps", ErrorCode::RuleWithoutSteps, "from_made"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,tolerance\n", "vest,r,stamped,2 weeks",
               "vest,r,stamped,14d", "tolerance", ErrorCode::CellNotATolerance, "2 weeks"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,undated\n", "vest,r,stamped,unknown",
               "vest,r,stamped,Ignore", "undated", ErrorCode::CellNotAChoice, "unknown",
               "stop, remark, ignore"},
        BadRow{"life_rules.csv", "kit_type,rule,kind,lead_days\n", "vest,r,stamped,-1", "vest,r,stamped,0",
               "lead_days", ErrorCode::CellNegative, "-1"}));

INSTANTIATE_TEST_SUITE_P(
    Unique, ImportRejections,
    testing::Values(
        BadRow{"boats.csv", "boat,tag\n", "Teal,{B1}", "Teal,{B2}", "tag", ErrorCode::TagTaken, "Heron",
               "{B1}"},
        BadRow{"boats.csv", "boat,tag\nSnipe,{B3}\n", "Plover,{B3}", "Plover,{B4}", "tag",
               ErrorCode::TagTaken, "Snipe", "{B3}"},
        BadRow{"people.csv", "person,tag\n", "Bo,{P1}", "Bo,{P2}", "tag", ErrorCode::TagTaken, "Ada", "{P1}"},
        BadRow{"places.csv", "place,tag\nLoft,{S1}\n", "Van,{S1}", "Van,{S2}", "tag", ErrorCode::TagTaken,
               "Loft", "{S1}"},
        BadRow{"items.csv", "code,kit_type,gtin,serial\n", "{K3},life jacket,4006381333931,A1",
               "{K3},life jacket,4006381333931,A2", "serial", ErrorCode::SerialTaken, "KC0KD4WA89", "A1"},
        BadRow{"items.csv", "code,kit_type,gtin,serial\n{K3},paddle,4006381333931,A7\n",
               "{K4},paddle,4006381333931,A7", "{K4},paddle,96385074,A7", "serial", ErrorCode::SerialTaken,
               "{K3}", "A7"}));

class ImportFiles : public testing::Test {
protected:
    core::RejectedRow onlyRejection(const support::Files& files) {
        const auto plan = planOf(files, rows);
        EXPECT_EQ(plan.rejected.size(), 1U) << support::describe(plan);
        EXPECT_TRUE(plan.changes.empty());
        return plan.rejected.empty() ? core::RejectedRow{} : plan.rejected[0];
    }
    MapRegister rows;
    const support::Files places{{"places.csv", "place\nLoft\n"}};
};

TEST_F(ImportFiles, anUnknownFileIsRefusedByName) {
    const auto rejected = onlyRejection({{"places.csv", "place\nLoft\n"}, {"boat.csv", "boat\nHeron\n"}});
    EXPECT_EQ(rejected.file, "boat.csv");
    EXPECT_EQ(rejected.reason.code, ErrorCode::ImportFileUnknown);
    EXPECT_THAT(rejected.reason.arguments, testing::ElementsAre(testing::HasSubstr("boats.csv")));
    EXPECT_EQ(support::describe(planOf(places, rows)), "");
}

TEST_F(ImportFiles, aFileWithoutAHeaderIsRefused) {
    EXPECT_EQ(onlyRejection({{"places.csv", ""}}).reason, core::Error{ErrorCode::ImportWithoutHeader});
    EXPECT_EQ(support::describe(planOf({{"places.csv", "place\n"}}, rows)), "");
}

TEST_F(ImportFiles, aFileInUtf16IsNamedAsThat) {
    EXPECT_EQ(onlyRejection({{"places.csv", "\xFF\xFEp"}}).reason, core::Error{ErrorCode::ImportUtf16});
}

TEST_F(ImportFiles, bytesInANameThatAreNoUtf8AreShownAsUtf8) {
    const auto rejected = onlyRejection({{"b\xFC.csv", "x\n"}});
    EXPECT_EQ(rejected.file, "b\uFFFD.csv");
}

TEST_F(ImportFiles, aFileInBothSpellingsIsRefused) {
    const auto rejected = onlyRejection({{"places.csv", "place\nLoft\n"}, {"Places.csv", "place\nBench\n"}});
    EXPECT_EQ(rejected.reason, core::Error{ErrorCode::ImportFileTwice});
}

TEST_F(ImportFiles, aFolderNamedAsAFileIsRefused) {
    const support::ScratchFolder folder;
    std::filesystem::create_directory(folder / "places.csv");
    const auto plan = core::planImport(folder.path(), rows, *core::CalendarDay::parse("2026-03-14"),
                                       [](core::TagClass) { return support::kitCode(1); });
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->rejected.size(), 1U);
    EXPECT_EQ(plan->rejected[0].file, "places.csv");
    EXPECT_EQ(plan->rejected[0].row, 0);
    EXPECT_EQ(plan->rejected[0].column, "");
    EXPECT_EQ(plan->rejected[0].reason, core::Error{ErrorCode::ImportNotAFile});
}

} // namespace

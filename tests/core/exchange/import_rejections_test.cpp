#include "core/exchange/csv_import.h"

#include "tests/core/exchange/exchange_support.h"
#include "tests/support/scratch_folder.h"

#include <gmock/gmock.h>

namespace {

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
    const char* reason; ///< part of it
};

void PrintTo(const BadRow& row, std::ostream* out) {
    *out << row.file << ' ' << row.bad << " (" << row.reason << ')';
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
    EXPECT_THAT(bad.rejected[0].reason, testing::HasSubstr(given.reason));
    EXPECT_TRUE(bad.changes.empty());

    const auto good = planOf({{given.file, head + given.good + "\n"}}, rows);
    EXPECT_EQ(support::describe(good), "");
}

INSTANTIATE_TEST_SUITE_P(
    Header, ImportRejections,
    testing::Values(BadRow{"places.csv", "", "place,colour\nLoft,red", "place,note\nLoft,red", "colour",
                           "unknown column 'colour': places.csv has place, note"},
                    BadRow{"places.csv", "", "place,Place\nLoft,Loft", "place\nLoft", "Place", "there twice"},
                    BadRow{"places.csv", "", "note\nLoft", "place\nLoft", "place",
                           "the column place is missing"},
                    BadRow{"places.csv", "", "place;note\nLoft;red", "place,note\nLoft,red", "place;note",
                           "with commas between them"},
                    BadRow{"places.csv", "", "place,\nLoft,", "place\nLoft", "", "column 2 has no name"}));

INSTANTIATE_TEST_SUITE_P(
    Shape, ImportRejections,
    testing::Values(
        BadRow{"places.csv", "place,note\nLoft,x\n", "Bench,a,b", "Bench,\"a,b\"", "",
               "3 cells where the header has 2"},
        BadRow{"places.csv", "place,note\nLoft,x\n", "Bench", "Bench,", "", "1 cells where the header has 2"},
        BadRow{"places.csv", "place,note\n", "Bench,8\" rope", "Bench,\"8\"\" rope\"", "",
               "double each quote mark"},
        BadRow{"places.csv", "place,note\n", "M\xFCller,x", "M\xC3\xBCller,x", "place",
               "save the file as UTF-8"},
        BadRow{"places.csv", "place,note\n", "Loft,a\x01", "Loft,a", "note", "control character"},
        BadRow{"places.csv", "place,note\nLoft,x\n", "LOFT,y", "Loft 2,y", "place", "row 2 has the same key"},
        BadRow{"places.csv", "place,note\n", ",y", "Loft,y", "place", "the place is missing"},
        BadRow{"sizes.csv", "kit_type,size\nlife jacket,L\n", "Life Jacket,l", "life jacket,XL", "size",
               "same key"},
        BadRow{"services.csv", "code,rule,day\n{K2},yearly look,2026-01-02\n", "{K2},Yearly look,2026-01-02",
               "{K2},yearly look,2026-01-03", "day", "same key"}));

INSTANTIATE_TEST_SUITE_P(
    Cells, ImportRejections,
    testing::Values(
        BadRow{"items.csv", "code,kit_type,made\n", "{K3},paddle,2026-02-30", "{K3},paddle,2026-02-28",
               "made", "not in the calendar"},
        BadRow{"items.csv", "code,kit_type,made\n", "{K3},paddle,14/03/2026", "{K3},paddle,2026-03", "made",
               "write 2026-03-14, 2026-03 or 2026"},
        BadRow{"items.csv", "code,kit_type,state\n", "{K3},paddle,broken", "{K3},paddle,missing", "state",
               "write serviceable, unserviceable"},
        BadRow{"items.csv", "code,kit_type,why\n", "{K3},paddle,stolen", "{K3},paddle,lost", "why",
               "lost, damaged"},
        BadRow{"items.csv", "code,kit_type,gtin\n", "{K3},paddle,4006381333930", "{K3},paddle,4006381333931",
               "gtin", "check digit"},
        BadRow{"items.csv", "code,kit_type\n", "K0000000000,paddle", "{K3},paddle", "code", "ten characters"},
        BadRow{"items.csv", "code,kit_type\n", "{B1},paddle", "{K3},paddle", "code", "no tag code of kit"},
        BadRow{"people.csv", "person,tag\n", "Cy,{K3}", "Cy,{P2}", "tag", "no tag code of a person"},
        BadRow{"people.csv", "person,mass_kg\n", "Cy,\"72,5\"", "Cy,72.5", "mass_kg", "full stop"},
        BadRow{"people.csv", "person,mass_kg\n", "Cy,-70", "Cy,70", "mass_kg", "0 or more"},
        BadRow{"people.csv", "person,role\n", "Cy,captain", "Cy,Gear Officer", "role",
               "crew, driver, gear officer"},
        BadRow{"boats.csv", "boat,priority\n", "Snipe,-1", "Snipe,0.5", "priority", "0 or more"},
        BadRow{"kit_types.csv", "kit_type,worn\n", "rope,maybe", "rope,NO", "worn", "yes, no"},
        BadRow{"kit_types.csv", "kit_type,spares\n", "rope,-2", "rope,2", "spares", "0 or more"},
        BadRow{"kit_types.csv", "kit_type,pack\n", "rope,0", "rope,6", "pack", "1 or more"},
        BadRow{"manifest_lines.csv", "boat_class,kit_type,quantity\n", "Inshore,oar,1.5", "Inshore,oar,0",
               "quantity", "whole number"},
        BadRow{"manifest_lines.csv", "boat_class,kit_type,quantity\n", "Inshore,oar,1001", "Inshore,oar,1000",
               "quantity", "at most 1000"},
        BadRow{"use.csv", "code,day,launches\n", "{K1},2026-03-01,some", "{K1},2026-03-01,3", "launches",
               "is no number"}));

INSTANTIATE_TEST_SUITE_P(
    References, ImportRejections,
    testing::Values(
        BadRow{"items.csv", "code,kit_type\n", "{K3},pedal", "{K3},Paddle", "kit_type",
               "no kit_type 'pedal' in kit_types.csv or in the club file"},
        BadRow{"items.csv", "code,kit_type\n", "{K3},", "{K3},paddle", "kit_type", "the kit_type is missing"},
        BadRow{"items.csv", "code,kit_type,size\n", "{K3},life jacket,XL", "{K3},life jacket,m", "size",
               "no size 'XL' of kit_type 'life jacket'"},
        BadRow{"items.csv", "code,kit_type,size\n", "{K3},paddle,M", "{K3},paddle,", "size", "no size 'M'"},
        BadRow{"items.csv", "code,kit_type\n", "{K2},paddle", "{K2},LIFE JACKET", "size",
               "no size 'M' of kit_type 'paddle'"},
        BadRow{"items.csv", "code,kit_type,boat\n", "{K3},paddle,Swan", "{K3},paddle,Teal", "boat",
               "no boat 'Swan'"},
        BadRow{"items.csv", "code,kit_type,place\n", "{K3},paddle,Loft", "{K3},paddle,boat shed", "place",
               "no place 'Loft'"},
        BadRow{"items.csv", "code,kit_type,person\n", "{K3},whistle,Cy", "{K3},whistle,Bo", "person",
               "no person 'Cy'"},
        BadRow{"boats.csv", "boat,place\n", "Snipe,Loft", "Snipe,Boat Shed", "place", "no place 'Loft'"},
        BadRow{"sizes.csv", "kit_type,size\n", "wetsuit,M", "vest,M", "kit_type", "no kit_type 'wetsuit'"},
        BadRow{"life_rules.csv", "kit_type,rule,kind\n", "flare,printed,stamped", "vest,printed,stamped",
               "kit_type", "no kit_type 'flare'"},
        BadRow{"manifest_lines.csv", "boat,kit_type\n", "Swan,oar", "Heron,oar", "boat", "no boat 'Swan'"},
        BadRow{"manifest_lines.csv", "boat,kit_type,substitutes\n", "Heron,oar,paddle;pole",
               "Heron,oar,paddle", "substitutes", "no kit_type 'pole'"},
        BadRow{"points.csv", "boat,phase,point,kind\n", "Swan,launch,hull,look", "Heron,launch,hull,look",
               "boat", "no boat 'Swan'"},
        BadRow{"parts.csv", "code,part\n", "{K9},strap", "{K1},strap", "code", "no item"},
        BadRow{"services.csv", "code,rule,day\n", "{K1},yearly look,2026", "{K2},yearly look,2026", "rule",
               "no life rule 'yearly look' without a part of kit_type 'paddle'"},
        BadRow{"services.csv", "code,part,rule,day\n", "{K2},cylinder,yearly look,2026",
               "{K2},cylinder,cylinder weight,2026", "rule", "for the part 'cylinder'"},
        BadRow{"services.csv", "code,rule,day\n", "{K2},yearly look,", "{K2},yearly look,2025-06", "day",
               "the day is missing"},
        BadRow{"happenings.csv", "code,event,day\n", "{K9},impact,2026", "{K1},impact,2026", "code",
               "no item"},
        BadRow{"use.csv", "code,day,hours\n", "{K9},2026,1", "{K1},2026,1", "code", "no item"},
        BadRow{"log.csv", "boat,day,text\n", "Swan,2026-03-01,torn", "Teal,2026-03-01,torn", "boat",
               "no boat 'Swan'"},
        BadRow{"log.csv", "code,day,text\n", "{K9},2026-03-01,torn", "{K1},2026-03-01,torn", "code",
               "no item"}));

INSTANTIATE_TEST_SUITE_P(
    CellsTogether, ImportRejections,
    testing::Values(
        BadRow{"items.csv", "code,kit_type,boat,place\n", "{K3},paddle,Heron,Boat shed", "{K3},paddle,Heron,",
               "place", "keep one and write - in the other"},
        BadRow{"log.csv", "boat,code,day,text\n", "Heron,{K1},2026-03-01,torn", "Heron,,2026-03-01,torn",
               "code", "exactly one"},
        BadRow{"log.csv", "boat,code,day,text\n", ",,2026-03-01,torn", ",{K1},2026-03-01,torn", "boat",
               "exactly one"},
        BadRow{"manifest_lines.csv", "boat_class,boat,kit_type\n", "Inshore,Heron,oar", "Inshore,,oar",
               "boat", "exactly one"},
        BadRow{"points.csv", "boat_class,boat,phase,point,kind\n", ",,launch,hull,look",
               ",Heron,launch,hull,look", "boat_class", "exactly one"},
        BadRow{"points.csv", "boat_class,phase,point,kind\n", "Inshore,launch,hull,",
               "Inshore,launch,hull,look", "kind", "the kind is missing"},
        BadRow{"points.csv", "boat_class,phase,point,kind\n", "Inshore,,hull,look",
               "Inshore,return,hull,look", "phase", "the phase is missing"},
        BadRow{"points.csv", "boat_class,phase,point,kind,low,high\n", "Inshore,launch,air,measure,20,17",
               "Inshore,launch,air,measure,-17,20", "low", "above"},
        BadRow{"sizes.csv", "kit_type,size,mass_low_kg,mass_high_kg\n", "vest,M,70,50", "vest,M,70,70",
               "mass_low_kg", "above"},
        BadRow{"sizes.csv", "kit_type,size,chest_low_cm,chest_high_cm\n", "vest,M,100,90", "vest,M,90,",
               "chest_low_cm", "above"},
        BadRow{"sizes.csv", "kit_type,size,mass_high_kg\n", "life jacket,M,40", "life jacket,M,90",
               "mass_low_kg", "above"},
        BadRow{"manifest_lines.csv", "boat,kit_type,substitutes\n", "Heron,life jacket,paddle",
               "Heron,life jacket,vest", "substitutes", "do not agree in worn"},
        BadRow{"manifest_lines.csv", "boat,kit_type,substitutes\n", "Heron,whistle,paddle",
               "Heron,paddle,oar", "substitutes", "do not agree in personal"},
        BadRow{"kit_types.csv", "kit_type,worn\n", "oar,yes", "oar,no", "worn", "no longer agree in worn"},
        BadRow{"kit_types.csv", "kit_type,personal\n", "paddle,yes", "whistle,no", "personal",
               "no longer agree"}));

INSTANTIATE_TEST_SUITE_P(
    LifeRules, ImportRejections,
    testing::Values(BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,from_made,",
                           "vest,r,from_made,120", "n", "above 0"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,every_hours,0",
                           "vest,r,every_hours,0.5", "n", "above 0"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,service_every,1.5",
                           "vest,r,service_every,2", "n", "whole"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,year_end_from_made,20000",
                           "vest,r,year_end_from_made,12", "n", "at most 12000"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n\n", "vest,r,stamped,12", "vest,r,stamped,",
                           "n", "counts nothing"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n,event\n", "vest,r,after_event,3,impact",
                           "vest,r,after_event,,impact", "n", "counts nothing"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,event\n", "vest,r,after_event,",
                           "vest,r,after_event,impact", "event", "waits for an event: name it"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,event\n", "vest,r,stamped,impact",
                           "vest,r,stamped,", "event", "leave the cell empty"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind\n", "vest,r,", "vest,r,stamped", "kind",
                           "the kind is missing"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind\n", "vest,r,monthly", "vest,r,STAMPED",
                           "kind", "from_made"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n",
                           "vest,r,inspect_every,24,108:12;100:6", "vest,r,inspect_every,24,100:12;108:6",
                           "steps", "rising age"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n", "vest,r,inspect_every,24,108:0",
                           "vest,r,inspect_every,24,108:1", "steps", "n above 0"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n",
                           "vest,r,inspect_every,24,108:1.5", "vest,r,every_hours,24,108:1.5", "steps",
                           "whole numbers"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,n,steps\n", "vest,r,from_made,24,108:12",
                           "vest,r,service_every,24,108:12", "steps", "does not count from a record"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,tolerance\n", "vest,r,stamped,2 weeks",
                           "vest,r,stamped,14d", "tolerance", "end_of_month"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,undated\n", "vest,r,stamped,unknown",
                           "vest,r,stamped,Ignore", "undated", "stop, remark, ignore"},
                    BadRow{"life_rules.csv", "kit_type,rule,kind,lead_days\n", "vest,r,stamped,-1",
                           "vest,r,stamped,0", "lead_days", "0 or more"}));

INSTANTIATE_TEST_SUITE_P(
    Unique, ImportRejections,
    testing::Values(BadRow{"boats.csv", "boat,tag\n", "Teal,{B1}", "Teal,{B2}", "tag", "'Heron' has the tag"},
                    BadRow{"boats.csv", "boat,tag\nSnipe,{B3}\n", "Plover,{B3}", "Plover,{B4}", "tag",
                           "'Snipe' has the tag"},
                    BadRow{"people.csv", "person,tag\n", "Bo,{P1}", "Bo,{P2}", "tag", "'Ada' has the tag"},
                    BadRow{"items.csv", "code,kit_type,gtin,serial\n", "{K3},life jacket,4006381333931,A1",
                           "{K3},life jacket,4006381333931,A2", "serial", "already"},
                    BadRow{"items.csv", "code,kit_type,gtin,serial\n{K3},paddle,4006381333931,A7\n",
                           "{K4},paddle,4006381333931,A7", "{K4},paddle,96385074,A7", "serial", "already"}));

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
    EXPECT_THAT(rejected.reason, testing::HasSubstr("boats.csv"));
    EXPECT_EQ(support::describe(planOf(places, rows)), "");
}

TEST_F(ImportFiles, aFileWithoutAHeaderIsRefused) {
    EXPECT_THAT(onlyRejection({{"places.csv", ""}}).reason, testing::HasSubstr("no header row"));
    EXPECT_EQ(support::describe(planOf({{"places.csv", "place\n"}}, rows)), "");
}

TEST_F(ImportFiles, aFileInUtf16IsNamedAsThat) {
    EXPECT_THAT(onlyRejection({{"places.csv", "\xFF\xFEp"}}).reason, testing::HasSubstr("UTF-16"));
}

TEST_F(ImportFiles, bytesInANameThatAreNoUtf8AreShownAsUtf8) {
    const auto rejected = onlyRejection({{"b\xFC.csv", "x\n"}});
    EXPECT_EQ(rejected.file, "b\uFFFD.csv");
}

TEST_F(ImportFiles, aFileInBothSpellingsIsRefused) {
    const auto rejected = onlyRejection({{"places.csv", "place\nLoft\n"}, {"Places.csv", "place\nBench\n"}});
    EXPECT_THAT(rejected.reason, testing::HasSubstr("there twice"));
}

TEST_F(ImportFiles, aFolderNamedAsAFileIsRefused) {
    const support::ScratchFolder folder;
    std::filesystem::create_directory(folder / "places.csv");
    const auto plan = core::planImport(folder.path(), rows, *core::CalendarDay::parse("2026-03-14"),
                                       [] { return support::kitCode(1); });
    ASSERT_TRUE(plan);
    EXPECT_THAT(support::describe(*plan), testing::HasSubstr("places.csv:0:: it is no file"));
}

} // namespace

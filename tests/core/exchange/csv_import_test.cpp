#include "core/exchange/csv_import.h"

#include "tests/core/exchange/exchange_support.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"

#include <fstream>
#include <gmock/gmock.h>
#include <set>

namespace {

using core::SheetId;
using support::Files;
using support::kitCode;
using support::MapRegister;
using support::planOf;
using testing::ElementsAre;
using testing::Pair;

std::string cell(const core::RegisterRows& rows, SheetId id, const std::string& key,
                 std::string_view column) {
    const auto cells = rows.find(id, key);
    EXPECT_TRUE(cells) << key;
    return cells ? cells->at(static_cast<std::size_t>(core::sheet(id).indexOf(column))) : "(no row)";
}

std::string itemKey(int number) {
    return core::foldName(kitCode(number));
}

class CsvImport : public testing::Test {
protected:
    CsvImport() { support::importInto(rows, support::smallClub()); }
    MapRegister rows;
};

TEST_F(CsvImport, countsTheGoodRowsOfEachFile) {
    const auto plan = planOf({{"places.csv", "place\nLoft\nBench\n"}, {"boats.csv", "boat\nSnipe\n"}}, rows);
    EXPECT_THAT(plan.accepted, ElementsAre(Pair("places.csv", 2), Pair("boats.csv", 1)));
    EXPECT_EQ(plan.changes.size(), 3U);
}

TEST_F(CsvImport, theSameFilesAgainChangeNothing) {
    const auto plan = planOf(support::smallClub(), rows);
    EXPECT_EQ(support::describe(plan), "");
    EXPECT_TRUE(plan.changes.empty());
}

TEST_F(CsvImport, namesTakeTheSpellingOfWhatTheyReferTo) {
    support::importInto(rows,
                        {{"items.csv", "kit_type,code,size,boat,person\n LIFE jacket ,{K3},m,HERON,ada\n"},
                         {"manifest_lines.csv", "boat,kit_type,substitutes\nheron,PADDLE,OAR;oar;Paddle\n"},
                         {"boats.csv", "boat,boat_class\nSnipe,INSHORE\n"}});
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(3), "kit_type"), "life jacket");
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(3), "size"), "M");
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(3), "boat"), "Heron");
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(3), "person"), "Ada");
    EXPECT_EQ(cell(rows, SheetId::ManifestLines, "\x1Fheron\x1Fpaddle", "substitutes"), "oar");
    EXPECT_EQ(cell(rows, SheetId::ManifestLines, "\x1Fheron\x1Fpaddle", "boat"), "Heron");
    EXPECT_EQ(cell(rows, SheetId::Boats, "snipe", "boat_class"), "Inshore");
}

TEST_F(CsvImport, partsRulesAndEventsTakeTheSpellingOfTheRules) {
    support::importInto(rows,
                        {{"parts.csv", "code,part\n{K2},CYLINDER\n"},
                         {"services.csv", "code,part,rule,day\n{K2},cylinder,Cylinder WEIGHT,2026-01\n"},
                         {"happenings.csv", "code,event,day\n{K2},inflated,2026-02-01\n"}});
    EXPECT_EQ(cell(rows, SheetId::Parts,
                   itemKey(2) + "\x1F"
                                "cylinder",
                   "part"),
              "Cylinder");
    const auto services = rows.all(SheetId::Services);
    ASSERT_EQ(services.size(), 1U);
    EXPECT_THAT(services[0], ElementsAre(kitCode(2), "Cylinder", "cylinder weight", "2026-01", "", "", ""));
    EXPECT_EQ(rows.all(SheetId::Happenings).at(0).at(1), "Inflated");
}

TEST_F(CsvImport, aBoatsOwnPointTakesTheSpellingOfItsClass) {
    support::importInto(
        rows, {{"points.csv", "boat,phase,point,kind\nteal,Launch,BUNG,look\nTeal,return,BUNG,look\n"}});
    const auto points = rows.where(SheetId::Points, "boat", "Teal");
    ASSERT_EQ(points.size(), 2U);
    EXPECT_EQ(points[0].at(3), "bung");
    EXPECT_EQ(points[1].at(3), "BUNG"); // another phase, so another point
}

TEST_F(CsvImport, aKnownRowKeepsItsSpelling) {
    const auto plan = planOf({{"boats.csv", "boat,note\nHERON,new engine\n"}}, rows);
    ASSERT_EQ(plan.changes.size(), 1U);
    EXPECT_EQ(plan.changes[0].keyCells, (core::Cells{"Heron"}));
    EXPECT_FALSE(plan.changes[0].isNew);
    EXPECT_THAT(plan.changes[0].set,
                ElementsAre(Pair(core::sheet(SheetId::Boats).indexOf("note"), "new engine")));
}

TEST_F(CsvImport, emptyCellsLeaveTheOldValueAndHyphensClearIt) {
    support::importInto(rows, {{"boats.csv", "boat,priority,note,place\nHeron,2.50,old,Boat shed\n"}});
    support::importInto(rows, {{"boats.csv", "boat,priority,note,place\nHeron,,-,\n"}});
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "priority"), "2.5");
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "note"), "");
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "place"), "Boat shed");
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "boat_class"), "Inshore");
}

TEST_F(CsvImport, theSameValueInAnotherSpellingIsNoChange) {
    support::importInto(rows, {{"boats.csv", "boat,priority\nHeron,2\n"}});
    EXPECT_TRUE(
        planOf({{"boats.csv", "boat,priority,boat_class\nheron,2.0,INSHORE\n"}}, rows).changes.empty());
    EXPECT_TRUE(planOf({{"items.csv", "code,gtin\n{K2},4006381333931\n"}}, rows).changes.empty());
    EXPECT_FALSE(planOf({{"boats.csv", "boat,priority\nheron,3\n"}}, rows).changes.empty());
}

TEST_F(CsvImport, newItemsAreRegisteredToday) {
    support::importInto(rows, {{"items.csv", "code,kit_type,registered\n{K3},paddle,\n{K4},paddle,2019\n"}});
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(3), "registered"), "2026-03-14");
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(4), "registered"), "2019");
}

TEST_F(CsvImport, itemsWithoutACodeAreNewAndGetUnusedOnes) {
    // The tests' mint begins at 101: that code is taken by a row further down.
    const std::string taken = kitCode(101);
    const Files files{{"items.csv", "code,kit_type\n,paddle\n-,oar\n" + taken + ",whistle\n"}};
    support::importInto(rows, files);
    EXPECT_EQ(rows.all(SheetId::Items).size(), 5U);
    EXPECT_EQ(cell(rows, SheetId::Items, core::foldName(taken), "kit_type"), "whistle");
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(102), "kit_type"), "paddle");
    EXPECT_EQ(cell(rows, SheetId::Items, itemKey(103), "kit_type"), "oar");
}

// As kit does: docs/register-csv.md, "tag".
TEST_F(CsvImport, newBoatsPeopleAndPlacesWithoutATagGetUnusedOnes) {
    const std::string taken = support::tagCode(core::TagClass::Boat, 101);
    support::importInto(rows, {{"places.csv", "place\nLoft\n"},
                               {"boats.csv", "boat,tag\nGrebe,\nSnipe," + taken + "\nRail,-\n"},
                               {"people.csv", "person,tag\nCy,\nDi,{P2}\n"}});
    const auto tagOf = [&](SheetId id, const char* key) { return cell(rows, id, key, "tag"); };
    EXPECT_EQ(tagOf(SheetId::Boats, "snipe"), taken);
    EXPECT_EQ(tagOf(SheetId::People, "di"), support::withCodes("{P2}"));
    std::set<std::string> minted{tagOf(SheetId::Boats, "grebe"), tagOf(SheetId::Boats, "rail")};
    EXPECT_EQ(minted.size(), 2U);
    EXPECT_FALSE(minted.contains(taken));
    minted.insert(tagOf(SheetId::People, "cy"));
    minted.insert(tagOf(SheetId::Places, "loft"));
    std::string classes;
    for (const std::string& tag : minted) {
        EXPECT_TRUE(core::TagCode::exact(tag)) << tag;
        classes += tag.substr(0, 1);
    }
    EXPECT_EQ(classes, "BBPS");
}

TEST_F(CsvImport, aRowThatIsThereKeepsToHaveNoTag) {
    support::importInto(rows, {{"boats.csv", "boat,tag\nTeal,-\n"}, {"people.csv", "person,tag\nBo,-\n"}});
    support::importInto(rows,
                        {{"boats.csv", "boat,note\nTeal,red\n"}, {"people.csv", "person,note\nBo,new\n"}});
    EXPECT_EQ(cell(rows, SheetId::Boats, "teal", "tag"), "");
    EXPECT_EQ(cell(rows, SheetId::Boats, "teal", "note"), "red");
    EXPECT_EQ(cell(rows, SheetId::People, "bo", "tag"), "");
}

TEST_F(CsvImport, aMintThatGivesOnlyTakenTagsOfBoatsIsReported) {
    const support::ScratchFolder folder;
    support::writeFiles(folder.path(), {{"boats.csv", "boat\nGrebe\n"}});
    const auto planWith = [&](int number) {
        return core::planImport(folder.path(), rows, *core::CalendarDay::parse("2026-03-14"),
                                [=](core::TagClass tagClass) { return support::tagCode(tagClass, number); });
    };
    EXPECT_TRUE(planWith(7)->rejected.empty());
    const auto plan = planWith(1); // Heron's
    ASSERT_EQ(plan->rejected.size(), 1U);
    EXPECT_EQ(plan->rejected[0].column, "tag");
    EXPECT_EQ(plan->rejected[0].reason, core::Error{core::ErrorCode::NoFreeTagCode});
}

TEST_F(CsvImport, aLastDayIsTakenAndCleared) {
    support::importInto(rows, {{"places.csv", "place,until\nBoat shed,2026-12-31\n"},
                               {"boats.csv", "boat,until\nHeron,2026-10\nTeal,2027\n"},
                               {"people.csv", "person,until\nAda,2026-09-30\n"}});
    EXPECT_EQ(cell(rows, SheetId::Places, "boat shed", "until"), "2026-12-31");
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "until"), "2026-10-31")
        << "a month's last day, as of an expiry";
    EXPECT_EQ(cell(rows, SheetId::Boats, "teal", "until"), "2027-12-31");
    EXPECT_EQ(cell(rows, SheetId::People, "ada", "until"), "2026-09-30");
    support::importInto(rows, {{"boats.csv", "boat,until\nHeron,-\n"}});
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "until"), "");
}

TEST_F(CsvImport, theCodeColumnMayBeLeftOut) {
    support::importInto(rows, {{"items.csv", "kit_type\npaddle\npaddle\n"}});
    EXPECT_EQ(rows.all(SheetId::Items).size(), 4U);
}

TEST_F(CsvImport, aMintThatGivesOnlyTakenCodesIsReported) {
    const support::ScratchFolder folder;
    support::writeFiles(folder.path(), {{"items.csv", "kit_type\npaddle\n"}});
    const auto plan = core::planImport(folder.path(), rows, *core::CalendarDay::parse("2026-03-14"),
                                       [](core::TagClass) { return kitCode(1); });
    ASSERT_TRUE(plan);
    ASSERT_EQ(plan->rejected.size(), 1U);
    EXPECT_EQ(plan->rejected[0].reason, core::Error{core::ErrorCode::NoFreeTagCode});
}

TEST_F(CsvImport, newLinesStandBehindThoseOfTheirClassOrBoat) {
    const auto plan = planOf({{"manifest_lines.csv", "boat_class,boat,kit_type,quantity\n"
                                                     "inshore,,whistle,\n"
                                                     ",Teal,paddle,0\n"
                                                     "Inshore,,paddle,2\n"
                                                     "Inshore,,life jacket,2\n"
                                                     ",Teal,whistle,3\n"}},
                             rows);
    ASSERT_EQ(plan.changes.size(), 5U);
    EXPECT_EQ(plan.changes[0].order, 1);
    EXPECT_EQ(plan.changes[1].order, 0);
    EXPECT_EQ(plan.changes[2].order, std::nullopt);
    EXPECT_EQ(plan.changes[3].order, 2);
    EXPECT_EQ(plan.changes[4].order, 1);
}

TEST_F(CsvImport, readsWhatSpreadsheetsWrite) {
    support::importInto(
        rows, {{"places.csv",
                "\xEF\xBB\xBF\"Note\",\" PLACE \"\r\n\"two\r\nlines, \"\"here\"\"\",Loft\r\n,,\r\n\r\n"}});
    EXPECT_EQ(cell(rows, SheetId::Places, "loft", "note"), "two lines, \"here\"");
    support::importInto(rows, {{"places.csv", "place,note\rBench,'=1+1\r"}});
    EXPECT_EQ(cell(rows, SheetId::Places, "bench", "note"), "=1+1");
    support::importInto(rows, {{"Places.CSV", "place\nAttic\n"}});
    EXPECT_TRUE(rows.find(SheetId::Places, "attic"));
}

TEST_F(CsvImport, quantityZeroTakesALineAway) {
    support::importInto(rows, {{"manifest_lines.csv", "boat,kit_type,quantity\nTeal,paddle,0\n"}});
    EXPECT_EQ(cell(rows, SheetId::ManifestLines, "\x1Fteal\x1Fpaddle", "quantity"), "0");
}

TEST_F(CsvImport, twoBoatsMayExchangeTheirTags) {
    support::importInto(rows, {{"boats.csv", "boat,tag\nTeal,{B2}\n"}});
    support::importInto(rows, {{"boats.csv", "boat,tag\nTeal,{B1}\nHeron,{B2}\n"}});
    EXPECT_EQ(cell(rows, SheetId::Boats, "teal", "tag"), support::withCodes("{B1}"));
    EXPECT_EQ(cell(rows, SheetId::Boats, "heron", "tag"), support::withCodes("{B2}"));
}

TEST_F(CsvImport, filesThatAreNoCsvAreIgnored) {
    const auto plan = planOf(
        {{"README.md", "# hello"}, {"places.csv", "place\nLoft\n"}, {".~lock.places.csv#", "x"}}, rows);
    EXPECT_EQ(support::describe(plan), "");
    EXPECT_EQ(plan.changes.size(), 1U);
}

TEST_F(CsvImport, everyBadRowIsListedInOrderAndNothingIsPlanned) {
    const auto plan = planOf({{"places.csv", "place,note\nLoft,\n,nameless\n"},
                              {"items.csv", "code,kit_type,made,boat\n{K3},paddle,2026-02-30,Nowhere\n"
                                            "{K4},paddle,2024,Heron\n"
                                            "{K5},pedal,,Heron\n"}},
                             rows);
    std::vector<std::string> places;
    for (const auto& row : plan.rejected)
        places.push_back(row.file + ":" + std::to_string(row.row) + ":" + row.column);
    EXPECT_THAT(places, ElementsAre("places.csv:3:place", "items.csv:2:boat", "items.csv:2:made",
                                    "items.csv:4:kit_type"));
    EXPECT_THAT(plan.accepted, ElementsAre(Pair("places.csv", 1), Pair("items.csv", 1)));
    EXPECT_TRUE(plan.changes.empty());
}

TEST_F(CsvImport, aBadRowIsNotHeldAgainstTheRowsThatReferToIt) {
    const auto plan = planOf({{"boats.csv", "boat,priority\nSnipe,high\nPlover,1,\n"},
                              {"items.csv", "code,kit_type,boat\n{K3},paddle,Snipe\n{K4},paddle,Plover\n"},
                              {"parts.csv", "code,part\n{K3},strap\n"}},
                             rows);
    ASSERT_EQ(plan.rejected.size(), 2U) << support::describe(plan);
    EXPECT_EQ(plan.rejected[0].column, "priority");
    EXPECT_EQ(plan.rejected[1].reason, (core::Error{core::ErrorCode::RowLength, {"3", "2"}}));
}

TEST_F(CsvImport, aFileBeyondUseIsNotHeldAgainstOtherFiles) {
    const auto plan = planOf({{"boats.csv", "boat,note\n\"Snipe,x\n"},
                              {"items.csv", "code,kit_type,boat\n{K3},paddle,Snipe\n{K4},pedal,Heron\n"}},
                             rows);
    ASSERT_EQ(plan.rejected.size(), 2U) << support::describe(plan);
    EXPECT_EQ(plan.rejected[0].reason, core::Error{core::ErrorCode::CsvQuoteOpen});
    EXPECT_EQ(plan.rejected[1].row, 3);
}

TEST_F(CsvImport, reportsItsProgressToTheEnd) {
    const support::ScratchFolder folder;
    support::writeFiles(folder.path(), support::smallClub());
    int last = 0;
    int whole = 0;
    const auto plan = core::planImport(
        folder.path(), rows, *core::CalendarDay::parse("2026-03-14"),
        [](core::TagClass) { return kitCode(1); },
        [&](int done, int of) {
            EXPECT_GE(done, last);
            last = done;
            whole = of;
        });
    ASSERT_TRUE(plan);
    EXPECT_EQ(last, whole);
    EXPECT_EQ(whole, 18); // rows of smallClub
}

TEST(CsvImportFolder, aMissingOrEmptyFolderIsAnError) {
    const support::ScratchFolder folder;
    const MapRegister rows;
    const auto plan = [&](const std::filesystem::path& path) {
        return core::planImport(path, rows, *core::CalendarDay::parse("2026-03-14"),
                                [](core::TagClass) { return kitCode(1); });
    };
    EXPECT_EQ(plan(folder / "nowhere").error().kind(), core::ErrorKind::FileMissing);
    EXPECT_EQ(plan(folder.path()).error(),
              (core::Error{core::ErrorCode::FolderWithoutCsv, {}, folder.path().string()}));
    std::ofstream(folder / "places.csv") << "place\nLoft\n";
    EXPECT_TRUE(plan(folder.path()));
    EXPECT_FALSE(plan(folder / "places.csv"));
}

} // namespace

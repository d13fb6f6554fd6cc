#include "core/answers/history.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/register/new_kit.h"
#include "core/tag/tag_code.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>
#include <set>

namespace {

using core::ErrorCode;
using core::Scanned;
using support::SmallClub;
using testing::ElementsAre;
using testing::HasSubstr;

// docs/command-line.md, "tags" and "retag"; docs/register-csv.md, "tag".

class Tags : public testing::Test {
protected:
    std::string tagOf(const std::string& name) const {
        return small.club.kit().tagLabels({name})->front().code;
    }
    core::Result<std::string> retag(const std::string& asked) {
        return small.club.kit().replaceTag(asked, "Bram Oke", small.now);
    }
    ErrorCode refused(const std::string& asked) const {
        const auto labels = small.club.kit().tagLabels({asked});
        return labels ? ErrorCode::EndOfCodes : labels.error().code;
    }
    SmallClub small;
};

TEST_F(Tags, allThatIsNewHasOne) {
    small.import("places.csv", "place\nLoft\n");
    const auto labels = small.club.kit().allTagLabels(small.now.today);
    ASSERT_TRUE(labels);
    std::string classes;
    std::set<std::string> codes;
    for (const core::TagLabel& each : *labels) {
        classes += each.code.substr(0, 1);
        codes.insert(each.code);
        EXPECT_TRUE(core::TagCode::exact(each.code)) << each.code;
    }
    EXPECT_EQ(classes, "KKKKKKKBBPPS") << "kit, boats, people, places";
    EXPECT_EQ(codes.size(), labels->size());
    const core::TagLabel place = labels->back();
    EXPECT_EQ(place.name, "Loft");
    EXPECT_EQ(small.club.kit().tagLabels({"tern"})->front().owner, "inflatable");
}

TEST_F(Tags, ofABoatPersonAndPlaceAreReplaced) {
    small.import("places.csv", "place\nLoft\n");
    for (const std::string name : {"Tern", "Bram Oke", "Loft"}) {
        const std::string old = tagOf(name);
        const auto tag = retag(name == "Tern" ? old : name);
        ASSERT_TRUE(tag) << support::described(tag.error());
        EXPECT_NE(*tag, old);
        EXPECT_EQ(tag->front(), old.front());
        EXPECT_EQ(tagOf(name), *tag);
        EXPECT_EQ(refused(old), ErrorCode::NothingHasTag) << "it no longer works";
    }
    EXPECT_EQ(small.club.register_().boatOfTag(tagOf("Tern"))->name, "Tern");
    EXPECT_EQ(small.club.answers().history(tagOf("Bram Oke"))->size(), 2U);
    EXPECT_TRUE(small.club.record().verify(true)->problems.empty());
}

TEST_F(Tags, theNewTagOfAPersonNamesThatPersonAndTheOldOneNobody) {
    const std::string old = tagOf("Bram Oke"), tag = *retag("Bram Oke");
    const std::string check = small.open();
    EXPECT_EQ(small.scan(check, old).what, Scanned::What::UnknownTag);
    EXPECT_EQ(small.scan(check, tag).name, "Bram Oke");
}

TEST_F(Tags, aNameThatSeveralHaveIsToldApartByTheirTags) {
    small.import("places.csv", "place\nPetrel\n");
    const auto labels = small.club.kit().tagLabels({"petrel"});
    ASSERT_FALSE(labels);
    EXPECT_EQ(labels.error().code, ErrorCode::NameOfSeveral);
    const std::string boat = small.club.register_().boat("Petrel")->tag;
    EXPECT_THAT(labels.error().arguments[1], HasSubstr("boat " + core::TagCode::exact(boat)->grouped()));
    EXPECT_THAT(labels.error().arguments[1], HasSubstr("place S"));
    EXPECT_FALSE(retag("Petrel"));
    ASSERT_TRUE(retag(boat));
    EXPECT_NE(small.club.register_().boat("Petrel")->tag, boat);
}

TEST_F(Tags, whatNothingIsCalledIsToldSo) {
    EXPECT_EQ(refused("Swan"), ErrorCode::NothingSoCalled);
    EXPECT_EQ(refused("K000000018"), ErrorCode::NothingHasTag);
    std::string slip = tagOf("Tern");
    slip[4] = slip[4] == '7' ? '8' : '7';
    EXPECT_EQ(refused(slip), ErrorCode::TagLikeOthers);
    EXPECT_EQ(refused("Tern"), ErrorCode::EndOfCodes);
}

TEST_F(Tags, ofWrittenOffKitAreNotPrinted) {
    ASSERT_TRUE(small.club.kit().writeOff("KGFB6J8WF9", "worn", "Bram Oke", small.now));
    EXPECT_EQ(refused("KGFB6J8WF9"), ErrorCode::TagForWrittenOff);
    EXPECT_EQ(refused("K80NSC1FX4"), ErrorCode::EndOfCodes);
    const auto all = small.club.kit().allTagLabels(small.now.today);
    for (const core::TagLabel& each : *all)
        EXPECT_NE(each.code, "KGFB6J8WF9");
}

TEST_F(Tags, ofWhatIsGoneArePrintedOnlyWhenAskedFor) {
    ASSERT_TRUE(small.club.register_().end(core::Named::Boat, "Tern", small.now.today, {}, small.now));
    const auto isAmongAll = [&](const char* today) {
        const auto all = small.club.kit().allTagLabels(*core::CalendarDay::parse(today));
        for (const core::TagLabel& each : *all)
            if (each.name == "Tern") return true;
        return false;
    };
    EXPECT_TRUE(isAmongAll("2026-03-14"));
    EXPECT_FALSE(isAmongAll("2026-03-15"));
    EXPECT_EQ(refused("Tern"), ErrorCode::EndOfCodes);
}

TEST_F(Tags, whatHasNoneIsGivenOneWhenAskedFor) {
    small.import("boats.csv", "boat,tag\nTern,-\n");
    EXPECT_EQ(tagOf("Tern"), "");
    EXPECT_EQ(small.club.kit().allTagLabels(small.now.today)->size(), 7U + 1 + 2) << "Petrel and the people";
    const std::string petrel = tagOf("Petrel");
    ASSERT_TRUE(small.club.kit().giveMissingTags({"Tern", "Petrel", "KGFB6J8WF9"}, {}, small.now));
    EXPECT_EQ(tagOf("Tern").front(), 'B');
    EXPECT_EQ(tagOf("Petrel"), petrel);
}

TEST_F(Tags, ofTwoThingsAreNeverOne) {
    const std::string taken = tagOf("Petrel");
    std::filesystem::create_directories(small.folder / "more");
    const auto rejectedBy = [&](const std::string& tag) {
        support::writeFile(small.folder / "more" / "boats.csv", "boat,tag\nTern," + tag + "\n");
        return small.club.register_().importCsv(small.folder / "more", small.now.today, true)->rejected;
    };
    const auto rejected = rejectedBy(taken);
    ASSERT_EQ(rejected.size(), 1U);
    EXPECT_EQ(rejected[0].reason, (core::Error{ErrorCode::TagTaken, {"Petrel", taken}}));
    EXPECT_TRUE(rejectedBy("B00000001S").empty());
}

TEST_F(Tags, aLaterTagOfAnItemBeginsNoSecondItem) {
    const std::string tag = *retag("KGFB6J8WF9"), third = *retag("KGFB6J8WF9");
    std::filesystem::create_directories(small.folder / "more");
    const auto planFor = [&](const std::string& code) {
        support::writeFile(small.folder / "more" / "items.csv", "code,kit_type\n" + code + ",knife\n");
        return small.club.register_().importCsv(small.folder / "more", small.now.today, true).value();
    };
    for (const std::string& later : {tag, third}) {
        const auto plan = planFor(later);
        ASSERT_EQ(plan.rejected.size(), 1U);
        EXPECT_EQ(plan.rejected[0].reason, (core::Error{ErrorCode::TagTaken, {"KGFB6J8WF9", later}}));
    }
    EXPECT_TRUE(planFor("KGFB6J8WF9").rejected.empty()) << "its code in the record";
    EXPECT_TRUE(planFor(small.club.kit().mintCodes(1).front()).rejected.empty());
}

TEST_F(Tags, anExportComesInAgainAndChangesNothing) {
    small.import("places.csv", "place\nLoft\n");
    ASSERT_TRUE(small.club.register_().exportCsv(small.folder / "out", {}));
    const auto again = small.club.register_().importCsv(small.folder / "out", small.now.today, true);
    ASSERT_TRUE(again && again->rejected.empty());
    EXPECT_TRUE(again->changes.empty());
}

TEST_F(Tags, ofAShelfMeanNothingInACheck) {
    small.import("places.csv", "place\nLoft\n");
    const std::string check = small.open();
    EXPECT_EQ(small.scan(check, tagOf("Loft")).what, Scanned::What::Ignored);
    const std::string stocktake = small.club.checks().openStocktake("Loft", small.now)->check;
    EXPECT_EQ(small.scan(stocktake, tagOf("Loft")).what, Scanned::What::Ignored);
}

class TagPrints : public Tags {
protected:
    std::optional<double> printOf(const std::string& code) const {
        return small.club.kit().tagLabels({code})->front().print;
    }
    /// In a check of its own, which is let go.
    void see(const std::string& code, core::SeenBy seenBy, std::optional<double> print) {
        const std::string check = small.open();
        ASSERT_TRUE(small.club.checks().scan(check, {.text = code, .print = print}, seenBy, small.now));
        ASSERT_TRUE(small.club.checks().discard(check, "only its tag was shown", small.now));
    }
};

// A poor view is no fault of the print, and what was printed anew is read better from then on.
TEST_F(TagPrints, theBestOfTheLastThreeReadingsSaysHowMuchIsLeft) {
    const std::string code = "KGFB6J8WF9";
    see(code, core::SeenBy::Typed, 3.9); // nobody saw its print
    see(code, core::SeenBy::Camera, std::nullopt);
    EXPECT_EQ(printOf(code), std::nullopt);
    for (const auto& [seen, told] : {std::pair{1.4, 1.4}, {1.2, 1.4}, {0.9, 1.4}, {1.0, 1.2}, {3.8, 3.8}}) {
        see(code, core::SeenBy::Camera, seen);
        EXPECT_EQ(printOf(code), told);
    }
    const std::string tag = *retag(code);
    EXPECT_EQ(printOf(tag), std::nullopt);
    see(tag, core::SeenBy::Picture, 3.1);
    EXPECT_EQ(printOf(tag), 3.1);
    EXPECT_EQ(printOf("KD2289T9SE"), std::nullopt);
}

TEST_F(TagPrints, aCheckSaysWhatIsLeftOfTheTagsThatItSaw) {
    const std::string check = small.open();
    ASSERT_TRUE(small.club.checks().scan(check, {.text = "KD2289T9SE", .print = 1.4}, core::SeenBy::Camera,
                                         small.now));
    const auto printIn = [](const core::CheckAnswer& answer) {
        std::optional<double> print;
        for (const core::LineAnswer& line : answer.lines)
            for (const core::LineItem& item : line.items)
                print = item.print;
        return print;
    };
    const auto answer = small.club.checks().answer(check, small.now.today);
    ASSERT_TRUE(answer);
    EXPECT_EQ(printIn(*answer), 1.4);
    for (const core::Finding& finding : answer->findings) // no rule asks for it
        EXPECT_NE(finding.item.id, "KD2289T9SE");
    ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "a call", small.now));
    EXPECT_EQ(printIn(*small.club.checks().answer(check, small.now.today)), 1.4);
}

} // namespace

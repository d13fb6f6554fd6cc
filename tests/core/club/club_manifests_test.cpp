#include "core/answers/evidence.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_manifests.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/register/kit_type.h"
#include "core/register/manifest_record.h"
#include "tests/core/club/manifest_owners.h"
#include "tests/core/club/small_club.h"
#include "tests/support/errors.h"

#include <gmock/gmock.h>

namespace {

using core::Difference;
using core::ManifestLine;
using core::ManifestOwner;
using support::asked;
using support::inflatable;
using support::Line;
using support::petrel;
using support::SmallClub;
using support::tern;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

std::vector<std::pair<std::string, std::optional<double>>> launchPoints(const core::Manifest& manifest) {
    std::vector<std::pair<std::string, std::optional<double>>> points;
    for (const core::AskedPoint& each : manifest.points)
        if (each.phase == "launch") points.emplace_back(each.point.name, each.point.limits.low);
    return points;
}

std::vector<std::pair<std::string, std::optional<double>>> launchPoints(const core::CheckAnswer& answer) {
    std::vector<std::pair<std::string, std::optional<double>>> points;
    for (const core::PointAnswer& each : answer.points)
        points.emplace_back(each.point.name, each.point.limits.low);
    return points;
}

core::SignedCheck signLaunch(SmallClub& small, const std::string& boat, core::Moment moment) {
    const auto open = small.club.checks().open(boat, core::Phase::Launch, moment);
    EXPECT_TRUE(small.club.checks().giveNames(open->check, {"Odalys Finch"}, moment));
    return *small.club.checks().sign(open->check, "Odalys Finch", "for the test", moment);
}

TEST(ClubManifests, tellEachBoatsDifferencesFromItsClass) {
    SmallClub small;
    small.import("manifest_lines.csv", "boat,kit_type,quantity\nTern,paddle,4\nTern,radio,0\n");
    const auto record = *small.club.manifests().read();
    EXPECT_THAT(record.classes(), ElementsAre("inflatable"));
    EXPECT_THAT(record.boatsOf("Inflatable"), ElementsAre("Petrel", "Tern"));
    EXPECT_THAT(record.now(inflatable).lines, SizeIs(6));
    for (const auto& line : record.now(petrel).lines)
        EXPECT_EQ(line.difference, Difference::None);
    const auto lines = record.now(tern).lines;
    EXPECT_EQ(lines[1].line.quantity, 4);
    EXPECT_EQ(lines[1].difference, Difference::Changed);
    EXPECT_EQ(lines[1].ofClass->quantity, 2);
    EXPECT_EQ(lines[5].difference, Difference::TakenAway);
}

// What an old check was asked stays as it was: design/product.md, G9.
TEST(ClubManifests, aVersionAgreesWithTheChecksSignedUnderIt) {
    SmallClub small;
    const auto first = signLaunch(small, "Petrel", small.at("2026-03-14T06:40:00Z"));
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, {.kitType = "radio", .quantity = 2}, "Bram Oke",
                                                  small.at("2026-04-01T09:00:00Z")));
    small.import("points.csv", "boat_class,phase,point,low\ninflatable,launch,bow chamber,17\n");
    const auto second = signLaunch(small, "Petrel", small.at("2026-04-02T06:40:00Z"));
    ASSERT_TRUE(small.club.manifests().changeLine(petrel,
                                                  {.kitType = "paddle", .quantity = 1, .required = false},
                                                  "Bram Oke", small.at("2026-05-01T09:00:00Z")));
    const auto third = signLaunch(small, "Petrel", small.at("2026-05-02T06:40:00Z"));

    const auto record = *small.club.manifests().read();
    const auto versions = record.versionsOf(petrel);
    std::vector<std::string> days;
    std::size_t signedChecks = 0;
    for (const auto& version : versions)
        for (const auto& check : record.checksUnder(petrel, versions, version)) {
            const auto evidence = small.club.answers().evidence("Petrel", check.at);
            ASSERT_TRUE(evidence && evidence->launch);
            const core::CheckAnswer& stored = evidence->launch->answer;
            EXPECT_EQ(asked(record.asOf(petrel, version.stamp)), asked(stored)) << check.at.iso();
            EXPECT_EQ(asked(record.asOf(petrel, check.stamp)), asked(stored)) << check.at.iso();
            EXPECT_EQ(launchPoints(record.asOf(petrel, version.stamp)), launchPoints(stored));
            days.push_back(check.at.iso().substr(0, 10));
            ++signedChecks;
        }
    EXPECT_THAT(days, ElementsAre("2026-03-14", "2026-04-02", "2026-05-02"));
    EXPECT_EQ(signedChecks, 3u);
    EXPECT_EQ(asked(record.now(petrel)), asked(third.answer));
    EXPECT_NE(asked(first.answer), asked(second.answer));
    EXPECT_NE(asked(second.answer), asked(third.answer));
    EXPECT_NE(launchPoints(first.answer), launchPoints(second.answer));
}

TEST(ClubManifests, aVersionTellsWhoWhenAndWhatWasChanged) {
    SmallClub small;
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable,
                                                  {.kitType = "radio", .quantity = 2, .note = "one is spare"},
                                                  "Bram Oke", small.at("2026-04-01T09:00:00Z")));
    const auto versions = small.club.manifests().read()->versionsOf(petrel);
    ASSERT_THAT(versions, SizeIs(2));
    EXPECT_EQ(versions[0].by, "");
    EXPECT_FALSE(versions[0].at);
    EXPECT_THAT(versions[0].changes, SizeIs(7)); // the import: six lines and a point
    EXPECT_EQ(versions[1].by, "Bram Oke");
    EXPECT_EQ(versions[1].since().iso(), "2026-04-01T09:00:00.000Z");
    ASSERT_THAT(versions[1].changes, SizeIs(1));
    EXPECT_EQ(versions[1].changes[0].lineBefore->quantity, 1);
    EXPECT_EQ(versions[1].changes[0].lineAfter->quantity, 2);
    EXPECT_EQ(versions[1].changes[0].lineAfter->note, "one is spare");
}

TEST(ClubManifests, anotherBoatsOwnLineIsNoVersionOfThisOne) {
    SmallClub small;
    ASSERT_TRUE(small.club.manifests().changeLine(tern, {.kitType = "radio", .quantity = 2}, {}, small.now));
    EXPECT_THAT(small.club.manifests().read()->versionsOf(petrel), SizeIs(1));
    EXPECT_THAT(small.club.manifests().read()->versionsOf(inflatable), SizeIs(1));
    EXPECT_THAT(small.club.manifests().read()->versionsOf(tern), SizeIs(2));
}

TEST(ClubManifests, aBoatThatChangesItsClassHasAnotherManifestFromThenOn) {
    SmallClub small;
    small.import("manifest_lines.csv", "boat_class,kit_type\nskiff,knife\n");
    small.import("boats.csv", "boat,boat_class\nTern,skiff\n");
    const auto record = *small.club.manifests().read();
    EXPECT_THAT(asked(record.now(tern)), SizeIs(1));
    const auto versions = record.versionsOf(tern);
    ASSERT_THAT(versions, SizeIs(2));
    EXPECT_THAT(asked(record.asOf(tern, versions[0].stamp)), SizeIs(6));
    EXPECT_THAT(record.classes(), ElementsAre("inflatable", "skiff"));
}

TEST(ClubManifests, aDayFindsTheVersionThatHeldAtItsEnd) {
    SmallClub small;
    for (const char* at : {"2026-12-01T12:00:00Z", "2027-01-01T12:00:00Z"})
        ASSERT_TRUE(small.club.manifests().changeLine(
            petrel, {.kitType = "radio", .quantity = at[3] == '6' ? 2 : 3}, {}, small.at(at)));
    auto versions = small.club.manifests().read()->versionsOf(petrel);
    versions.erase(versions.begin()); // the import's day is this machine's
    const auto on = [&](const char* day) { return versionOn(versions, *core::CalendarDay::parse(day)); };
    EXPECT_EQ(on("2026-11-28"), nullptr);
    EXPECT_EQ(on("2026-12-28"), &versions[0]);
    EXPECT_EQ(on("2027-02-01"), &versions[1]);
}

TEST(ClubManifests, aLineIsAddedTakenAwayAndAskedForAgain) {
    SmallClub small;
    small.import("kit_types.csv", "kit_type\nbailer\n");
    const auto lines = [&] { return asked(small.club.manifests().read()->now(inflatable)); };
    ASSERT_TRUE(small.club.manifests().changeLine(
        inflatable, {.kitType = "BAILER", .required = false, .substitutes = {"knife"}}, {}, small.now));
    EXPECT_EQ(lines().back(), Line("bailer", 1, false, {"knife"}));
    ASSERT_TRUE(
        small.club.manifests().changeLine(inflatable, {.kitType = "bailer", .quantity = 0}, {}, small.now));
    EXPECT_EQ(std::get<0>(lines().back()), "radio");
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, {.kitType = "bailer"}, {}, small.now));
    EXPECT_EQ(lines().back(), Line("bailer", 1, true, {}));
    EXPECT_EQ(lines().front(), Line("knife", 1, true, {})); // the order stays
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST(ClubManifests, aLineThatWasChangedMeanwhileIsNotOverwritten) {
    SmallClub small;
    const ManifestLine seen = small.club.manifests().read()->now(inflatable).lines.front().line;
    ManifestLine theirs = seen, mine = seen;
    theirs.note = "on a lanyard";
    mine.quantity = 3;
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, theirs, "Bram Oke", small.now, &seen));
    const auto refused =
        small.club.manifests().changeLine(inflatable, mine, "Odalys Finch", small.now, &seen);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind(), core::ErrorKind::NotAllowed);
    EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines.front().line, theirs);
    mine.note = theirs.note;
    EXPECT_TRUE(small.club.manifests().changeLine(inflatable, mine, "Odalys Finch", small.now, &theirs));
    EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines.front().line, mine);
}

TEST(ClubManifests, aLineThatComesAnewKeepsItsSubstitutes) {
    SmallClub small;
    small.import("kit_types.csv", "kit_type\nbailer\n");
    ManifestLine line{.kitType = "bailer", .substitutes = {"knife"}};
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, line, {}, small.now));
    line.quantity = 0;
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, line, {}, small.now));
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, {.kitType = "bailer"}, {}, small.now));
    EXPECT_EQ(asked(small.club.manifests().read()->now(inflatable)).back(),
              Line("bailer", 1, true, {"knife"}));
}

TEST(ClubManifests, whatAnImportWouldRefuseIsRefusedAndNothingIsWritten) {
    SmallClub small;
    const auto facts = small.club.record().verify(false)->facts;
    const auto isRefused = [&](const ManifestOwner& owner, const ManifestLine& line) {
        return !small.club.manifests().changeLine(owner, line, {}, small.now);
    };
    EXPECT_TRUE(isRefused(petrel, {.kitType = "anvil"}));
    EXPECT_TRUE(isRefused(petrel, {.kitType = "radio", .substitutes = {"anvil"}}));
    EXPECT_TRUE(isRefused(petrel, {.kitType = "radio", .quantity = 1001}));
    EXPECT_TRUE(isRefused(petrel, {.kitType = "radio", .quantity = -1}));
    EXPECT_TRUE(isRefused({ManifestOwner::Kind::Boat, "Gull"}, {.kitType = "radio"}));
    EXPECT_TRUE(isRefused({ManifestOwner::Kind::BoatClass, "ketch"}, {.kitType = "radio"}));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
    EXPECT_FALSE(isRefused(petrel, {.kitType = "radio", .quantity = 1000}));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts + 1);
}

TEST(ClubManifests, aLineThatStandsSoAlreadyIsNoFact) {
    SmallClub small;
    const auto facts = small.club.record().verify(false)->facts;
    ASSERT_TRUE(
        small.club.manifests().changeLine(inflatable, {.kitType = "paddle", .quantity = 2}, {}, small.now));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
}

TEST(ClubManifests, notesKeepWhatASpreadsheetWouldRunOrTheFormatWouldCut) {
    SmallClub small;
    for (const std::string note : {"-", "=1+1", "one, \"two\"; three", "'quoted"}) {
        ASSERT_TRUE(
            small.club.manifests().changeLine(inflatable, {.kitType = "radio", .note = note}, {}, small.now));
        EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines.back().line.note, note);
    }
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, {.kitType = "radio"}, {}, small.now));
    EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines.back().line.note, "");
}

TEST(ClubManifests, aBoatOfNoClassIsAskedOnlyItsOwnLines) {
    SmallClub small;
    small.import("boats.csv", "boat\nPlover\n");
    small.import("manifest_lines.csv", "boat,kit_type\nTern,radio\nPlover,knife\n");
    small.import("points.csv", "boat,phase,point,kind\nTern,launch,bungs,look\n");
    EXPECT_THAT(asked(small.club.manifests().read()->now({ManifestOwner::Kind::Boat, "Plover"})), SizeIs(1));
    const auto answer = signLaunch(small, "Plover", small.now).answer;
    EXPECT_THAT(asked(answer), SizeIs(1));
    EXPECT_THAT(answer.points, IsEmpty());
}

// design/register-csv.md: a row of a boat is its own difference and replaces the class's; without it the
// class's holds.
TEST(ClubManifests, aBoatsOwnLineIsTakenAwayAndTheClassIsFollowedAgain) {
    SmallClub small;
    const auto line = [&] { return small.club.manifests().read()->now(tern).lines[1]; };
    const ManifestLine own{.kitType = "paddle", .quantity = 4, .required = false, .note = "two are spare"};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, own, "Bram Oke", small.now));
    EXPECT_TRUE(line().isOwn);
    ASSERT_TRUE(small.club.manifests().dropOwnLine(tern, own, "Bram Oke", small.now));
    EXPECT_FALSE(line().isOwn);
    EXPECT_EQ(line().line, (ManifestLine{.kitType = "paddle", .quantity = 2}));
    EXPECT_EQ(line().difference, Difference::None);
    ASSERT_TRUE(
        small.club.manifests().changeLine(inflatable, {.kitType = "paddle", .quantity = 3}, {}, small.now));
    EXPECT_EQ(line().line.quantity, 3);
    EXPECT_EQ(asked(signLaunch(small, "Tern", small.now).answer),
              asked(small.club.manifests().read()->now(tern)));
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
    EXPECT_EQ(line().line.quantity, 3);
}

TEST(ClubManifests, aLineThatTheBoatTookAwayComesBackWithItsClass) {
    SmallClub small;
    const ManifestLine none{.kitType = "radio", .quantity = 0};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, none, {}, small.now));
    EXPECT_THAT(asked(small.club.manifests().read()->now(tern)), SizeIs(5));
    ASSERT_TRUE(small.club.manifests().dropOwnLine({ManifestOwner::Kind::Boat, "tern"}, none, {}, small.now));
    EXPECT_THAT(asked(small.club.manifests().read()->now(tern)), SizeIs(6));
}

TEST(ClubManifests, anOwnLineLikeTheClassIsKnownAsOwn) {
    SmallClub small;
    const ManifestLine same{.kitType = "radio"};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, same, {}, small.now));
    EXPECT_EQ(small.club.manifests().read()->now(tern).lines.back().difference, Difference::None);
    EXPECT_TRUE(small.club.manifests().read()->now(tern).lines.back().isOwn);
    ASSERT_TRUE(small.club.manifests().dropOwnLine(tern, same, {}, small.now));
    EXPECT_FALSE(small.club.manifests().read()->now(tern).lines.back().isOwn);
}

TEST(ClubManifests, anOwnLineIsDroppedOnlyAsItWasSeenAndOnlyWhereThereIsOne) {
    SmallClub small;
    const ManifestLine own{.kitType = "radio", .quantity = 2}, older{.kitType = "radio", .quantity = 3};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, own, {}, small.now));
    const auto facts = small.club.record().verify(false)->facts;
    EXPECT_EQ(small.club.manifests().dropOwnLine(tern, older, {}, small.now).error().kind(),
              core::ErrorKind::NotAllowed);
    EXPECT_EQ(small.club.manifests().dropOwnLine(petrel, {.kitType = "radio"}, {}, small.now).error().kind(),
              core::ErrorKind::NotFound);
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
    EXPECT_TRUE(small.club.manifests().dropOwnLine(tern, own, {}, small.now));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts + 1);
}

TEST(ClubManifests, aDroppedLineIsAVersionAndTheVersionsBeforeKeepIt) {
    SmallClub small;
    const ManifestLine own{.kitType = "radio", .quantity = 2, .note = "one is spare"};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, own, "Bram Oke", small.at("2026-04-01T09:00:00Z")));
    ASSERT_TRUE(
        small.club.manifests().dropOwnLine(tern, own, "Odalys Finch", small.at("2026-04-02T09:00:00Z")));
    const auto record = *small.club.manifests().read();
    const auto versions = record.versionsOf(tern);
    ASSERT_THAT(versions, SizeIs(3));
    EXPECT_EQ(versions[2].by, "Odalys Finch");
    EXPECT_EQ(versions[2].changes[0].lineBefore->quantity, 2);
    EXPECT_EQ(versions[2].changes[0].lineAfter->quantity, 1);
    EXPECT_EQ(record.asOf(tern, versions[1].stamp).lines.back().line.quantity, 2);
    EXPECT_EQ(record.asOf(tern, versions[2].stamp).lines.back().line.quantity, 1);
}

// The contract's words: "import of an export changes nothing"; an older export brings its rows back.
TEST(ClubManifests, aDroppedLineIsInNoExportAndAnOlderExportBringsItBackAsItWas) {
    SmallClub small;
    const ManifestLine own{.kitType = "radio", .quantity = 2, .note = "one is spare"};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, own, {}, small.now));
    ASSERT_TRUE(small.club.register_().exportCsv(small.folder / "with", {}));
    ASSERT_TRUE(small.club.manifests().dropOwnLine(tern, own, {}, small.now));
    ASSERT_TRUE(small.club.register_().exportCsv(small.folder / "without", {}));
    EXPECT_THAT(small.club.register_().importCsv(small.folder / "without", small.now.today, false)->changes,
                IsEmpty());
    EXPECT_THAT(small.club.register_().importCsv(small.folder / "with", small.now.today, false)->changes,
                SizeIs(1));
    EXPECT_EQ(small.club.manifests().read()->now(tern).lines.back().line, own);
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST(ClubManifests, aLineWrittenAnewAfterItWasDroppedRemembersNothing) {
    SmallClub small;
    small.import("kit_types.csv", "kit_type\nbailer\n");
    const ManifestLine own{.kitType = "bailer", .required = false, .substitutes = {"knife"}, .note = "aft"};
    ASSERT_TRUE(small.club.manifests().changeLine(tern, own, {}, small.now));
    ASSERT_TRUE(small.club.manifests().dropOwnLine(tern, own, {}, small.now));
    ASSERT_TRUE(small.club.manifests().changeLine(tern, {.kitType = "bailer"}, {}, small.now));
    EXPECT_EQ(small.club.manifests().read()->now(tern).lines.back().line,
              (ManifestLine{.kitType = "bailer"}));
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST(ClubManifests, substitutesOfALineThatIsAskedAreWrittenAsTheyAreSeen) {
    SmallClub small;
    small.import("kit_types.csv", "kit_type,worn\noar,no\nhelmet,yes\n");
    const ManifestLine seen = small.club.manifests().read()->now(inflatable).lines[1].line;
    ManifestLine line = seen;
    line.substitutes = {"oar", "knife"};
    EXPECT_THAT(core::possibleSubstitutes(small.club.register_().kitTypes(), "Paddle"),
                ElementsAre("knife", "oar", "radio", "rescue tube", "tow line", "whistle"));
    EXPECT_THAT(core::possibleSubstitutes(small.club.register_().kitTypes(), "helmet"), IsEmpty());
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, line, {}, small.now, &seen));
    EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines[1].line, line);
    ManifestLine worn = line, none = line;
    worn.substitutes = {"helmet"};
    none.substitutes = {};
    const auto refused = small.club.manifests().changeLine(inflatable, worn, {}, small.now, &line);
    const core::Error disagrees{core::ErrorCode::SubstituteDisagrees, {"helmet", "paddle", "worn"}};
    EXPECT_EQ(refused.error(), (core::Error{core::ErrorCode::ManifestRowRejected, {}, {}, {disagrees}}));
    EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines[1].line, line);
    ASSERT_TRUE(small.club.manifests().changeLine(inflatable, none, {}, small.now, &line));
    EXPECT_EQ(small.club.manifests().read()->now(inflatable).lines[1].line, none);
}

} // namespace

#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_log.h"
#include "core/club/club_manifests.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/register/manifest_record.h"
#include "tests/core/club/manifest_owners.h"
#include "tests/core/club/small_club.h"
#include "tests/support/errors.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <filesystem>

// What a manifest's form tells and ends, and manifests of classes that no boat has.

namespace {

using core::ManifestLine;
using core::ManifestOwner;
using support::asked;
using support::inflatable;
using support::petrel;
using support::SmallClub;
using support::tern;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// docs/rules.md, "Kit ready": the reason stands until the boat is whole again, however it comes to be so.
TEST(ClubManifests, aLineThatIsAskedNoMoreEndsTheUrgentLaunchOfTheBoatItMakesWhole) {
    for (const bool makesWhole : {true, false}) {
        SmallClub small;
        small.import("kit_types.csv", "kit_type\nbailer\n");
        ASSERT_TRUE(
            small.club.manifests().changeLine(petrel, {.kitType = "bailer"}, {}, small.now)); // there is none
        for (const core::Phase phase : {core::Phase::Launch, core::Phase::Return}) {
            const auto check = small.open(phase);
            small.scanAll(check);
            ASSERT_TRUE(small.club.checks().sign(check, "Odalys Finch", "a call out", small.now));
        }
        ASSERT_TRUE(small.club.manifests().changeLine(
            petrel, {.kitType = makesWhole ? "bailer" : "paddle", .quantity = 0}, {}, small.now));
        ASSERT_TRUE(
            small.club.log().add("Petrel", "hole in a tube", core::Severity::Stop, "Bram Oke", small.now));
        const auto boats = small.club.answers().boatConditions(small.now.today);
        const auto boat =
            std::find_if(boats.begin(), boats.end(), [](const auto& each) { return each.boat == "Petrel"; });
        EXPECT_EQ(boat->urgent, makesWhole ? "" : "a call out");
    }
}

// What `tholepinctl import` says of the same row (docs/command-line.md, "warnings").
TEST(ClubManifests, aLineIsWarnedOfAsAnImportOfItWouldWarn) {
    SmallClub small;
    small.import("kit_types.csv", "kit_type\nflare\nbailer\n");
    const auto warned = [&](const ManifestOwner& owner, const ManifestLine& line) {
        return small.club.manifests().warningsOfLine(owner, line, small.now.today);
    };
    const core::Error noFlare{core::ErrorCode::TypeWithoutItem, {"flare"}};
    EXPECT_THAT(warned(inflatable, {.kitType = "flare", .quantity = 2}), ElementsAre(noFlare));
    EXPECT_THAT(warned(tern, {.kitType = "flare"}), ElementsAre(noFlare));
    std::filesystem::create_directories(small.folder / "rows");
    support::writeFile(small.folder / "rows" / "manifest_lines.csv", "boat,kit_type\nTern,flare\n");
    const auto import = small.club.register_().importCsv(small.folder / "rows", small.now.today, true);
    ASSERT_THAT(import->warnings, SizeIs(1));
    EXPECT_EQ(import->warnings[0].reason, noFlare);
    // The twins: there is a knife; what may stand in is there; none is asked.
    EXPECT_THAT(warned(inflatable, {.kitType = "knife", .quantity = 2}), IsEmpty());
    EXPECT_THAT(warned(inflatable, {.kitType = "flare", .substitutes = {"knife"}}), IsEmpty());
    EXPECT_THAT(warned(inflatable, {.kitType = "flare", .quantity = 0}), IsEmpty());
    const ManifestOwner slip{ManifestOwner::Kind::BoatClass, "inflatible"};
    EXPECT_THAT(warned(slip, {.kitType = "knife"}),
                ElementsAre(core::Error{core::ErrorCode::ClassWithoutBoat, {"inflatible"}},
                            core::Error{core::ErrorCode::ClassLikeAnother, {"inflatible", "inflatable"}}));
    EXPECT_THAT(warned(inflatable, {.kitType = "anchor"}), IsEmpty()) << "an import refuses it";
    EXPECT_THAT(small.club.manifests().read()->now(inflatable).lines, SizeIs(6)) << "nothing is written";
}

TEST(ClubManifests, classesThatNoBoatHasAreKnownByTheirLinesAndPoints) {
    SmallClub small;
    EXPECT_THAT(small.club.manifests().read()->classesWithoutBoat(), IsEmpty());
    small.import("manifest_lines.csv",
                 "boat_class,kit_type,quantity\nSkiff,knife,1\nskiff,radio,1\nraft,knife,0\n");
    small.import("points.csv", "boat_class,phase,point,kind\ncanoe,launch,hull,look\n");
    const auto record = *small.club.manifests().read();
    EXPECT_THAT(record.classesWithoutBoat(), ElementsAre("canoe", "Skiff")) << "of a raft nothing is asked";
    EXPECT_THAT(record.classes(), ElementsAre("inflatable"));
    EXPECT_THAT(record.now({ManifestOwner::Kind::BoatClass, "skiff"}).lines, SizeIs(2));
    small.import("boats.csv", "boat,boat_class\nTern,skiff\n");
    EXPECT_THAT(small.club.manifests().read()->classesWithoutBoat(), ElementsAre("canoe"));
}

// As the command `remove` takes it away: nothing of it is left, and its history tells who did it.
TEST(ClubManifests, aLineOfAClassThatNoBoatHasIsTakenAway) {
    SmallClub small;
    small.import("manifest_lines.csv",
                 "boat_class,kit_type,quantity\nskiff,knife,1\nskiff,radio,2\nskiff,paddle,2\n");
    const ManifestOwner skiff{ManifestOwner::Kind::BoatClass, "skiff"};
    const auto lines = small.club.manifests().read()->now(skiff).lines;
    ManifestLine other = lines[1].line;
    other.quantity = 1;
    EXPECT_EQ(small.club.manifests().dropOwnLine(skiff, other, {}, small.now).error(),
              (core::Error{core::ErrorCode::LineChanged, {"radio"}}))
        << "it is another by now";
    ASSERT_TRUE(small.club.manifests().dropOwnLine(skiff, lines[1].line, "Bram Oke", small.now));
    ASSERT_TRUE(small.club.register_().remove(
        core::SheetId::ManifestLines,
        *small.club.register_().row(core::SheetId::ManifestLines, {"skiff", "", "paddle"}), "Bram Oke",
        small.now));
    for (const char* kitType : {"radio", "paddle"})
        EXPECT_FALSE(small.club.register_().row(core::SheetId::ManifestLines, {"skiff", "", kitType}));
    const auto versions = small.club.manifests().read()->versionsOf(skiff);
    EXPECT_EQ(versions.back().by, "Bram Oke");
    EXPECT_EQ(versions.back().changes.back().lineAfter, std::nullopt);
    small.import("boats.csv", "boat,boat_class\nTern,skiff\n");
    EXPECT_EQ(small.club.manifests().dropOwnLine(skiff, lines[0].line, {}, small.now).error(),
              (core::Error{core::ErrorCode::LineChanged, {"knife"}}))
        << "it is asked of a boat by now";
    EXPECT_THAT(asked(small.club.manifests().read()->now(tern)), SizeIs(1));
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

} // namespace

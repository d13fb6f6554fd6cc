#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_manifests.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/register/manifest_record.h"
#include "core/store/database.h"
#include "tests/core/club/small_club.h"
#include "tests/support/errors.h"

#include <gmock/gmock.h>

namespace {

using core::BoatPoint;
using core::Difference;
using core::Error;
using core::ErrorCode;
using core::ErrorKind;
using core::PhasePoint;
using core::PointKind;
using support::SmallClub;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const core::ManifestOwner classOwner{core::ManifestOwner::Kind::BoatClass, "inflatable"};
const core::ManifestOwner ternOwner{core::ManifestOwner::Kind::Boat, "Tern"};

/// The small club's only point: "bow chamber" of the class, 18 to 22 kPa, not required.
class ClubPoints : public testing::Test {
protected:
    std::vector<core::AskedPoint> asked(const core::ManifestOwner& owner) {
        return small.club.manifests().read()->now(owner).points;
    }
    PhasePoint first(const core::ManifestOwner& owner) {
        const auto points = asked(owner);
        return {points.front().phase, points.front().point};
    }
    std::vector<std::string> names(const core::ManifestOwner& owner) {
        std::vector<std::string> names;
        for (const core::AskedPoint& each : asked(owner))
            names.push_back(each.phase + " " + each.point.name);
        return names;
    }
    core::Outcome add(const core::ManifestOwner& owner, const PhasePoint& point) {
        return small.club.manifests().changePoint(owner, point, "Bram Oke", small.now);
    }
    core::Outcome change(const core::ManifestOwner& owner, const PhasePoint& seen, const PhasePoint& wanted) {
        return small.club.manifests().changePoint(owner, wanted, "Bram Oke", small.now, &seen);
    }

    SmallClub small;
};

TEST_F(ClubPoints, aPointIsChangedAndACheckAsksItSo) {
    const PhasePoint seen = first(classOwner);
    PhasePoint wanted = seen;
    wanted.point.limits = {-1.5, 24.25};
    wanted.point.unit = "mbar";
    wanted.point.required = true;
    wanted.point.note = "cold, at the slip";
    ASSERT_TRUE(change(classOwner, seen, wanted));
    EXPECT_EQ(first(classOwner), wanted);
    const auto points = small.club.register_().pointsOf("Petrel", core::Phase::Launch);
    ASSERT_THAT(*points, SizeIs(1));
    EXPECT_EQ(points->front(), wanted.point);
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST_F(ClubPoints, aMeasureBecomesATimedPointAndALook) {
    const PhasePoint measure = first(classOwner);
    const PhasePoint timed{"launch", {"bow chamber", PointKind::Timed, {}, {60, std::nullopt}, true, {}}};
    const PhasePoint look{"launch", {"bow chamber", PointKind::Look, {}, {}, true, {}}};
    ASSERT_TRUE(change(classOwner, measure, timed));
    EXPECT_EQ(first(classOwner), timed);
    ASSERT_TRUE(change(classOwner, timed, look));
    EXPECT_EQ(first(classOwner), look);
}

TEST_F(ClubPoints, aPointThatWasChangedMeanwhileIsNotOverwritten) {
    const PhasePoint seen = first(classOwner);
    PhasePoint theirs = seen, mine = seen;
    theirs.point.note = "cold";
    mine.point.limits.low = 20;
    ASSERT_TRUE(change(classOwner, seen, theirs));
    EXPECT_EQ(change(classOwner, seen, mine).error().kind(), ErrorKind::NotAllowed);
    EXPECT_EQ(small.club.manifests().dropPoint(classOwner, seen, {}, small.now).error().kind(),
              ErrorKind::NotAllowed);
    EXPECT_EQ(first(classOwner), theirs);
    EXPECT_TRUE(change(classOwner, theirs, mine));
    EXPECT_EQ(first(classOwner), mine);
}

TEST_F(ClubPoints, aPointIsRenamedInItsPlaceAsOneVersion) {
    ASSERT_TRUE(add(classOwner, {"launch", {.name = "bungs"}}));
    const PhasePoint seen = first(classOwner);
    PhasePoint wanted = seen;
    wanted.point.name = "bow tube";
    ASSERT_TRUE(
        small.club.manifests().changePoint(classOwner, wanted, {}, small.at("2026-03-14T09:00:00Z"), &seen));
    EXPECT_THAT(names(classOwner), ElementsAre("launch bow tube", "launch bungs"));
    EXPECT_EQ(first(classOwner), wanted);
    PhasePoint back = wanted;
    back.phase = "return";
    ASSERT_TRUE(
        small.club.manifests().changePoint(classOwner, back, {}, small.at("2026-03-15T06:40:00Z"), &wanted));
    EXPECT_THAT(names(classOwner), ElementsAre("launch bungs", "return bow tube"));
    const auto record = *small.club.manifests().read();
    const auto versions = record.versionsOf(classOwner);
    ASSERT_THAT(versions, SizeIs(4)); // the import, a new one, the name, the phase
    EXPECT_EQ(record.asOf(classOwner, versions[1].stamp).points.front().point.name, "bow chamber");
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST_F(ClubPoints, aNameThatIsTakenIsRefusedWhetherNewOrRenamed) {
    ASSERT_TRUE(add(classOwner, {"launch", {.name = "bungs"}}));
    EXPECT_EQ(add(classOwner, {"launch", {.name = "BUNGS "}}).error().kind(), ErrorKind::BadInput);
    const PhasePoint seen = first(classOwner);
    PhasePoint wanted = seen;
    wanted.point.name = "Bungs";
    EXPECT_EQ(change(classOwner, seen, wanted).error().kind(), ErrorKind::BadInput);
    EXPECT_THAT(names(classOwner), ElementsAre("launch bow chamber", "launch bungs"));
    EXPECT_TRUE(add(classOwner, {"return", {.name = "bungs"}})); // another check is another point
}

TEST_F(ClubPoints, aBoatsOwnPointIsTakenAwayAndTheClassIsFollowedAgain) {
    const PhasePoint ofClass = first(classOwner);
    PhasePoint own = ofClass;
    own.point.limits.low = 17;
    ASSERT_TRUE(change(ternOwner, ofClass, own));
    EXPECT_EQ(asked(ternOwner).front().difference, Difference::Changed);
    EXPECT_EQ(first(classOwner), ofClass);
    ASSERT_TRUE(small.club.manifests().dropPoint(ternOwner, own, {}, small.now));
    EXPECT_EQ(first(ternOwner), ofClass);
    PhasePoint later = ofClass;
    later.point.limits.low = 19;
    ASSERT_TRUE(change(classOwner, ofClass, later));
    EXPECT_EQ(first(ternOwner), later);
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST_F(ClubPoints, aPointIsAddedLastAndTakenAway) {
    ASSERT_TRUE(add(classOwner, {"launch", {.name = "bungs"}}));
    ASSERT_TRUE(add(classOwner, {"launch", {.name = "anchor line"}}));
    ASSERT_TRUE(small.club.manifests().dropPoint(classOwner, first(classOwner), {}, small.now));
    ASSERT_TRUE(add(classOwner, {"launch", {.name = "alpha flag"}}));
    EXPECT_THAT(names(classOwner), ElementsAre("launch bungs", "launch anchor line", "launch alpha flag"));
    // So does one of a sheet, though fewer rows are there than places were given.
    small.import("points.csv",
                 "boat_class,phase,point,kind\ninflatable,launch,aback,look\ninflatable,launch,aaa,look\n");
    EXPECT_THAT(names(classOwner), ElementsAre("launch bungs", "launch anchor line", "launch alpha flag",
                                               "launch aback", "launch aaa"));
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
}

TEST_F(ClubPoints, aBoatCanNeitherLeaveOutNorRenameAPointOfItsClass) {
    const PhasePoint ofClass = first(ternOwner);
    PhasePoint renamed = ofClass;
    renamed.point.name = "bow tube";
    EXPECT_EQ(small.club.manifests().dropPoint(ternOwner, ofClass, {}, small.now).error().kind(),
              ErrorKind::NotFound);
    EXPECT_EQ(change(ternOwner, ofClass, renamed).error().kind(), ErrorKind::NotAllowed);
    // Its own it can.
    const PhasePoint own{"launch", {.name = "keel tube"}};
    PhasePoint ownRenamed = own;
    ownRenamed.point.name = "keel chamber";
    ASSERT_TRUE(add(ternOwner, own));
    EXPECT_TRUE(change(ternOwner, own, ownRenamed));
    EXPECT_TRUE(small.club.manifests().dropPoint(ternOwner, ownRenamed, {}, small.now));
    EXPECT_THAT(names(ternOwner), ElementsAre("launch bow chamber"));
}

TEST_F(ClubPoints, aClassCannotRenameWhatABoatHasAsItsOwn) {
    const PhasePoint ofClass = first(classOwner);
    PhasePoint own = ofClass, renamed = ofClass;
    own.point.note = "aft valve";
    renamed.point.name = "bow tube";
    ASSERT_TRUE(change(ternOwner, ofClass, own));
    EXPECT_EQ(change(classOwner, ofClass, renamed).error(),
              (Error{ErrorCode::BoatHasOwnPoint, {"Tern", "bow chamber"}}));
    EXPECT_THAT(names(classOwner), ElementsAre("launch bow chamber"));
    ASSERT_TRUE(small.club.manifests().dropPoint(ternOwner, own, {}, small.now));
    EXPECT_TRUE(change(classOwner, ofClass, renamed));
    EXPECT_THAT(names(ternOwner), ElementsAre("launch bow tube"));
}

TEST_F(ClubPoints, whatAnImportWouldRefuseIsRefusedAndNothingIsWritten) {
    const auto facts = small.club.record().verify(false)->facts;
    const PhasePoint seen = first(classOwner);
    PhasePoint crossed = seen, huge = seen, inNoCheck = seen;
    crossed.point.limits = {22, 18};
    huge.point.limits.high = 1e12;
    inNoCheck.phase = "noon";
    const Error reversed{ErrorCode::RangeReversed, {"low", "22", "high", "18"}};
    EXPECT_EQ(change(classOwner, seen, crossed).error(),
              (Error{ErrorCode::ManifestRowRejected, {}, {}, {reversed}}));
    EXPECT_FALSE(change(classOwner, seen, huge));
    EXPECT_FALSE(change(classOwner, seen, inNoCheck));
    EXPECT_FALSE(add(classOwner, {"launch", {.name = " "}}));
    EXPECT_FALSE(add({core::ManifestOwner::Kind::BoatClass, "ketch"}, {"launch", {.name = "bungs"}}));
    EXPECT_FALSE(add({core::ManifestOwner::Kind::Boat, "Gull"}, {"launch", {.name = "bungs"}}));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts);
    EXPECT_EQ(first(classOwner), seen);
    EXPECT_TRUE(add(classOwner, {"launch", {.name = "bungs"}}));
    EXPECT_EQ(small.club.record().verify(false)->facts, facts + 1);
}

/// The club's record after a change of the fact of its point that no program makes.
core::Result<core::ManifestRecord> damaged(SmallClub& small, const std::string& set) {
    core::Database(small.file(), core::Database::Mode::ReadWrite)
        .script("DROP TRIGGER IF EXISTS fact_is_never_changed; UPDATE fact SET " + set +
                " WHERE kind = 'point'");
    return small.club.manifests().read();
}

TEST(DamagedManifests, aFactThatCanBeReadIsNoDamage) {
    SmallClub small;
    const auto record = damaged(small, "body = json_set(body, '$.set.low', '17')");
    ASSERT_TRUE(record);
    EXPECT_EQ(record->now(classOwner).points.front().point.limits.low, 17);
}

TEST(DamagedManifests, eachKindOfDamageIsAnErrorThatNamesTheFact) {
    for (const char* set :
         {"body = json_set(body, '$.set.kind', 'squint')", "body = json_set(body, '$.set.low', 'eighteen')",
          "body = json_set(body, '$.set.required', 'perhaps')", "body = json_remove(body, '$.row')",
          "body = json_set(body, '$.at', 'noon')", "body = json_set(body, '$.order', 'first')",
          "at_utc = 'noon'"}) {
        SmallClub small;
        const auto record = damaged(small, set);
        ASSERT_FALSE(record) << set;
        EXPECT_EQ(record.error().kind(), ErrorKind::FileDamaged) << set;
        EXPECT_THAT(record.error().arguments, testing::SizeIs(testing::Ge(2U)))
            << "its fact and machine: " << set;
        const PhasePoint bungs{"launch", {.name = "bungs"}};
        EXPECT_EQ(small.club.manifests().changePoint(classOwner, bungs, {}, small.now).error().kind(),
                  ErrorKind::FileDamaged)
            << set;
    }
}

} // namespace

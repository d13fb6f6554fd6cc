#include "core/answers/event_tally.h"

#include "tests/core/answers/answers_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

// docs/rules.md, "What the code settles": an event.

Trip tripOf(const std::string& boat, const std::string& launchedAt, std::vector<TripItem> kit) {
    Trip trip{.launch = signOff("launch of " + boat, "1", Phase::Launch, launchedAt), .kit = std::move(kit)};
    trip.launch.location = Location::boat(boat);
    return trip;
}

Trip backAt(Trip trip, const std::string& at) {
    trip.next = signOff("return", "2", Phase::Return, at);
    trip.next->location = trip.launch.location;
    return trip;
}

TripItem item(const std::string& code, const std::string& backOn, const std::string& kitType = "paddle") {
    return {itemNamed(code), kitType, backOn, !backOn.empty()};
}

std::vector<std::string> told(const std::vector<Swap>& swaps) {
    std::vector<std::string> texts;
    for (const Swap& swap : swaps)
        texts.push_back(swap.item.id + ' ' + swap.wentOutOn + '>' + swap.cameBackOn +
                        (swap.against.id.empty() ? "" : " against " + swap.against.id));
    return texts;
}

TEST(Tally, tellsWhatWentOutCameBackAndIsNotSeenSince) {
    const auto trip = backAt(tripOf("Petrel", "2026-03-14T08:00:00Z",
                                    {item("K3", ""), item("K2", "Petrel"), item("K1", "Petrel")}),
                             "2026-03-14T10:00:00Z");
    const auto tally = tallyOf("Patrol", {trip}, {});
    EXPECT_EQ(tally.event, "Patrol");
    ASSERT_THAT(tally.boats, SizeIs(1));
    const BoatTally& boat = tally.boats[0];
    EXPECT_EQ(boat.boat, "Petrel");
    EXPECT_EQ(boat.launchedAt, instant("2026-03-14T08:00:00Z"));
    EXPECT_EQ(boat.returnedAt, instant("2026-03-14T10:00:00Z"));
    EXPECT_THAT(idsOf(boat.out), ElementsAre("K1", "K2", "K3")) << "by code";
    EXPECT_THAT(idsOf(boat.back), ElementsAre("K1", "K2"));
    EXPECT_THAT(idsOf(boat.notReturned), ElementsAre("K3"));
    EXPECT_THAT(tally.swaps, IsEmpty());
}

TEST(Tally, whatIsStillOutIsNotMissed) {
    const auto trip = tripOf("Petrel", "2026-03-14T08:00:00Z", {item("K1", "")});
    const auto out = tallyOf("Patrol", {trip}, {}).boats[0];
    EXPECT_FALSE(out.returnedAt);
    EXPECT_THAT(out.returnedBy, IsEmpty());
    EXPECT_THAT(out.notReturned, IsEmpty());
    const auto back = tallyOf("Patrol", {backAt(trip, "2026-03-14T10:00:00Z")}, {}).boats[0];
    EXPECT_THAT(idsOf(back.notReturned), ElementsAre("K1"));
}

TEST(Tally, aBoatThatWasLaunchedAgainDidNotComeBackFromTheTripBefore) {
    Trip trip = backAt(tripOf("Petrel", "2026-03-14T08:00:00Z", {item("K1", "")}), "2026-03-14T10:00:00Z");
    trip.next->phase = Phase::Launch;
    EXPECT_FALSE(tallyOf("Patrol", {trip}, {}).boats[0].returnedAt);
    trip.next->phase = Phase::Return;
    EXPECT_TRUE(tallyOf("Patrol", {trip}, {}).boats[0].returnedAt);
}

TEST(Tally, whatAnyCheckSawSinceIsNotMissed) {
    Trip trip = backAt(tripOf("Petrel", "2026-03-14T08:00:00Z", {item("K1", "")}), "2026-03-14T10:00:00Z");
    trip.kit[0].seenSince = true; // on a shelf, say
    const auto boat = tallyOf("Patrol", {trip}, {}).boats[0];
    EXPECT_THAT(boat.notReturned, IsEmpty());
    EXPECT_THAT(boat.back, IsEmpty());
    EXPECT_THAT(idsOf(boat.out), ElementsAre("K1"));
}

TEST(Tally, namesTheCrewElseWhoSigned) {
    Trip trip = backAt(tripOf("Petrel", "2026-03-14T08:00:00Z", {}), "2026-03-14T10:00:00Z");
    trip.next->by = "Bram Oke";
    auto boat = tallyOf("Patrol", {trip}, {}).boats[0];
    EXPECT_THAT(boat.launchedBy, ElementsAre("Odalys Finch"));
    EXPECT_THAT(boat.returnedBy, ElementsAre("Bram Oke"));
    trip.launchPeople = {"Ada Marsh", "Bo Lake"};
    trip.nextPeople = {"Cai Ford"};
    boat = tallyOf("Patrol", {trip}, {}).boats[0];
    EXPECT_THAT(boat.launchedBy, ElementsAre("Ada Marsh", "Bo Lake"));
    EXPECT_THAT(boat.returnedBy, ElementsAre("Cai Ford"));
}

TEST(Tally, sumsTheTripsOfABoatUp) {
    const auto first = backAt(tripOf("Petrel", "2026-03-14T08:00:00Z",
                                     {item("K1", "Petrel"), item("K2", ""), item("K3", "Petrel")}),
                              "2026-03-14T09:00:00Z");
    const auto second =
        backAt(tripOf("Petrel", "2026-03-14T11:00:00Z", {item("K1", ""), item("K2", "Petrel")}),
               "2026-03-14T12:00:00Z");
    const auto tally = tallyOf("Patrol", {first, second}, {});
    ASSERT_THAT(tally.boats, SizeIs(1));
    const BoatTally& boat = tally.boats[0];
    EXPECT_EQ(boat.launchedAt, instant("2026-03-14T08:00:00Z")) << "the first launch";
    EXPECT_EQ(boat.returnedAt, instant("2026-03-14T12:00:00Z")) << "the last return";
    EXPECT_THAT(idsOf(boat.out), ElementsAre("K1", "K2", "K3")) << "each once";
    EXPECT_THAT(idsOf(boat.back), ElementsAre("K2", "K3")) << "a later trip decides";
    EXPECT_THAT(idsOf(boat.notReturned), ElementsAre("K1"));
}

TEST(Tally, theCrewOfTheFirstLaunchAndOfTheLastReturnAreNamed) {
    Trip first = backAt(tripOf("Petrel", "2026-03-14T08:00:00Z", {}), "2026-03-14T09:00:00Z");
    first.launchPeople = {"Ada Marsh"};
    first.nextPeople = {"Ada Marsh"};
    Trip second = tripOf("Petrel", "2026-03-14T11:00:00Z", {});
    second.launchPeople = {"Bo Lake"};
    const auto boat = tallyOf("Patrol", {first, second}, {}).boats[0];
    EXPECT_THAT(boat.launchedBy, ElementsAre("Ada Marsh"));
    EXPECT_THAT(boat.returnedBy, IsEmpty()) << "it is out again";
    EXPECT_FALSE(boat.returnedAt);
}

TEST(Tally, boatsStandByNameWhateverTheCase) {
    const auto trips = {tripOf("petrel", "2026-03-14T08:00:00Z", {item("K1", "")}),
                        tripOf("Auk", "2026-03-14T08:00:00Z", {}), tripOf("Tern", "2026-03-14T08:00:00Z", {}),
                        tripOf("Petrel", "2026-03-14T09:00:00Z", {item("K2", "")})};
    std::vector<std::string> names;
    for (const BoatTally& boat : tallyOf("Patrol", trips, {}).boats)
        names.push_back(boat.boat);
    EXPECT_THAT(names, ElementsAre("Auk", "Petrel", "Tern"));
}

TEST(Tally, twoThingsThatWentOppositeWaysAreOneSwap) {
    const auto petrel =
        backAt(tripOf("Petrel", "2026-03-14T08:00:00Z", {item("K2", "Tern")}), "2026-03-14T10:00:00Z");
    const auto tern =
        backAt(tripOf("Tern", "2026-03-14T08:00:00Z", {item("K1", "Petrel")}), "2026-03-14T10:00:00Z");
    const auto tally = tallyOf("Patrol", {petrel, tern}, {});
    EXPECT_THAT(told(tally.swaps), ElementsAre("K2 Petrel>Tern against K1"));
    EXPECT_EQ(tally.swaps[0].kitType, "paddle");
    EXPECT_THAT(tally.boats[0].back, IsEmpty());
    EXPECT_THAT(tally.boats[0].notReturned, IsEmpty()) << "it was seen, on another boat";
}

TEST(Tally, onlyThingsOfOneKindAndOfOppositeWaysMakeAPair) {
    const auto swapsOf = [](const TripItem& fromPetrel, const std::string& other, const TripItem& fromOther) {
        return told(tallyOf("Patrol",
                            {tripOf("Petrel", "2026-03-14T08:00:00Z", {fromPetrel}),
                             tripOf(other, "2026-03-14T08:00:00Z", {fromOther})},
                            {})
                        .swaps);
    };
    EXPECT_THAT(swapsOf(item("K1", "Tern"), "Tern", item("K2", "Petrel")),
                ElementsAre("K1 Petrel>Tern against K2"));
    EXPECT_THAT(swapsOf(item("K1", "Tern"), "Tern", item("K2", "Petrel", "radio")),
                ElementsAre("K1 Petrel>Tern", "K2 Tern>Petrel"));
    EXPECT_THAT(swapsOf(item("K1", "Tern"), "Auk", item("K2", "Petrel")),
                ElementsAre("K1 Petrel>Tern", "K2 Auk>Petrel"));
    EXPECT_THAT(swapsOf(item("K1", "Tern"), "Tern", item("K2", "Auk")),
                ElementsAre("K1 Petrel>Tern", "K2 Tern>Auk"));
}

TEST(Tally, pairsStandFirstAndEachThingIsToldOnce) {
    const auto petrel =
        tripOf("Petrel", "2026-03-14T08:00:00Z",
               {item("K5", "Auk"), item("K1", "Tern"), item("K2", "Tern"), item("K3", "Tern")});
    const auto tern = tripOf("Tern", "2026-03-14T08:00:00Z", {item("K8", "Petrel"), item("K9", "Petrel")});
    EXPECT_THAT(told(tallyOf("Patrol", {petrel, tern}, {}).swaps),
                ElementsAre("K1 Petrel>Tern against K8", "K2 Petrel>Tern against K9", "K5 Petrel>Auk",
                            "K3 Petrel>Tern"));
    EXPECT_THAT(told(tallyOf("Patrol", {petrel, petrel}, {}).swaps),
                ElementsAre("K5 Petrel>Auk", "K1 Petrel>Tern", "K2 Petrel>Tern", "K3 Petrel>Tern"));
}

TEST(Tally, ofTheMissingListItKeepsWhatWentOut) {
    const auto trip = tripOf("Petrel", "2026-03-14T08:00:00Z", {item("K1", "")});
    MissingItem lost;
    lost.item = itemNamed("K1");
    MissingItem other;
    other.item = itemNamed("K2");
    const auto tally = tallyOf("Patrol", {trip}, {other, lost});
    ASSERT_THAT(tally.missing, SizeIs(1));
    EXPECT_EQ(tally.missing[0].item.id, "K1");
}

TEST(Tally, withoutATripThereIsNothingToTell) {
    const auto tally = tallyOf("Patrol", {}, {MissingItem{}});
    EXPECT_THAT(tally.boats, IsEmpty());
    EXPECT_THAT(tally.swaps, IsEmpty());
    EXPECT_THAT(tally.missing, IsEmpty());
}

// An event may be a calendar day, of this machine's time zone.
TEST(Tally, checksOfADayAreThoseOpenedOnIt) {
    const Instant noon = instant("2026-03-14T12:00:00Z");
    const CheckRun then{.check = "c1", .openedAt = noon};
    const CheckRun later{.check = "c2", .openedAt = Instant::fromMillis(noon.millis() + 86'400'000)};
    const auto runs = openedOn(noon.localDay(), {then, later});
    ASSERT_THAT(runs, SizeIs(1));
    EXPECT_EQ(runs[0].check, "c1");
}

} // namespace
} // namespace core

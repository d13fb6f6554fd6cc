#include "core/answers/kit_on_hand.h"

#include "tests/core/answers/answers_support.h"
#include "tests/core/upkeep/rule_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// docs/rules.md section 8 and "What the code settles": make-ready, what is on hand.

/// A club of the boats Heron and Tern, both asking for a paddle, with a loft and a shed.
struct ClubToPlan {
    KitOnHandQuestion question{
        .boats = {boat("Heron"), boat("Tern")}, .places = {"loft", "shed"}, .today = day("2026-03-14")};
    std::vector<ItemSeenLast> items;

    static BoatInShed boat(const std::string& name, const std::string& kitType = "paddle") {
        ManifestLine line;
        line.kitType = kitType;
        return {{name, 1, {line}}, false};
    }
    /// A paddle with its home aboard Heron. The reference holds until the next.
    ItemSeenLast& paddle(const std::string& code) {
        ItemSeenLast item{.record = {.item = itemOf(code, "paddle")}};
        item.record.item.boat = "Heron";
        return items.emplace_back(std::move(item));
    }
    ItemSeenLast& paddleSeenAt(const std::string& code, const Location& where) {
        ItemSeenLast& item = paddle(code);
        item.seenAt = where;
        item.seenStamp = "5";
        return item;
    }
    std::vector<std::string> onHand() const {
        std::vector<std::string> texts;
        for (const KitOnHand& item : kitOnHand(question, items).kit)
            texts.push_back(item.item.id + (item.at.isBoat() ? " aboard " : " at ") + item.at.name);
        return texts;
    }
    std::vector<std::string> worth(const std::vector<ItemRecord>& records) const {
        std::vector<std::string> codes;
        for (const ItemRecord& record : worthPlacing(records, question))
            codes.push_back(record.item.id);
        return codes;
    }
};

std::vector<std::string> names(const std::vector<BoatToPlan>& boats) {
    std::vector<std::string> all;
    for (const BoatToPlan& boat : boats)
        all.push_back(boat.boat);
    return all;
}

TEST(KitOnHandRules, kitWhereNothingIsAnyMoreLiesNowhereKnown) {
    ClubToPlan club;
    club.paddleSeenAt("K1", Location::place("loft"));
    club.paddleSeenAt("K2", Location::place("shed"));
    club.paddleSeenAt("K3", Location::boat("Grebe"));
    EXPECT_THAT(club.onHand(), ElementsAre("K1 at loft", "K2 at shed"));
    EXPECT_THAT(kitOnHand(club.question, club.items).notPlaced, IsEmpty());
    club.question.gone = {Location::place("Loft"), Location::boat("grebe"), Location::boat("shed")};
    EXPECT_THAT(club.onHand(), ElementsAre("K2 at shed"));
    EXPECT_THAT(kitOnHand(club.question, club.items).notPlaced,
                ElementsAre(::testing::Field(&ItemName::id, "K1"), ::testing::Field(&ItemName::id, "K3")));
}

TEST(KitOnHandRules, allBoatsInTheShedArePlanned) {
    ClubToPlan club;
    club.question.boats[1].boat.priority = 3;
    const auto answer = kitOnHand(club.question, {});
    ASSERT_THAT(names(answer.boats), ElementsAre("Heron", "Tern"));
    EXPECT_EQ(answer.boats[1].priority, 3);
    EXPECT_EQ(answer.boats[0].lines.at(0).kitType, "paddle");
    EXPECT_THAT(answer.boatsOut, IsEmpty());
}

TEST(KitOnHandRules, aBoatThatIsOutIsToldAndNotPlanned) {
    ClubToPlan club;
    club.question.boats[0].isOut = true;
    const auto answer = kitOnHand(club.question, {});
    EXPECT_THAT(names(answer.boats), ElementsAre("Tern"));
    EXPECT_THAT(answer.boatsOut, ElementsAre("Heron"));
}

TEST(KitOnHandRules, onlyBoatsThatAreAskedForArePlannedOrTold) {
    ClubToPlan club;
    club.question.askedBoats = {"Tern"};
    club.question.boats[0].isOut = true;
    EXPECT_THAT(names(kitOnHand(club.question, {}).boats), ElementsAre("Tern"));
    EXPECT_THAT(kitOnHand(club.question, {}).boatsOut, IsEmpty());
    club.question.askedBoats = {"Heron"};
    EXPECT_THAT(names(kitOnHand(club.question, {}).boats), IsEmpty());
    EXPECT_THAT(kitOnHand(club.question, {}).boatsOut, ElementsAre("Heron"));
}

TEST(KitOnHandRules, onlySoundKitIsWorthPlacing) {
    ClubToPlan club;
    club.question.kitTypes["paddle"].rules = {ruleOf(RuleKind::Stamped)};
    ItemRecord sound{.item = itemOf("K1", "paddle")};
    sound.item.stamped = known("2026-03-14");
    ItemRecord expired = sound;
    expired.item.id = "K2";
    expired.item.stamped = known("2026-03-13");
    ItemRecord missing = sound, unserviceable = sound, writtenOff = sound;
    missing.item.state = ItemState::Missing;
    unserviceable.item.state = ItemState::Unserviceable;
    writtenOff.item.state = ItemState::WrittenOff;
    EXPECT_THAT(club.worth({sound, expired, missing, unserviceable, writtenOff}), ElementsAre("K1"));
    club.question.kitTypes.clear();
    EXPECT_THAT(club.worth({sound, expired}), ElementsAre("K1", "K2")) << "no type, no rules";
}

TEST(KitOnHandRules, onlyTypesThatAPlannedBoatTakesAreWorthPlacing) {
    ClubToPlan club;
    club.question.boats[1] = ClubToPlan::boat("Tern", "radio");
    const std::vector<ItemRecord> kit{
        {.item = itemOf("K1", "paddle")}, {.item = itemOf("K2", "radio")}, {.item = itemOf("K3", "oar")}};
    EXPECT_THAT(club.worth(kit), ElementsAre("K1", "K2"));
    club.question.boats[0].boat.lines[0].substitutes = {"oar"};
    EXPECT_THAT(club.worth(kit), ElementsAre("K1", "K2", "K3"));
    club.question.boats[1].isOut = true;
    EXPECT_THAT(club.worth(kit), ElementsAre("K1", "K3"));
    club.question.askedBoats = {"Tern"};
    EXPECT_THAT(club.worth(kit), IsEmpty());
}

TEST(KitOnHandRules, theHomeIsABoatElseAPlaceAsTheRegisterSpellsIt) {
    ClubToPlan club;
    Item item = itemOf("K1", "paddle");
    EXPECT_EQ(homeOf(item, club.question), std::nullopt);
    item.place = "LOFT";
    EXPECT_EQ(homeOf(item, club.question), Location::place("loft"));
    item.place = "attic";
    EXPECT_EQ(homeOf(item, club.question), Location::place("attic")) << "not in the register any more";
    item.boat = "heron";
    EXPECT_EQ(homeOf(item, club.question), Location::boat("Heron"));
    item.boat = "Gull";
    EXPECT_EQ(homeOf(item, club.question), Location::boat("Gull"));
}

TEST(KitOnHandRules, kitIsWhereItWasSeenLastElseAtHome) {
    ClubToPlan club;
    club.paddle("K1");
    club.paddleSeenAt("K2", Location::boat("TERN"));
    club.paddleSeenAt("K3", Location::place("Loft"));
    Item& homeless = club.paddleSeenAt("K4", Location::place("shed")).record.item;
    homeless.boat.clear();
    EXPECT_THAT(club.onHand(), ElementsAre("K1 aboard Heron", "K2 aboard Tern", "K3 at loft", "K4 at shed"));
}

TEST(KitOnHandRules, aHomeGivenAfterTheSightingHolds) {
    ClubToPlan club;
    club.paddleSeenAt("K1", Location::boat("Tern")).homeStamp = "4";
    club.paddleSeenAt("K2", Location::boat("Tern")).homeStamp = "6";
    ItemSeenLast& homeless = club.paddleSeenAt("K3", Location::boat("Tern"));
    homeless.homeStamp = "6"; // it was taken away
    homeless.record.item.boat.clear();
    EXPECT_THAT(club.onHand(), ElementsAre("K1 aboard Tern", "K2 aboard Heron", "K3 aboard Tern"));
}

TEST(KitOnHandRules, whatNobodyKnowsThePlaceOfIsTold) {
    ClubToPlan club;
    club.paddle("K1");
    club.paddle("K2").record.item.boat.clear();
    EXPECT_THAT(club.onHand(), ElementsAre("K1 aboard Heron"));
    EXPECT_THAT(kitOnHand(club.question, club.items).notPlaced, ElementsAre(itemNamed("K2")));
}

TEST(KitOnHandRules, kitOfABoatThatIsNotPlannedStaysThere) {
    ClubToPlan club;
    club.paddle("K1");
    club.paddleSeenAt("K2", Location::boat("Tern"));
    club.paddleSeenAt("K3", Location::place("loft"));
    club.question.boats[0].isOut = true;
    EXPECT_THAT(club.onHand(), ElementsAre("K2 aboard Tern", "K3 at loft"));
    club.question.boats[0].isOut = false;
    club.question.askedBoats = {"Heron"};
    EXPECT_THAT(club.onHand(), ElementsAre("K1 aboard Heron", "K3 at loft"));
    EXPECT_THAT(kitOnHand(club.question, club.items).notPlaced, IsEmpty());
}

TEST(KitOnHandRules, onlyPlacesThatAreAskedForCount) {
    ClubToPlan club;
    club.paddleSeenAt("K1", Location::place("loft"));
    club.paddleSeenAt("K2", Location::place("shed"));
    club.paddle("K3");
    club.question.askedPlaces = {"shed"};
    EXPECT_THAT(club.onHand(), ElementsAre("K2 at shed", "K3 aboard Heron"));
    // A place may bear a boat's name.
    club.question.places.push_back("Heron");
    club.paddleSeenAt("K4", Location::place("Heron"));
    EXPECT_THAT(club.onHand(), ElementsAre("K2 at shed", "K3 aboard Heron"));
    club.question.askedPlaces = {"Heron"};
    EXPECT_THAT(club.onHand(), ElementsAre("K3 aboard Heron", "K4 at Heron"));
}

TEST(KitOnHandRules, kitCarriesItsTypeHomeAndEarliestDueDay) {
    ClubToPlan club;
    LifeRule later = ruleOf(RuleKind::FromMade, 120);
    later.severity = Severity::Remark;
    club.question.kitTypes["paddle"].rules = {later, ruleOf(RuleKind::Stamped)};
    Item& item = club.paddle("K1").record.item;
    item.boat = "HERON";
    item.made = known("2020-01-01");
    item.stamped = known("2027-05-01");
    Item& undated = club.paddleSeenAt("K2", Location::place("loft")).record.item;
    undated.boat.clear();
    undated.place = "shed";
    const auto kit = kitOnHand(club.question, club.items).kit;
    ASSERT_EQ(kit.size(), 2u);
    EXPECT_EQ(kit[0].kitType, "paddle");
    EXPECT_EQ(kit[0].homeBoat, "Heron");
    EXPECT_EQ(kit[0].due, day("2027-05-01"));
    EXPECT_EQ(kit[1].homeBoat, "") << "its home is a place";
    EXPECT_EQ(kit[1].due, std::nullopt);
    club.question.kitTypes.clear();
    EXPECT_EQ(kitOnHand(club.question, club.items).kit[0].due, std::nullopt);
}

} // namespace
} // namespace core

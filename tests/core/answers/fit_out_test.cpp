#include "core/answers/fit_out.h"

#include "tests/core/answers/answers_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// What is there and what is lacking: by hand.

ManifestLine line(const std::string& kitType, int quantity, std::vector<std::string> substitutes = {}) {
    ManifestLine line;
    line.kitType = kitType;
    line.quantity = quantity;
    line.substitutes = std::move(substitutes);
    return line;
}

Item aboard(const std::string& kitType, const std::string& boat = "Teal", const std::string& person = {}) {
    Item item = itemOf("K000000000", kitType);
    item.boat = boat;
    item.person = person;
    return item;
}

Item at(const std::string& place, const std::string& kitType) {
    Item item = itemOf("K000000000", kitType);
    item.place = place;
    return item;
}

std::vector<int> thereOf(const std::vector<FitOutLine>& lines) {
    std::vector<int> there;
    for (const FitOutLine& each : lines)
        there.push_back(each.there);
    return there;
}

std::vector<FitOutLine> fitOut(const std::vector<ManifestLine>& lines, const std::vector<Item>& kit) {
    Boat teal;
    teal.name = "Teal";
    KitType whistle{.name = "whistle", .personal = true};
    return fitOutOfBoat(teal, lines, {{"whistle", whistle}, {"knife", KitType{.name = "knife"}}}, kit);
}

TEST(FitOutOfBoat, countsWhatHasItsHomeAboardAndNothingElse) {
    Item gone = aboard("knife"), lost = aboard("paddle");
    gone.state = ItemState::WrittenOff;
    lost.state = ItemState::Missing; // it is looked for, and not bought anew
    const auto lines =
        fitOut({line("knife", 1), line("paddle", 2)},
               {gone, lost, aboard("knife", "Heron"), at("Store", "knife"), aboard("paddle", "TEAL ")});
    EXPECT_THAT(thereOf(lines), ElementsAre(0, 2));
    EXPECT_EQ(lines[0].lacking(), 1);
    EXPECT_EQ(lines[1].lacking(), 0);
}

TEST(FitOutOfBoat, aSubstituteStandsInWhenItsOwnLineDoesNotNeedIt) {
    const std::vector<ManifestLine> lines{line("paddle", 2, {"oar"}), line("oar", 2)};
    EXPECT_THAT(thereOf(fitOut(lines, {aboard("oar"), aboard("oar")})), ElementsAre(0, 2));
    EXPECT_THAT(thereOf(fitOut(lines, {aboard("oar"), aboard("oar"), aboard("oar")})), ElementsAre(1, 2));
    EXPECT_THAT(thereOf(fitOut(lines, {aboard("paddle"), aboard("paddle"), aboard("paddle")})),
                ElementsAre(2, 0));
}

TEST(FitOutOfBoat, personalKitGoesWithItsOwner) {
    const std::vector<ManifestLine> lines{line("whistle", 2), line("knife", 1)};
    EXPECT_THAT(thereOf(fitOut(lines, {aboard("whistle", "", "Ada"), aboard("whistle", "Heron", "Bo"),
                                       aboard("knife", "", "Ada")})),
                ElementsAre(1, 0));
}

TEST(FitOutOfSpares, areTheClubsWhereverTheyLie) {
    const std::map<std::string, KitType> kitTypes{{"knife", {.name = "knife", .spares = 3}},
                                                  {"paddle", {.name = "paddle", .spares = 1}},
                                                  {"radio", {.name = "radio"}}};
    const auto lines = fitOutOfSpares(
        kitTypes, {at("Store", "knife"), at("Shed", "knife"), aboard("paddle"), at("Store", "radio")});
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(lines[0].line.kitType, "knife");
    EXPECT_EQ(lines[0].lacking(), 1);
    EXPECT_EQ(lines[1].lacking(), 1);
}

} // namespace
} // namespace core

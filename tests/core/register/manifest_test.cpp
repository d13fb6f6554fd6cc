#include "core/register/manifest.h"

#include <gmock/gmock.h>

namespace {

using core::AskedLine;
using core::BoatPoint;
using core::changesBetween;
using core::Difference;
using core::Manifest;
using core::manifestOf;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

Manifest linesOf(const std::vector<std::pair<std::string, int>>& lines) {
    Manifest manifest;
    for (const auto& [kitType, quantity] : lines)
        manifest.lines.push_back({.line = {.kitType = kitType, .quantity = quantity}});
    return manifest;
}

std::vector<std::tuple<std::string, int, Difference>> said(const Manifest& manifest) {
    std::vector<std::tuple<std::string, int, Difference>> lines;
    for (const AskedLine& line : manifest.lines)
        lines.emplace_back(line.line.kitType, line.line.quantity, line.difference);
    return lines;
}

// What a boat's own row does: design/register-csv.md, "`boat` in `manifest_lines` or `points`".
TEST(Manifest, ownLinesReplaceTheClasssInPlaceAndFurtherOnesComeLast) {
    const Manifest boat = manifestOf(linesOf({{"knife", 1}, {"flare", 2}, {"paddle", 2}}),
                                     linesOf({{"hand pump", 1}, {"Flare", 0}, {"knife", 2}}));
    EXPECT_THAT(said(boat), ElementsAre(std::tuple("knife", 2, Difference::Changed),
                                        std::tuple("Flare", 0, Difference::TakenAway),
                                        std::tuple("paddle", 2, Difference::None),
                                        std::tuple("hand pump", 1, Difference::Added)));
    EXPECT_EQ(boat.lines[0].ofClass->quantity, 1);
    EXPECT_FALSE(boat.lines[3].ofClass);
}

TEST(Manifest, anOwnLineThatSaysWhatTheClassSaysIsNoDifference) {
    EXPECT_THAT(said(manifestOf(linesOf({{"knife", 1}}), linesOf({{"knife", 1}}))),
                ElementsAre(std::tuple("knife", 1, Difference::None)));
}

TEST(Manifest, whatIsAskedNowhereIsNoLine) {
    EXPECT_THAT(said(manifestOf(linesOf({{"knife", 0}}), linesOf({{"knife", 0}, {"flare", 0}}))), IsEmpty());
    EXPECT_THAT(said(manifestOf(linesOf({{"knife", 0}}), linesOf({{"knife", 1}}))),
                ElementsAre(std::tuple("knife", 1, Difference::Added)));
}

TEST(Manifest, pointsOfTheLaunchComeFirstAndPhasesAreKeptApart) {
    Manifest ofClass, own;
    ofClass.points = {{.phase = "return", .point = {.name = "bungs"}},
                      {.phase = "launch", .point = {.name = "bungs"}}};
    own.points = {{.phase = "launch", .point = {.name = "Bungs", .required = false}}};
    const Manifest boat = manifestOf(ofClass, own);
    ASSERT_THAT(boat.points, SizeIs(2));
    EXPECT_EQ(boat.points[0].phase, "launch");
    EXPECT_EQ(boat.points[0].difference, Difference::Changed);
    EXPECT_EQ(boat.points[1].difference, Difference::None);
}

TEST(ManifestChanges, areLinesAndPointsOfEitherSide) {
    Manifest before = linesOf({{"knife", 1}, {"flare", 2}, {"radio", 1}});
    Manifest after = linesOf({{"knife", 2}, {"radio", 1}, {"tow line", 1}});
    before.points = {{.phase = "launch", .point = BoatPoint{.name = "bow chamber", .limits = {18, 22}}}};
    after.points = {{.phase = "launch", .point = BoatPoint{.name = "bow chamber", .limits = {17, 22}}}};
    const auto changes = changesBetween(before, after);
    ASSERT_THAT(changes, SizeIs(4));
    EXPECT_EQ(changes[0].lineBefore->quantity, 1);
    EXPECT_EQ(changes[0].lineAfter->quantity, 2);
    EXPECT_EQ(changes[1].lineAfter->kitType, "tow line");
    EXPECT_FALSE(changes[1].lineBefore);
    EXPECT_EQ(changes[2].lineBefore->kitType, "flare");
    EXPECT_FALSE(changes[2].lineAfter);
    EXPECT_EQ(changes[3].phase, "launch");
    EXPECT_EQ(changes[3].pointBefore->limits.low, 18);
    EXPECT_THAT(changesBetween(before, before), IsEmpty());
}

TEST(ManifestChanges, aLineTakenAwayIsAskedNoMore) {
    const Manifest ofClass = linesOf({{"flare", 2}});
    const auto changes = changesBetween(ofClass, manifestOf(ofClass, linesOf({{"flare", 0}})));
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_TRUE(changes[0].lineBefore);
    EXPECT_FALSE(changes[0].lineAfter);
}

} // namespace

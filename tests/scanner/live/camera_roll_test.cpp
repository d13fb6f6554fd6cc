#include "scanner/live/camera_roll.h"

#include <gtest/gtest.h>

namespace scanner {
namespace {

// The lists are those that Qt 6.4.2 gave on Debian 12 when webcams were plugged in and pulled out (own
// observation).

using Ids = std::vector<std::string>;

ListedCamera camera(const char* id, const char* name = "Webcam", const char* kind = "720p") {
    return {id, name, kind};
}

Ids ids(const std::vector<ListedCamera>& shown) {
    Ids found;
    for (const ListedCamera& each : shown)
        found.push_back(each.id.toStdString());
    return found;
}

TEST(CameraRoll, showsACameraOnceThoughItIsListedTwice) {
    CameraRoll roll;
    EXPECT_EQ(ids(roll.update({camera("0")})), Ids{"0"});
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1")})), Ids{"0"});
}

TEST(CameraRoll, forgetsTheGhostOfACameraPulledOut) {
    CameraRoll roll;
    roll.update({camera("0")});
    roll.update({camera("0"), camera("1")});
    EXPECT_EQ(ids(roll.update({camera("1")})), Ids{});
    EXPECT_EQ(ids(roll.update({camera("1"), camera("2")})), Ids{"2"});
    EXPECT_EQ(ids(roll.update({camera("1")})), Ids{});
}

TEST(CameraRoll, theOtherOfThePairMayGoAsWell) {
    CameraRoll roll;
    roll.update({camera("0")});
    roll.update({camera("0"), camera("1")});
    EXPECT_EQ(ids(roll.update({camera("0")})), Ids{});
    EXPECT_EQ(ids(roll.update({camera("0")})), Ids{});
}

TEST(CameraRoll, twoOfAMakeAreTwo) {
    CameraRoll roll;
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1"), camera("2")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1"), camera("2"), camera("3")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(roll.update({camera("1"), camera("2"), camera("3")})), Ids{"1"});
}

TEST(CameraRoll, doublesAreMatchedByNameAndKind) {
    CameraRoll roll;
    roll.update({camera("0", "Webcam", "720p"), camera("1", "Webcam", "480p")});
    roll.update({camera("0", "Webcam", "720p"), camera("1", "Webcam", "480p"), camera("2", "Webcam", "480p"),
                 camera("3", "Webcam", "720p")});
    EXPECT_EQ(ids(roll.update({camera("0", "Webcam", "720p"), camera("2", "Webcam", "480p"),
                               camera("3", "Webcam", "720p")})),
              Ids{"0"});
}

TEST(CameraRoll, aSecondOfAMakeThatIsPluggedInLaterIsShown) {
    CameraRoll roll;
    roll.update({camera("0")});
    roll.update({camera("0"), camera("1")});
    roll.stopExpectingDoubles();
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1"), camera("2")})), (Ids{"0", "2"}));
}

TEST(CameraRoll, whereNoDoublesComeEachIsShown) {
    CameraRoll roll;
    roll.update({camera("0")});
    roll.stopExpectingDoubles();
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(roll.update({camera("1")})), Ids{"1"});
}

TEST(CameraRoll, aCameraPluggedInAfterTheStartHasNoDouble) {
    CameraRoll roll;
    EXPECT_EQ(ids(roll.update({})), Ids{});
    EXPECT_EQ(ids(roll.update({camera("0")})), Ids{"0"});
    EXPECT_EQ(ids(roll.update({camera("0"), camera("1")})), (Ids{"0", "1"}));
}

} // namespace
} // namespace scanner

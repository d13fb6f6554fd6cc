#include "scanner/live/distinct_cameras.h"

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

TEST(DistinctCameras, showsACameraOnceThoughItIsListedTwice) {
    DistinctCameras cameras;
    EXPECT_EQ(ids(cameras.update({camera("0")})), Ids{"0"});
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1")})), Ids{"0"});
}

TEST(DistinctCameras, forgetsTheGhostOfACameraPulledOut) {
    DistinctCameras cameras;
    cameras.update({camera("0")});
    cameras.update({camera("0"), camera("1")});
    EXPECT_EQ(ids(cameras.update({camera("1")})), Ids{});
    EXPECT_EQ(ids(cameras.update({camera("1"), camera("2")})), Ids{"2"});
    EXPECT_EQ(ids(cameras.update({camera("1")})), Ids{});
}

TEST(DistinctCameras, theOtherOfThePairMayGoAsWell) {
    DistinctCameras cameras;
    cameras.update({camera("0")});
    cameras.update({camera("0"), camera("1")});
    EXPECT_EQ(ids(cameras.update({camera("0")})), Ids{});
    EXPECT_EQ(ids(cameras.update({camera("0")})), Ids{});
}

TEST(DistinctCameras, twoOfAMakeAreTwo) {
    DistinctCameras cameras;
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1"), camera("2")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1"), camera("2"), camera("3")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(cameras.update({camera("1"), camera("2"), camera("3")})), Ids{"1"});
}

TEST(DistinctCameras, doublesAreMatchedByNameAndKind) {
    DistinctCameras cameras;
    cameras.update({camera("0", "Webcam", "720p"), camera("1", "Webcam", "480p")});
    cameras.update({camera("0", "Webcam", "720p"), camera("1", "Webcam", "480p"),
                    camera("2", "Webcam", "480p"), camera("3", "Webcam", "720p")});
    EXPECT_EQ(ids(cameras.update({camera("0", "Webcam", "720p"), camera("2", "Webcam", "480p"),
                                  camera("3", "Webcam", "720p")})),
              Ids{"0"});
}

TEST(DistinctCameras, aSecondOfAMakeThatIsPluggedInLaterIsShown) {
    DistinctCameras cameras;
    cameras.update({camera("0")});
    cameras.update({camera("0"), camera("1")});
    cameras.stopExpectingDoubles();
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1"), camera("2")})), (Ids{"0", "2"}));
}

TEST(DistinctCameras, whereNoDoublesComeEachIsShown) {
    DistinctCameras cameras;
    cameras.update({camera("0")});
    cameras.stopExpectingDoubles();
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1")})), (Ids{"0", "1"}));
    EXPECT_EQ(ids(cameras.update({camera("1")})), Ids{"1"});
}

TEST(DistinctCameras, aCameraPluggedInAfterTheStartHasNoDouble) {
    DistinctCameras cameras;
    EXPECT_EQ(ids(cameras.update({})), Ids{});
    EXPECT_EQ(ids(cameras.update({camera("0")})), Ids{"0"});
    EXPECT_EQ(ids(cameras.update({camera("0"), camera("1")})), (Ids{"0", "1"}));
}

} // namespace
} // namespace scanner

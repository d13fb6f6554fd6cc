#include "app/gui/camera/label_places.h"

#include <QLineF>

#include <gtest/gtest.h>

namespace {

const QRectF picture(0, 0, 600, 340);
const QSizeF words(120, 28);

app::LabelledTag squareAt(double x, double y, double side = 50) {
    return {QPolygonF({{x, y}, {x + side, y}, {x + side, y + side}, {x, y + side}}), words};
}

/// How much the labels cover of all tags and of each other, in square pixels.
double coveredIn(const std::vector<app::LabelledTag>& tags, const std::vector<QRectF>& labels) {
    double sum = 0;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        for (const app::LabelledTag& tag : tags)
            sum += app::coveredArea(labels[i], tag.corners);
        for (std::size_t j = 0; j < i; ++j) {
            const QRectF common = labels[i] & labels[j];
            sum += common.width() * common.height();
        }
    }
    return sum;
}

} // namespace

// By hand: half of a square; of a diamond in a unit box the half as well; a figure far away.
TEST(LabelPlaces, coveredAreaIsThatOfTheCommonFigure) {
    const QPolygonF square({{0, 0}, {10, 0}, {10, 10}, {0, 10}});
    EXPECT_DOUBLE_EQ(app::coveredArea({5, 0, 20, 10}, square), 50);
    EXPECT_DOUBLE_EQ(app::coveredArea({2, 2, 3, 3}, square), 9);
    const QPolygonF diamond({{5, 0}, {10, 5}, {5, 10}, {0, 5}});
    EXPECT_DOUBLE_EQ(app::coveredArea({0, 0, 10, 10}, diamond), 50);
    EXPECT_DOUBLE_EQ(app::coveredArea({0, 0, 5, 5}, diamond), 12.5);
    EXPECT_DOUBLE_EQ(app::coveredArea({20, 20, 5, 5}, diamond), 0);
}

TEST(LabelPlaces, aTagAloneHasItsLabelBeneathItInTheMiddle) {
    const auto labels = app::labelPlaces({squareAt(200, 100)}, picture);
    ASSERT_EQ(labels.size(), 1u);
    EXPECT_GE(labels[0].top(), 150);
    EXPECT_LT(labels[0].top(), 160);
    EXPECT_DOUBLE_EQ(labels[0].center().x(), 225);
    EXPECT_TRUE(app::leaderOf(labels[0], squareAt(200, 100).corners).isNull());
}

TEST(LabelPlaces, aTagBeneathSendsTheLabelElsewhere) {
    const std::vector<app::LabelledTag> tags{squareAt(200, 100), squareAt(205, 165)};
    EXPECT_GT(coveredIn(tags, {QRectF(165, 156, 120, 28)}), 500) << "where it would stand if it were alone";
    const auto labels = app::labelPlaces(tags, picture);
    EXPECT_DOUBLE_EQ(coveredIn(tags, labels), 0);
}

TEST(LabelPlaces, labelsOfACrowdCoverNothingWhereThereIsRoom) {
    // As in docs/screens: tags of a heap, some of them closer to each other than a label is wide.
    std::vector<app::LabelledTag> tags{squareAt(90, 60),   squareAt(430, 95),  squareAt(545, 70),
                                       squareAt(420, 175), squareAt(140, 200), squareAt(255, 210),
                                       squareAt(490, 255)};
    const auto labels = app::labelPlaces(tags, picture);
    EXPECT_DOUBLE_EQ(coveredIn(tags, labels), 0);
    for (const QRectF& label : labels)
        EXPECT_TRUE(picture.contains(label));
}

TEST(LabelPlaces, atTheEdgeTheLabelStaysInThePicture) {
    const std::vector<app::LabelledTag> tags{squareAt(0, 285), squareAt(550, 0)};
    const auto labels = app::labelPlaces(tags, picture);
    for (const QRectF& label : labels)
        EXPECT_TRUE(picture.contains(label));
    EXPECT_DOUBLE_EQ(coveredIn(tags, labels), 0);
}

TEST(LabelPlaces, aLabelThatHadToMoveAwayIsLedToItsTag) {
    // A tag with others all around it.
    std::vector<app::LabelledTag> tags{squareAt(275, 145)};
    for (const auto& [x, y] : {std::pair{215, 85},
                               {275, 85},
                               {335, 85},
                               {215, 145},
                               {335, 145},
                               {215, 205},
                               {275, 205},
                               {335, 205}}) {
        tags.push_back(squareAt(x, y));
        tags.back().label = {};
    }
    const auto labels = app::labelPlaces(tags, picture);
    EXPECT_DOUBLE_EQ(coveredIn(tags, {labels[0]}), 0);
    const QLineF leader = app::leaderOf(labels[0], tags[0].corners);
    ASSERT_FALSE(leader.isNull());
    EXPECT_TRUE(tags[0].corners.boundingRect().contains(leader.p2()));
    EXPECT_TRUE(labels[0].contains(leader.p1()));
}

TEST(LabelPlaces, aTagWithoutALabelGetsNone) {
    app::LabelledTag tag = squareAt(200, 100);
    tag.label = {};
    EXPECT_TRUE(app::labelPlaces({tag}, picture)[0].isNull());
}

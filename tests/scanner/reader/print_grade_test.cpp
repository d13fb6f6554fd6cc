// Tags that lose their print step by step, drawn under a camera: the grade must fall with it, and warn while
// the tag is still read.
#include "scanner/reader/print_grade.h"

#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/scenes/chance.h"
#include "tests/scanner/reader/scenes/scene.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace scanner {
namespace {

constexpr int steps = 16;

/// Ink that fades and comes off in specks; each step has those of the steps before it.
scenes::Label wornLabel(scenes::Kind kind, unsigned number, int step) {
    std::mt19937 random(number);
    scenes::Label label = scenes::makeLabel(kind, number);
    label.ink = 45 + 3.0 * step;
    for (int i = 0; i < 2 * step; ++i) {
        const double size = scenes::between(0.4, 1.3, random);
        label.dirt.push_back({scenes::between(0, label.wide(), random),
                              scenes::between(0, label.high(), random), size,
                              size * scenes::between(0.5, 2, random), label.paper - 10});
    }
    return label;
}

struct View {
    double tilt = 0.1, blur = 0.7, exposure = 1;
};

struct Sight {
    bool isRead = false;
    double grade = -1; ///< below 0: none
};

Sight sightOf(const scenes::Label& label, const View& view, unsigned seed) {
    std::mt19937 random(seed);
    scenes::Scene scene;
    scene.width = 240;
    scene.height = 180;
    scene.ground = scenes::makeGround(scene.width, scene.height, random);
    scene.optics.blur = view.blur;
    scene.optics.exposure = view.exposure;
    scene.optics.unevenness = scenes::between(-0.3, 0.3, random);
    scenes::Placed placed{label, scenes::Pose::turned(view.tilt, -view.tilt, scenes::between(0, 6, random))};
    placed.pose.place = {0, 0, 0.3};
    scene.labels.push_back(placed);
    const GreyPicture picture = scenes::draw(scene, {}, random);
    ReadOptions options;
    options.budget = {};
    options.isTag = pictures::isTag;
    for (const SeenCode& code : readSymbols(picture.view(), options))
        if (code.text == label.text) return {true, code.printGrade.value_or(-1)};
    return {};
}

/// The best of two views: blur and glare in one of them are no fault of the print.
Sight bestSight(const scenes::Label& label, unsigned seed) {
    const Sight one = sightOf(label, {0.05, 0.6, 1}, 2 * seed),
                other = sightOf(label, {0.2, 0.8, 1}, 2 * seed + 1);
    return {one.isRead || other.isRead, std::max(one.grade, other.grade)};
}

class PrintGrade : public testing::TestWithParam<scenes::Kind> {};

// Of QR tags: a Data Matrix whose solid border breaks is not found at all, and so fails without a word.
TEST(WornPrint, fallsInGradeAndIsWarnedOfBeforeItFails) {
    int inversions = 0, pairs = 0, warned = 0, labels = 0;
    for (unsigned number = 1; number <= 3; ++number) {
        std::vector<double> grades;
        for (int step = 0; step < steps; ++step) {
            const Sight sight = bestSight(wornLabel(scenes::Kind::Qr, number, step), number * 100 + step);
            if (!sight.isRead) break;
            if (sight.grade >= 0) grades.push_back(sight.grade);
        }
        ASSERT_GE(grades.size(), 3U);
        EXPECT_GT(grades.front(), 3.2) << number;
        for (std::size_t i = 0; i < grades.size(); ++i)
            for (std::size_t k = i + 2; k < grades.size(); ++k, ++pairs)
                inversions += grades[k] > grades[i] + 0.1;
        ++labels;
        warned += *std::min_element(grades.begin(), grades.end()) < wornPrint;
    }
    EXPECT_LE(inversions * 20, pairs);
    EXPECT_EQ(warned, labels);
}

TEST_P(PrintGrade, ofASoundTagIsGoodInAPoorView) {
    const scenes::Label label = wornLabel(GetParam(), 9, 0);
    for (const View& view : {View{0.5, 0.7, 1}, View{0.1, 1.2, 1}, View{0.2, 0.8, 0.4}, View{0.2, 0.9, 1.15}})
        EXPECT_GT(sightOf(label, view, 77).grade, wornPrint)
            << view.tilt << " " << view.blur << " " << view.exposure;
}

INSTANTIATE_TEST_SUITE_P(Matrix, PrintGrade, testing::Values(scenes::Kind::Qr, scenes::Kind::DataMatrix),
                         [](const auto& kind) { return std::string(scenes::nameOf(kind.param)); });

} // namespace
} // namespace scanner

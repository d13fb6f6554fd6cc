// Tags that lose their print step by step, drawn under a camera: the grade must fall with it, and warn while
// the tag is still read.
#include "scanner/reader/print_grade.h"

#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/scenes/chance.h"
#include "tests/scanner/reader/scenes/scene.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace scanner {
namespace {

enum class Wear { Fading, Scratches, Salt, Abrasion };

constexpr int steps = 10;

const char* nameOf(Wear wear) {
    static constexpr const char* names[] = {"Fading", "Scratches", "Salt", "Abrasion"};
    return names[static_cast<int>(wear)];
}

scenes::Blot blotOn(const scenes::Label& label, double across, double along, std::mt19937& random) {
    return {scenes::between(0, label.wide(), random), scenes::between(0, label.high(), random), across, along,
            label.paper - 10};
}

/// They have more room than squares, and bear more.
bool isBars(const scenes::Label& label) {
    return label.modules.height == 1;
}

/// Along the rows or across them, a fifth of a module to half of one wide.
scenes::Blot scratchOn(const scenes::Label& label, std::mt19937& random) {
    const double large = isBars(label) ? 4 : 1;
    const double length = large * scenes::between(1.5, 4, random),
                 width = scenes::between(0.1, 0.25, random) * std::sqrt(large);
    return random() % 2 ? blotOn(label, length, width, random) : blotOn(label, width, length, random);
}

scenes::Blot speckOn(const scenes::Label& label, std::mt19937& random) {
    const double size = (isBars(label) ? 3 : 1) * scenes::between(0.2, 0.7, random);
    return blotOn(label, size, size * scenes::between(0.6, 1.7, random), random);
}

/// The left side, which is solid in a Data Matrix and holds two of a QR tag's finders, or the ends of bars.
scenes::Blot rubbedOff(const scenes::Label& label, double depth, std::mt19937& random) {
    const double at = scenes::between(0, 1, random), reach = depth * scenes::between(0.6, 1.4, random);
    if (isBars(label)) return {at * label.wide(), 0, 3, 35 * reach, label.paper - 10};
    return {0, at * label.high(), reach, 0.5, label.paper - 10};
}

/// What is lost at a step has been lost since the step before it, or longer.
scenes::Label wornLabel(scenes::Kind kind, Wear wear, unsigned number, int step) {
    std::mt19937 random(number);
    scenes::Label label = scenes::makeLabel(kind, number);
    // A symbol of more modules bears more.
    const int each = isBars(label) ? 20 : static_cast<int>(label.wide() * label.high() / 130);
    if (wear == Wear::Fading) label.ink = 45 + 14.0 * step;
    for (int i = 0; i < step * each && wear == Wear::Scratches; ++i)
        label.dirt.push_back(scratchOn(label, random));
    for (int i = 0; i < 2 * step * each && wear == Wear::Salt; ++i)
        label.dirt.push_back(speckOn(label, random));
    for (int i = 0; i < 60 && wear == Wear::Abrasion; ++i)
        label.dirt.push_back(rubbedOff(label, (label.kind == scenes::Kind::Qr ? 0.3 : 0.09) * step, random));
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
    const bool bars = isBars(label); // a longer label, from further away
    scene.width = bars ? 480 : 240;
    scene.height = bars ? 480 : 180;
    scene.ground = scenes::makeGround(scene.width, scene.height, random);
    scene.optics.blur = view.blur;
    scene.optics.exposure = view.exposure;
    scene.optics.unevenness = scenes::between(-0.3, 0.3, random);
    scenes::Placed placed{label, scenes::Pose::turned(view.tilt, -view.tilt, scenes::between(0, 6, random))};
    placed.pose.place = {0, 0, bars ? 0.48 : 0.3};
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

struct Case {
    scenes::Kind kind;
    Wear wear;
};

class WornPrint : public testing::TestWithParam<Case> {};
class PrintGrade : public testing::TestWithParam<scenes::Kind> {};

TEST_P(WornPrint, fallsInGradeAndIsWarnedOfBeforeItFails) {
    int inversions = 0, pairs = 0;
    std::vector<double> grades;
    for (int step = 0; step < steps; ++step) {
        const Sight sight = bestSight(wornLabel(GetParam().kind, GetParam().wear, 1, step), 100 + step);
        if (!sight.isRead) break;
        if (sight.grade >= 0) grades.push_back(sight.grade);
    }
    ASSERT_GE(grades.size(), 3U);
    EXPECT_GT(grades.front(), 3.2);
    for (std::size_t i = 0; i < grades.size(); ++i)
        for (std::size_t k = i + 2; k < grades.size(); ++k, ++pairs)
            inversions += grades[k] > grades[i] + 0.1;
    EXPECT_LE(inversions * 20, pairs) << testing::PrintToString(grades);
    EXPECT_LT(*std::min_element(grades.begin(), grades.end()), wornPrint) << testing::PrintToString(grades);
}

TEST_P(PrintGrade, ofASoundTagIsGoodInAPoorView) {
    const scenes::Label label = wornLabel(GetParam(), Wear::Fading, 9, 0);
    for (const View& view : {View{0.5, 0.7, 1}, View{0.1, 1.2, 1}, View{0.2, 0.8, 0.4}, View{0.2, 0.9, 1.15}})
        EXPECT_GT(sightOf(label, view, 77).grade, wornPrint)
            << view.tilt << " " << view.blur << " " << view.exposure;
}

std::vector<Case> allCases() {
    std::vector<Case> cases;
    for (const auto kind : {scenes::Kind::Qr, scenes::Kind::DataMatrix, scenes::Kind::Code128})
        for (const Wear wear : {Wear::Fading, Wear::Scratches, Wear::Salt, Wear::Abrasion})
            cases.push_back({kind, wear});
    return cases;
}

std::string nameOfKind(scenes::Kind kind) {
    return scenes::nameOf(kind);
}

INSTANTIATE_TEST_SUITE_P(Drawn, WornPrint, testing::ValuesIn(allCases()), [](const auto& each) {
    return nameOfKind(each.param.kind) + nameOf(each.param.wear);
});
INSTANTIATE_TEST_SUITE_P(Drawn, PrintGrade,
                         testing::Values(scenes::Kind::Qr, scenes::Kind::DataMatrix, scenes::Kind::Code128),
                         [](const auto& each) { return nameOfKind(each.param); });

} // namespace
} // namespace scanner

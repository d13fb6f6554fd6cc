#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <QApplication>
#include <QCheckBox>
#include <QStyleOptionButton>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

// Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.1, section
// "Definitions".
double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color) {
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

class Theme : public testing::TestWithParam<const char*> {
protected:
    const app::Palette& palette() const { return app::paletteOf(GetParam()); }
};

/// The box of a check box as it is painted, without its edge.
QImage insideOf(QCheckBox& box) {
    QStyleOptionButton option;
    option.initFrom(&box);
    const QRect place = box.style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, &box);
    return box.grab().toImage().copy(place.adjusted(4, 4, -4, -4));
}

/// Which part of a picture has about that tone.
double shareOf(const QImage& picture, const QColor& tone) {
    int same = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            same += contrast(picture.pixelColor(x, y), tone) < 1.5;
    return static_cast<double>(same) / (picture.width() * picture.height());
}

} // namespace

// Black on white is 21:1 and a tone on itself 1:1 by the definition: the measure itself is right.
TEST(Palette, contrastMeasureAgreesWithItsDefinition) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 0.001);
    EXPECT_NEAR(contrast(Qt::red, Qt::red), 1.0, 0.001);
    // #777777 on white is the well-known pair just under 4.5:1 (WebAIM and others give 4.48).
    EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.48, 0.01);
}

// WCAG 2.1, 1.4.6: 7:1 for text (AAA).
TEST_P(Theme, textReachesSevenToOneOnGroundAndPanel) {
    for (const QColor& ground : {palette().ground, palette().panel})
        for (const QColor& text : {palette().ink, palette().quiet, palette().found, palette().look})
            EXPECT_GE(contrast(text, ground), 7.0)
                << text.name().toStdString() << " on " << ground.name().toStdString();
}

// WCAG 2.1, 1.4.11: 3:1 for the parts of controls and for the focus ring.
TEST_P(Theme, linesAndFocusReachThreeToOneOnGroundAndPanel) {
    for (const QColor& ground : {palette().ground, palette().panel})
        for (const QColor& line : {palette().line, palette().focus})
            EXPECT_GE(contrast(line, ground), 3.0)
                << line.name().toStdString() << " on " << ground.name().toStdString();
}

// Told apart without hue: the two tones with a meaning differ from the ground alike, so shape and word carry
// them; but neither may be the ink itself.
TEST_P(Theme, meaningfulTonesAreNotTheInk) {
    EXPECT_NE(palette().found, palette().ink);
    EXPECT_NE(palette().look, palette().ink);
    EXPECT_NE(palette().found, palette().look);
}

// A box that is filled says less than one with a tick: it might be a state of its own.
TEST_P(Theme, aTickIsSeenInItsBoxAndNoneInAnEmptyOne) {
    app::dress(*qApp, palette());
    QCheckBox box("required");
    box.resize(box.sizeHint());
    EXPECT_DOUBLE_EQ(shareOf(insideOf(box), palette().ground), 1);
    box.setChecked(true);
    const QImage ticked = insideOf(box);
    EXPECT_GT(shareOf(ticked, palette().ink), 0.1);
    EXPECT_GT(shareOf(ticked, palette().ground), 0.4);
    app::dress(*qApp, app::paletteOf("light"));
}

INSTANTIATE_TEST_SUITE_P(All, Theme, testing::Values("sun", "light", "dark"));

TEST(Palette, unknownNameGivesLight) {
    EXPECT_EQ(app::paletteOf("no such theme").name, "light");
    EXPECT_EQ(app::paletteOf("sun").name, "sun");
}

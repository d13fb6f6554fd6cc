#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/widgets/choice_box.h"
#include "tests/support/wait_for.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QStyleOptionButton>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

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

/// The tones that are most of a picture, and of the rest the one furthest from it: ground and words.
std::pair<QColor, QColor> groundAndWords(const QImage& picture) {
    std::map<QRgb, int> counts;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            ++counts[picture.pixel(x, y)];
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    QColor ground(most->first), words = ground;
    for (const auto& [tone, count] : counts)
        if (contrast(QColor(tone), ground) > contrast(words, ground)) words = QColor(tone);
    return {ground, words};
}

double contrastOfWords(const QImage& picture) {
    const auto [ground, words] = groundAndWords(picture);
    return contrast(ground, words);
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

// WCAG 2.1, 1.4.3: 4.5:1 for text (AA), on whatever ground the state of a control gives it.
TEST_P(Theme, theMarkedRowOfAListToChooseFromIsReadAndStandsOut) {
    app::dress(*qApp, palette());
    app::ChoiceBox box;
    box.addItems({"Bittern", "Dabchick", "Grebe"});
    box.setCurrentIndex(1);
    box.show();
    box.showPopup();
    ASSERT_TRUE(support::waitFor([&] { return box.view()->isVisible(); }));
    const QImage list = box.view()->viewport()->grab().toImage();
    const auto row = [&](int at) {
        return list.copy(box.view()->visualRect(box.model()->index(at, 0)).adjusted(2, 2, -2, -2));
    };
    EXPECT_GE(contrastOfWords(row(0)), 4.5);
    EXPECT_GE(contrastOfWords(row(1)), 4.5);
    EXPECT_GE(contrast(groundAndWords(row(1)).first, groundAndWords(row(0)).first), 3) << "it is marked";
    EXPECT_EQ(shareOf(row(1), groundAndWords(row(1)).first) > 0.5, true);
    box.hidePopup();
    app::dress(*qApp, app::paletteOf("light"));
}

TEST_P(Theme, wordsOfAButtonAreReadInEveryState) {
    app::dress(*qApp, palette());
    for (const char* role : {"", "usual", "plain"}) {
        QWidget page;
        QPushButton button("Sign", &page);
        button.setProperty("role", role);
        button.resize(button.sizeHint());
        page.resize(button.size());
        page.show();
        const auto read = [&] {
            return contrastOfWords(page.grab().toImage().copy(button.rect().adjusted(8, 8, -8, -8)));
        };
        EXPECT_GE(read(), 4.5) << role;
        QTest::mouseMove(&button, button.rect().center());
        EXPECT_GE(read(), 4.5) << role << ", beneath the mouse";
        button.setDown(true);
        EXPECT_GE(read(), 4.5) << role << ", pressed";
        button.setDown(false);
        button.setEnabled(false);
        EXPECT_GE(read(), 4.5) << role << ", disabled";
    }
    app::dress(*qApp, app::paletteOf("light"));
}

// A hint says what a field asks for also while it asks for nothing yet.
TEST_P(Theme, theHintOfAFieldIsReadWhetherOrNotItCanBeUsed) {
    app::dress(*qApp, palette());
    QLineEdit line;
    line.setPlaceholderText("like 2026-03");
    QPlainTextEdit text;
    text.setPlaceholderText("what happened");
    app::ChoiceBox names;
    names.setEditable(true);
    names.lineEdit()->setPlaceholderText("patrol, training");
    for (QWidget* field : std::initializer_list<QWidget*>{&line, &text, &names}) {
        QWidget page;
        field->setParent(&page);
        field->resize(320, 80);
        page.resize(field->size());
        page.show();
        for (const bool isEnabled : {true, false, true}) {
            field->setEnabled(isEnabled);
            const QRect hint = field->rect().adjusted(8, 8, -48, -8); // without a box's triangle
            EXPECT_GE(contrastOfWords(page.grab().toImage().copy(hint)), 4.5)
                << field->metaObject()->className() << (isEnabled ? "" : ", disabled");
        }
        field->setParent(nullptr);
    }
    line.setText("2026-03");
    line.setEnabled(false);
    EXPECT_GE(contrastOfWords(line.grab().toImage().copy(line.rect().adjusted(8, 8, -8, -8))), 4.5);
    app::dress(*qApp, app::paletteOf("light"));
}

INSTANTIATE_TEST_SUITE_P(All, Theme, testing::Values("sun", "light", "dark"));

TEST(Palette, unknownNameGivesLight) {
    EXPECT_EQ(app::paletteOf("no such theme").name, "light");
    EXPECT_EQ(app::paletteOf("sun").name, "sun");
}

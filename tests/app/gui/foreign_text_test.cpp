#include "tests/app/gui/hostile_club.h"
#include "tests/app/gui/window_story.h"

#include <QToolTip>

namespace {

class ForeignTextInWindow : public support::WindowStory {
protected:
    void SetUp() override { support::writeHostileClub(file()); }
};

TEST_F(ForeignTextInWindow, standsOnTheBoardAndInACheckAsItIs) {
    openWindow();
    EXPECT_TRUE(support::waitFor([&] { return support::hostileNamesIn(window()) >= 1; }));
    support::expectShownAsItIs(window(), "board");
    openBoat(support::hostileShown[0]);
    typeCode(QString::fromStdString(small_club::adaTag));
    typeCode(QString::fromStdString(small_club::knife));
    typeCode("KF9DPHVFJK");
    support::expectShownAsItIs(window(), "check");
    EXPECT_GE(support::hostileNamesIn(window()), 5);
    window().checkPage().grab(); // and is painted so
}

TEST_F(ForeignTextInWindow, standsInAToolTipAsItIs) {
    openWindow();
    QToolTip::showText(window().mapToGlobal(QPoint(10, 10)), "<b>Teal</b>", &window());
    const QWidget* tip = nullptr;
    ASSERT_TRUE(support::waitFor([&] {
        for (const QWidget* each : QApplication::topLevelWidgets())
            if (each->inherits("QTipLabel") && each->isVisible()) tip = each;
        return tip != nullptr;
    }));
    EXPECT_EQ(static_cast<const QLabel*>(tip)->textFormat(), Qt::PlainText);
    QToolTip::hideText();
}

TEST_F(ForeignTextInWindow, aLabelOfQtsOwnWouldRunIt) {
    const QLabel label("<b>Teal</b>"); // before it is shown, the style has not seen it
    EXPECT_EQ(label.textFormat(), Qt::AutoText);
    EXPECT_TRUE(Qt::mightBeRichText(label.text()));
}

} // namespace

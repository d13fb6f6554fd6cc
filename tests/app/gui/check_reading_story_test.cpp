#include "app/gui/widgets/row_list.h"
#include "core/club/club_log.h"
#include "tests/app/gui/window_story.h"

#include <QPushButton>
#include <QScrollArea>

using support::WindowStory;

namespace {

/// What a crew reads during a check: the log, the ranges of what is measured, what is below.
class CheckReadingStory : public WindowStory {
protected:
    /// The demo's Bittern has an open entry, and one that was closed; here is a long one more.
    const QString long_ =
        QString("the port chamber loses pressure overnight, about two kilopascals ").repeated(6);

    void writeLongEntry() {
        core::Club club = stored(core::Club::Access::ReadWrite);
        ASSERT_TRUE(club.log().add("Bittern", long_.trimmed().toStdString(), core::Severity::Remark,
                                   "Petra Lund", moment()));
    }
    bool isWhole(const QLabel& label) {
        return label.isVisible() && label.heightForWidth(label.width()) <= label.height();
    }
    QLabel* labelWith(const QString& text) {
        for (auto* label : child("logPanel")->findChildren<QLabel*>())
            if (label->text().contains(text)) return label;
        return nullptr;
    }
    QLabel* words() { return window().checkPage().findChild<QLabel*>("rowNumberWords"); }
    /// The first measure of a launch check of Bittern, with its field open.
    void openMeasure() {
        press(Qt::Key_P, Qt::ControlModifier);
        for (int down = 0; down < 12; ++down) {
            press(Qt::Key_F2);
            if (QApplication::focusWidget()->objectName() == "rowNumberEdit") return;
            press(Qt::Key_Down);
        }
        FAIL() << "no measure";
    }
};

} // namespace

TEST_F(CheckReadingStory, theLogStandsInFullAndReadingItHidesNothingThatWasDone) {
    writeLongEntry();
    openWindow();
    openBoat("Bittern");
    QLabel* entry = labelWith(long_.trimmed());
    ASSERT_NE(entry, nullptr);
    EXPECT_TRUE(support::waitFor([&] { return isWhole(*entry); }));
    QLabel* done = labelWith("dry after ten minutes at idle");
    ASSERT_NE(done, nullptr);
    EXPECT_TRUE(support::waitFor([&] { return isWhole(*done); }));
    EXPECT_LE(child("logPanel")->height(), window().height() / 2) << "the picture keeps its place";
    child("logReadButton")->setFocus();
    press(Qt::Key_Space);
    EXPECT_FALSE(entry->isVisible());
    EXPECT_TRUE(done->isVisible());
    EXPECT_EQ(child<QLabel>("logSummaryLabel")->text(), "The boat's log: 2 open entries.");
}

TEST_F(CheckReadingStory, whatIsAllowedStandsBesideAMeasureWhileItIsTyped) {
    openWindow();
    openBoat("Bittern");
    openMeasure();
    ASSERT_NE(words(), nullptr);
    ASSERT_TRUE(support::waitFor([&] { return words()->isVisible(); }));
    EXPECT_TRUE(words()->text().contains("kPa")) << words()->text().toStdString();
    EXPECT_FALSE(words()->text().contains("out of range"));
    const QString allowed = words()->text();
    EXPECT_EQ(QApplication::focusWidget()->accessibleDescription(), allowed);
    type("99");
    EXPECT_TRUE(words()->text().contains("99 is out of range")) << words()->text().toStdString();
    EXPECT_TRUE(QApplication::focusWidget()->accessibleDescription().contains("out of range"));
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    EXPECT_EQ(words()->text(), allowed);
    press(Qt::Key_Escape);
    EXPECT_TRUE(support::waitFor([&] { return !words() || !words()->isVisible(); }));
    EXPECT_TRUE(child("checkList")->isVisible());
}

TEST_F(CheckReadingStory, whatIsBelowIsCounted) {
    openWindow();
    openBoat("Bittern");
    auto* below = child<QLabel>("checkListBelow");
    auto* list = child<app::RowList>("checkList");
    ASSERT_TRUE(support::waitFor([&] { return below->text().contains("of them points"); }))
        << below->text().toStdString();
    press(Qt::Key_End);
    EXPECT_TRUE(support::waitFor([&] { return below->text().isEmpty(); })) << below->text().toStdString();
    EXPECT_TRUE(list->hasFocus());
}

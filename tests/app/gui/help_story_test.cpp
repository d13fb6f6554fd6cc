#include "app/gui/gear/office/gear_office.h"
#include "app/gui/help/help_page.h"
#include "app/gui/help/help_places.h"
#include "tests/app/gui/window_story.h"

#include <QAction>
#include <QTextBrowser>

namespace {

class Help : public support::WindowStory {
protected:
    app::HelpPage& help() { return window().helpPage(); }

    /// F1, wherever the keyboard is, and until the text is scrolled.
    void askForHelp() {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : &window(), Qt::Key_F1);
        ASSERT_TRUE(help().isVisible());
        QCoreApplication::processEvents();
    }
};

TEST_F(Help, ofACheckComesByF1AndGoesByEscapeAndTheCheckGoesOn) {
    openWindow();
    openBoat("Grebe");
    auto* before = QApplication::focusWidget();
    const auto* session = window().checkPage().session();
    askForHelp();
    EXPECT_EQ(help().document(), "crew.md");
    EXPECT_EQ(help().heading(), "1. Before: the launch check");
    scanByHand("KD0XPAMAJG");
    EXPECT_NE(child<QLabel>("helpSaidLabel")->text(), QString()) << "nothing is recorded that nobody sees";
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(window().checkPage().isVisible());
    EXPECT_EQ(window().checkPage().session(), session) << "the check went on";
    EXPECT_EQ(QApplication::focusWidget(), before);
}

TEST_F(Help, ofTheBoardAndBackByF1) {
    openWindow();
    askForHelp();
    EXPECT_EQ(help().document(), "crew.md");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_F1);
    EXPECT_TRUE(window().isBoardShown());
}

TEST_F(Help, everyGearPageHasItsOwnHeadingInBothLanguages) {
    openWindow();
    int found = 0;
    for (const QAction* action : window().gearOffice().pageActions()) {
        const QString page = action->objectName().section(' ', 1);
        for (const char* language : {"en", "de"}) {
            const app::HelpPlace place = app::helpOf(page, language);
            EXPECT_FALSE(place.heading.isEmpty()) << page.toStdString();
            EXPECT_TRUE(app::helpDocument(place.document).contains("\n## " + place.heading + '\n'))
                << page.toStdString() << ' ' << language;
            ++found;
        }
    }
    EXPECT_GE(found, 30);
    EXPECT_TRUE(app::helpOf("no such page", "en").heading.isEmpty());
}

TEST_F(Help, linksLeadToWhatIsShippedAndNowhereElse) {
    openWindow();
    window().gearOffice().showPage("setup");
    emit window().gearOffice().pageWanted("setup");
    askForHelp();
    auto* text = help().findChild<QTextBrowser*>("helpText");
    emit text->anchorClicked(QUrl("register-csv.md#a-clubs-own-spreadsheet"));
    EXPECT_EQ(help().heading(), "A club's own spreadsheet");
    emit text->anchorClicked(QUrl("https://example.org/elsewhere.md"));
    EXPECT_EQ(help().document(), "register-csv.md");
    EXPECT_NE(child<QLabel>("helpSaidLabel")->text(), QString());
    EXPECT_FALSE(text->toPlainText().contains(QChar(0xFFFC))) << "no place of a picture that is not there";
}

} // namespace

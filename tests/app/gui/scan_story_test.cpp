#include "app/gui/gear/office/gear_office.h"
#include "app/gui/widgets/row_list.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/register/item.h"
#include "tests/app/gui/every_field.h"
#include "tests/app/gui/window_story.h"

#include <QAction>
#include <QComboBox>
#include <QJsonDocument>
#include <QPushButton>

namespace {

constexpr const char* scannedTube = "KMC20GKEK9";

/// A hand-held scanner, whatever has the keyboard.
class ScanStory : public support::WindowStory {
protected:
    void SetUp() override {
        support::WindowStory::SetUp();
        for (const core::Item& item : stored().kit().all())
            m_codes << QString::fromStdString(item.tag);
        ASSERT_GT(m_codes.size(), 20);
    }

    void listen() {
        QObject::connect(&window().handScanner(), &app::HandScanner::scanned, &window(),
                         [this](const QString& text) { m_scanned << text; });
    }

    /// How the newest sighting of that item came about.
    std::string seenBy(const std::string& code) {
        const auto history = stored().answers().history(code);
        std::string how;
        for (const core::HistoryLine& line : *history)
            if (line.kind == "tag-seen")
                how = QJsonDocument::fromJson(QByteArray::fromStdString(line.body))["seen_by"]
                          .toString()
                          .toStdString();
        return how;
    }

    /// Each time another, so that what is said of one is not left from the one before.
    QString nextCode() { return m_codes[m_next++ % m_codes.size()]; }

    /// Whether the page names the code, or says what is wanted before it can take one.
    static bool isTold(const QWidget& page, const QString& code) {
        for (const auto* label : page.findChildren<QLabel*>()) {
            if (!label->isVisible()) continue;
            for (const QString& words : {code, app::codeInWords(code.toStdString()),
                                         QString("Choose the place first"), QString("No stocktake is open")})
                if (label->text().contains(words)) return true;
        }
        return false;
    }

    void quietLabels(const QWidget& page) {
        for (auto* label : page.findChildren<QLabel*>())
            if (label->objectName().endsWith("aidLabel")) label->setText({});
    }

    /// One field: what it holds stays, and the scan is taken or told.
    void expectKeptBy(QWidget& field, const QWidget& page) {
        support::fill(field);
        support::reveal(field, page);
        field.setFocus(Qt::OtherFocusReason);
        ASSERT_EQ(QApplication::focusWidget(), &field) << field.objectName().toStdString();
        quietLabels(page);
        const QString before = support::heldBy(field);
        const QString code = nextCode();
        typeAsScanner(code, m_next % 2 ? Qt::Key_Return : Qt::Key_Tab);
        EXPECT_EQ(support::heldBy(field), before) << field.objectName().toStdString();
        EXPECT_EQ(QApplication::focusWidget(), &field) << field.objectName().toStdString();
        EXPECT_EQ(m_scanned.value(m_scanned.size() - 1), code) << field.objectName().toStdString();
        EXPECT_TRUE(support::waitFor([&] { return isTold(page, code); })) << field.objectName().toStdString();
        settle();
    }

    /// All fields of the page but those that ask for a code; how many.
    int expectEveryFieldKeeps(const QWidget& page) {
        int count = 0;
        for (QWidget* field : support::everyFieldOf(page)) {
            if (app::asksForCode(field)) continue;
            expectKeptBy(*field, page);
            ++count;
        }
        return count;
    }

    QStringList m_codes;
    QStringList m_scanned;
    int m_next = 0;
};

} // namespace

TEST_F(ScanStory, walkFindsEveryKindOfFieldAlsoInHiddenPanels) {
    QWidget page;
    auto* hidden = new QStackedWidget(&page);
    hidden->addWidget(new QWidget);
    hidden->addWidget(new QLineEdit);
    new QComboBox(&page);
    (new QComboBox(&page))->setEditable(true);
    EXPECT_EQ(support::everyFieldOf(page).size(), 3);
    page.show();
    support::reveal(*hidden->widget(1), page);
    EXPECT_TRUE(hidden->widget(1)->isVisible());
}

TEST_F(ScanStory, everyFieldOfTheWelcomePageKeepsWhatItHolds) {
    openWindow();
    listen();
    press(Qt::Key_N, Qt::ControlModifier);
    auto* page = window().findChild<QWidget*>("welcomePage");
    ASSERT_TRUE(page->isVisible());
    EXPECT_GE(expectEveryFieldKeeps(*page), 1);
}

TEST_F(ScanStory, everyFieldOfACheckKeepsWhatItHoldsAndTheScanIsASighting) {
    openWindow();
    listen();
    openBoat("Bittern");
    EXPECT_GE(expectEveryFieldKeeps(window().checkPage()), 10);
    for (const QString& code : m_scanned)
        EXPECT_TRUE(markOf(code)) << code.toStdString();
    EXPECT_EQ(storedCondition("Bittern").kind, core::BoatCondition::Kind::NotReady) << "nothing is signed";
    const auto entries = stored().log().entries();
    ASSERT_TRUE(entries);
    EXPECT_TRUE(std::none_of(entries->begin(), entries->end(), [](const core::LogEntry& entry) {
        return entry.day == today();
    })) << "nothing is withdrawn";
}

TEST_F(ScanStory, numberOfAPointKeepsWhatItHolds) {
    openWindow();
    listen();
    openBoat("Grebe");
    press(Qt::Key_P, Qt::ControlModifier);
    for (int down = 0; down < 3; ++down)
        press(Qt::Key_Down);
    press(Qt::Key_Return);
    type("2.5");
    auto* number = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(number);
    scanByHand(scannedTube);
    EXPECT_EQ(number->text(), "2.5");
    EXPECT_EQ(markOf(scannedTube), app::Mark::Found);
    press(Qt::Key_Return); // and it can be ended
    EXPECT_TRUE(support::waitFor(
        [&] { return window().checkPage().session()->state()->answer.points.back().value == 2.5; }));
}

TEST_F(ScanStory, everyFieldOfTheGearOfficersPagesKeepsWhatItHolds) {
    openWindow();
    listen();
    int count = 0;
    for (QAction* action : window().gearOffice().pageActions()) {
        action->trigger();
        const QString id = window().gearOffice().currentPage();
        SCOPED_TRACE(id.toStdString());
        QWidget* page = window().gearOffice().page(id);
        ASSERT_TRUE(page && page->isVisible());
        ASSERT_FALSE(support::waitFor([] { return false; }, std::chrono::milliseconds(100))); // it is read
        // A point has a unit where it is measured.
        if (auto* kind = page->findChild<QComboBox*>("manifestPointKindBox")) kind->setCurrentIndex(1);
        count += expectEveryFieldKeeps(*page);
    }
    EXPECT_GE(count, 40);
    auto* officer = window().gearOffice().findChild<QComboBox*>("officerBox");
    expectKeptBy(*officer, *window().gearOffice().page(window().gearOffice().currentPage()));
}

TEST_F(ScanStory, whatIsTypedByAPersonIsText) {
    openWindow();
    openBoat("Bittern");
    for (const char* name : {"urgentReasonEdit", "damageEdit", "tripIncidentsEdit"}) {
        auto* field = window().checkPage().findChild<QLineEdit*>(name);
        support::reveal(*field, window().checkPage());
        field->setFocus();
        type(QString("like ") + scannedTube);
        EXPECT_EQ(field->text(), QString("like ") + scannedTube) << name;
    }
    EXPECT_EQ(markOf(scannedTube), std::nullopt);
}

TEST_F(ScanStory, pageThatAsksForNoTagSaysSo) {
    openWindow();
    window().gearOffice().findChild<QAction*>("gearPage due")->trigger();
    auto* box = child<QComboBox>("dueKitTypeBox");
    box->setFocus();
    typeAsScanner(scannedTube);
    const auto* said = child<QLabel>("pageSaidLabel");
    ASSERT_TRUE(said);
    EXPECT_TRUE(support::waitFor([&] { return said->isVisible(); }));
    EXPECT_EQ(said->text(), app::codeInWords(scannedTube) + " was scanned; nothing here asks for a tag.");
}

TEST_F(ScanStory, listOfPagesStaysWhereItIs) {
    openWindow();
    window().gearOffice().findChild<QAction*>("gearPage due")->trigger();
    window().gearOffice().findChild<QWidget*>("gearPageNames")->setFocus();
    typeAsScanner(scannedTube); // a K would find the page Kit
    EXPECT_EQ(window().gearOffice().currentPage(), "due");
}

TEST_F(ScanStory, scanWhileTheUrgentReasonIsAskedForIsASightingAndSignsNothing) {
    openWindow();
    openBoat("Bittern");
    typeCode("P5269VZ10C");
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "urgentReasonEdit");
    scanByHand("KPZ36AE62R");
    EXPECT_EQ(markOf("KPZ36AE62R"), app::Mark::Found);
    EXPECT_EQ(child<QLineEdit>("urgentReasonEdit")->text(), "");
    EXPECT_FALSE(child("signNowButton")->isEnabled());
    type("Two swimmers drift off");
    scanByHand(scannedTube, Qt::Key_Tab);
    EXPECT_EQ(child<QLineEdit>("urgentReasonEdit")->text(), "Two swimmers drift off");
    EXPECT_EQ(QApplication::focusWidget()->objectName(), "urgentReasonEdit");
    EXPECT_TRUE(child("signPanel")->isVisible());
    closeWindow();
    EXPECT_EQ(storedCondition("Bittern").kind, core::BoatCondition::Kind::NotReady);
}

TEST_F(ScanStory, scanWhileDamageIsAskedForIsASightingAndWithdrawsNothing) {
    openWindow();
    openBoat("Grebe");
    typeCode(scannedTube);
    press(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "damageEdit");
    scanByHand("KD0XPAMAJG");
    EXPECT_EQ(markOf("KD0XPAMAJG"), app::Mark::Found);
    EXPECT_EQ(child<QLineEdit>("damageEdit")->text(), "");
    closeWindow();
    EXPECT_EQ(stored().kit().item(scannedTube)->state, core::ItemState::Serviceable);
}

TEST_F(ScanStory, finishTagScannedIntoTheReasonAsksForItAndSignsWhenItIsThere) {
    openWindow();
    openBoat("Bittern");
    typeCode("P5269VZ10C");
    scanByHand("C00000001Y");
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "urgentReasonEdit");
    scanByHand("C00000001Y");
    EXPECT_TRUE(child("signPanel")->isVisible()) << "no reason, no signature";
    type("Two swimmers drift off");
    scanByHand("C00000001Y"); // Tobin Ashe has no jacket: once more
    waitOutADoubleClick();
    scanByHand("C00000001Y");
    EXPECT_TRUE(support::waitFor([&] { return child("signedPanel")->isVisible(); }));
    closeWindow();
    EXPECT_EQ(storedCondition("Bittern").urgent, "Two swimmers drift off");
}

TEST_F(ScanStory, boatsTagScannedOnTheBoardOpensIt) {
    openWindow();
    typeAsScanner("BB60Q6WX54", Qt::Key_Tab);
    ASSERT_TRUE(support::waitFor([&] { return window().checkPage().boat() == "Grebe"; }));
}

TEST_F(ScanStory, newLogEntryIsAboutWhatIsScannedAndKeepsItsWords) {
    openWindow();
    window().gearOffice().findChild<QAction*>("gearPage log")->trigger();
    child<QLineEdit>("logTextEdit")->setFocus();
    type("Strap frayed");
    typeAsScanner(scannedTube);
    EXPECT_EQ(child<QLineEdit>("logTextEdit")->text(), "Strap frayed");
    EXPECT_EQ(child<QLineEdit>("logCodeEdit")->text(), scannedTube);
}

TEST_F(ScanStory, itemScannedOnThePageKitIsShown) {
    openWindow();
    window().gearOffice().findChild<QAction*>("gearPage kit")->trigger();
    for (const char* name : {"kitSearchEdit", "kitTable"}) {
        ASSERT_TRUE(support::waitFor([&] {
            child(name)->setFocus();
            return QApplication::focusWidget() == child(name);
        }));
        const QString code = nextCode();
        typeAsScanner(code);
        EXPECT_TRUE(support::waitFor([&] { return isTold(*child("kitItemPanel"), code); })) << name;
    }
}

TEST_F(ScanStory, recordTellsWhatWasTypedFromWhatAScannerRead) {
    openWindow();
    openBoat("Grebe");
    scanByHand("KMC20GKEK9");
    typeCode("KD0XPAMAJG");
    EXPECT_EQ(seenBy("KMC20GKEK9"), "scanner");
    EXPECT_EQ(seenBy("KD0XPAMAJG"), "typed");
}

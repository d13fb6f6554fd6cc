#include "app/gui/gear/exchange/exchange_page.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/help/help_page.h"
#include "app/gui/theme/language.h"
#include "app/gui/theme/type_scale.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/size_walk.h"
#include "tests/app/gui/window_story.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>

namespace {

/// The board, a check from its first tag to its signature, and what else has the whole window, in every size.
class WindowSizes : public support::WindowStory {
protected:
    void SetUp() override {
        WindowStory::SetUp();
        auto club = stored(core::Club::Access::ReadWrite);
        const auto open = club.checks().open("Dabchick", core::Phase::Launch, moment());
        ASSERT_TRUE(open && club.checks().giveNames(open->check, {"Marta Quill", "Hal Okoro"}, moment()));
        const auto kit = club.kit().labelsOfBoat("Dabchick");
        for (const core::TagLabel& tag : *kit)
            ASSERT_TRUE(club.checks().scan(open->check, core::ScannedText::typed(tag.code),
                                           core::SeenBy::Typed, moment()));
        ASSERT_TRUE(club.checks().sign(open->check, "Marta Quill", "Two swimmers drift off", moment()));
    }
    void TearDown() override {
        WindowStory::TearDown();
        app::speak("en");
    }

    void walk(const char* language) {
        app::speak(language);
        {
            app::MainWindow fresh;
            fresh.show();
            support::SizeWalk first(fresh);
            first.look("welcome");
            fresh.findChild<QRadioButton*>("clubBegins folder")->setChecked(true);
            first.look("welcome, a folder");
            EXPECT_EQ(first.faults(), "");
        }
        openWindow();
        support::SizeWalk all(window());
        m_walk = &all;
        walkBoard();
        walkLaunch();
        walkReturn();
        EXPECT_EQ(all.faults(), "");
        EXPECT_GE(all.looks(), 60);
    }

    void start(const char* boat, core::Phase phase) {
        window().startCheck(boat, phase);
        ASSERT_TRUE(support::waitFor(
            [&] { return window().checkPage().session() && window().checkPage().session()->state(); }));
        settle();
    }
    /// In view with what a finger presses, perhaps after scrolling.
    static bool isReached(QWidget& widget) {
        for (QWidget* over = widget.parentWidget(); over; over = over->parentWidget())
            if (auto* area = qobject_cast<QScrollArea*>(over)) area->ensureWidgetVisible(&widget);
        support::SizeWalk::settleLayouts();
        const QRect seen = widget.visibleRegion().boundingRect();
        return seen.width() == widget.width() &&
               seen.height() >= std::min(widget.height(), app::fingerHeight());
    }

private:
    void look(const std::string& page) {
        settle();
        m_walk->look(page);
    }
    app::CheckSession& session() { return *window().checkPage().session(); }
    void walkBoard() {
        look("board");
        window().gearOffice().showPage("exchange");
        emit window().gearOffice().pageWanted("exchange");
        qobject_cast<app::ExchangePage*>(window().gearOffice().page("exchange"))->showDistrict();
        look("exchange with the district");
        QTest::keyClick(&window(), Qt::Key_F1);
        ASSERT_TRUE(window().helpPage().isVisible());
        look("help");
    }
    void walkLaunch() {
        start("Bittern", core::Phase::Launch);
        look("launch, begun");
        session().giveNames({"Tobin Ashe", "Ines Varro", "Petra Lund", "Sami Reeve"});
        for (const char* code : {"KPZ36AE62R", "KVSRR02XPJ", "KMRMQRZM66"})
            session().scan(code, core::SeenBy::Typed);
        session().recordPoint("port chamber", 15.5);
        look("launch");
        window().checkPage().damagedCurrent();
        look("launch, an item");
        window().checkPage().letGo();
        look("launch, let go");
        window().checkPage().beginSigning();
        look("launch, signing");
        session().sign("Tobin Ashe", "Two swimmers drift off");
        settle();
        ASSERT_TRUE(child("signedPanel")->isVisible());
        look("launch, signed");
    }
    void walkReturn() {
        start("Dabchick", core::Phase::Return);
        session().scan("KNGZSTQ3HN", core::SeenBy::Typed);
        look("return");
        window().checkPage().goToTrip();
        look("return, the trip");
    }

    support::SizeWalk* m_walk = nullptr;
};

TEST_F(WindowSizes, noPageIsBadlyLaidOutInEnglish) {
    walk("en");
}

TEST_F(WindowSizes, noPageIsBadlyLaidOutInGerman) {
    walk("de");
}

TEST_F(WindowSizes, boatsAndTheSignatureAreReachedInEverySize) {
    openWindow();
    support::SizeWalk all(window());
    const auto boats = window().findChildren<app::BoatStrip*>();
    ASSERT_FALSE(boats.isEmpty());
    for (const QSize& size : support::SizeWalk::sizes()) {
        all.resize(size);
        for (app::BoatStrip* boat : boats)
            EXPECT_TRUE(isReached(*boat)) << boat->text().toStdString() << " at " << size.width();
    }
    start("Bittern", core::Phase::Launch);
    for (const QSize& size : support::SizeWalk::sizes()) {
        all.resize(size);
        for (const char* name : {"signButton", "saveForLaterButton", "letGoButton"})
            EXPECT_TRUE(isReached(*child(name))) << name << " at " << size.width();
    }
}

/// A page that is laid out as it should be, to be spoilt in one place.
class LayoutFaults : public testing::Test {
protected:
    void SetUp() override {
        m_page.resize(400, 300);
        m_label = put<QLabel>("rescue tube", {10, 10, 200, 40});
        m_button = put<QPushButton>("Sign", {10, 60, 200, 60});
        m_words = put<QLabel>("bow chamber holds its air for a day", {10, 130, 200, 150});
        m_words->setWordWrap(true);
        m_page.show();
    }
    template <class Widget>
    Widget* put(const char* words, QRect place) {
        auto* widget = new Widget(words, &m_page);
        widget->setObjectName(QString(words).section(' ', 0, 0));
        widget->setGeometry(place);
        return widget;
    }
    void expectFault(const QString& fault) {
        const QStringList found = support::layoutFaultsIn(m_page);
        EXPECT_TRUE(std::any_of(found.begin(), found.end(),
                                [&](const QString& each) { return each.contains(fault); }))
            << fault.toStdString() << " is not in: " << found.join("; ").toStdString();
    }

    QWidget m_page;
    QLabel* m_label = nullptr;
    QPushButton* m_button = nullptr;
    QLabel* m_words = nullptr;
};

TEST_F(LayoutFaults, areNoneOnAPageThatIsLaidOutWell) {
    EXPECT_EQ(support::layoutFaultsIn(m_page), QStringList());
}

TEST_F(LayoutFaults, areFoundInWhatIsCut) {
    m_label->resize(60, 40);
    expectFault("QLabel rescue is cut: rescue tube");
    m_button->resize(40, 60);
    expectFault("QPushButton Sign is cut: Sign");
    m_words->resize(200, 40);
    expectFault("QLabel bow is cut");
    m_button->resize(0, 0);
    expectFault("QPushButton Sign has no room");
}

TEST_F(LayoutFaults, areFoundInWhatIsShortened) {
    m_label->setText("rescue…");
    EXPECT_EQ(support::layoutFaultsIn(m_page), QStringList()) << "the dots are the text's own";
    m_label->setText("rescue tube");
    auto* field = new QLineEdit(&m_page);
    field->setObjectName("codeEdit");
    field->setPlaceholderText("type the code of what turned up");
    field->setGeometry(220, 10, 150, 60);
    field->show();
    expectFault("QLineEdit codeEdit is shortened");
    field->setToolTip("type the code of what turned up");
    EXPECT_EQ(support::layoutFaultsIn(m_page), QStringList()) << "the rest is said";
}

TEST_F(LayoutFaults, areFoundInWhatReachesOutOrStandsOverAnother) {
    m_button->move(300, 60);
    expectFault("QPushButton Sign reaches out of");
    m_words->setGeometry(m_label->geometry().translated(4, 4));
    m_words->setText("tow line");
    expectFault("stands over another text");
}

TEST_F(LayoutFaults, areFoundInAPageThatIsScrolledSideways) {
    QScrollArea area;
    auto* wide = new QWidget;
    wide->setFixedSize(900, 50);
    area.setWidget(wide);
    area.resize(400, 300);
    area.show();
    EXPECT_EQ(support::layoutFaultsIn(area), QStringList()) << "the area itself is not a page in it";
    QWidget page;
    auto* row = new QHBoxLayout(&page);
    row->addWidget(&area);
    page.resize(400, 300);
    page.show();
    EXPECT_EQ(support::layoutFaultsIn(page).size(), 1);
    area.setParent(nullptr);
}

} // namespace

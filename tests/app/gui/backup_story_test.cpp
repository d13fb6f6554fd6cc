#include "app/gui/club/club_copies.h"
#include "app/gui/club/copy_names.h"
#include "app/gui/club/copy_settings.h"
#include "app/gui/printout/paper_button.h"
#include "core/club/club_copy.h"
#include "core/club/club_pins.h"
#include "core/club/club_record.h"
#include "core/record/pin.h"
#include "tests/app/gui/printed_text.h"
#include "tests/app/gui/window_story.h"

#include <QAction>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSettings>

#include <fstream>

namespace {

namespace fs = std::filesystem;

class BackupStory : public support::WindowStory {
protected:
    void SetUp() override {
        WindowStory::SetUp();
        fs::create_directory(copies());
    }
    void TearDown() override {
        WindowStory::TearDown();
        QSettings().remove("copies");
    }

    fs::path copies() const { return folder() / "copies"; }

    void openWith(const fs::path& saveTo, const fs::path& restoreFrom = {}, const fs::path& restoreTo = {}) {
        app::Choosers choosers;
        choosers.saveFile = [this, saveTo](QWidget*, const QString& proposed) {
            m_proposed = proposed;
            return QString::fromStdString(saveTo.string());
        };
        choosers.openCopy = [restoreFrom](QWidget*) { return QString::fromStdString(restoreFrom.string()); };
        choosers.newClub = [restoreTo](QWidget*) { return QString::fromStdString(restoreTo.string()); };
        choosers.copyFolder = [this](QWidget*) { return QString::fromStdString(copies().string()); };
        openWindow(false, std::move(choosers));
    }

    QAction* actionOf(const QString& words) {
        for (QAction* action : window().findChildren<QAction*>())
            if (action->text().remove('&') == words) return action;
        ADD_FAILURE() << "no action " << words.toStdString();
        return nullptr;
    }
    void take(const char* words) { actionOf(QString::fromUtf8(words))->trigger(); }

    QString boardSaid() { return window().board().findChild<QLabel*>("boardSaidLabel")->text(); }
    QLabel* reminder() { return window().board().findChild<QLabel*>("backupReminder"); }

    void signGrebe() {
        openBoat("Grebe");
        window().checkPage().session()->sign("Petra Lund", "for the test");
        settle();
    }
    std::vector<fs::path> copiesThere() const {
        std::vector<fs::path> files;
        for (const auto& entry : fs::directory_iterator(copies()))
            if (entry.path().extension() == ".tholepin") files.push_back(entry.path());
        return files;
    }
    static std::string headOf(const fs::path& club) {
        auto opened = core::Club::open(club, core::Club::Access::ReadOnly);
        return opened ? opened->record().verify(false)->head : "not opened";
    }

    QString m_proposed;
};

} // namespace

TEST_F(BackupStory, backsUpWhereAskedAndSaysSoOnTheBoard) {
    const fs::path to = folder() / "kept.tholepin";
    openWith(to);
    take("Back up…");
    ASSERT_TRUE(support::waitFor([&] { return boardSaid().startsWith("Backed up"); }))
        << boardSaid().toStdString();
    EXPECT_EQ(m_proposed, "club 2026-03-14.tholepin");
    EXPECT_EQ(headOf(to), headOf(file()));
    EXPECT_TRUE(app::CopySettings(file()).newest().has_value());
}

TEST_F(BackupStory, theClubsNameIsMendedInTheSameMenu) {
    openWith({});
    take("Mend the club’s name…");
    const auto field = [&] { return window().findChild<QLineEdit*>("renameNameEdit"); };
    ASSERT_TRUE(support::waitFor([&] { return field() && field()->isVisible(); }));
    auto* name = field();
    EXPECT_EQ(QApplication::focusWidget(), name);
    name->setText("Quillmere Lake Lifeboat");
    window().findChild<QPushButton*>("renameButton")->click();
    EXPECT_TRUE(support::waitFor([&] {
        return window().windowTitle().startsWith("Quillmere Lake Lifeboat");
    })) << "without going to the boats first";
}

TEST_F(BackupStory, neverTakesTheOpenFilesOwnPlaceOrAnothers) {
    const fs::path there = folder() / "there.tholepin";
    std::ofstream(there) << "somebody's";
    openWith(there);
    take("Back up…");
    ASSERT_TRUE(support::waitFor([&] { return !boardSaid().isEmpty(); }));
    EXPECT_TRUE(boardSaid().contains("there.tholepin")) << boardSaid().toStdString();
    EXPECT_EQ(fs::file_size(there), 10u);
    EXPECT_FALSE(app::CopySettings(file()).newest().has_value()) << "none was made";
}

TEST_F(BackupStory, restoresToANewFileAndOpensIt) {
    const fs::path kept = folder() / "kept.tholepin", anew = folder() / "anew.tholepin";
    openWith(kept, kept, anew);
    take("Back up…");
    ASSERT_TRUE(support::waitFor([&] { return boardSaid().startsWith("Backed up"); }));
    const int shown = boardsShown();
    take("Restore a backup…");
    waitForBoard(shown);
    EXPECT_EQ(QSettings().value("club/file").toString().toStdString(), anew.string());
    EXPECT_EQ(headOf(anew), headOf(file()));
}

TEST_F(BackupStory, aBackupOfAClubWithAPinIsRestoredByAnOfficersPin) {
    const fs::path kept = folder() / "kept.tholepin", anew = folder() / "anew.tholepin";
    {
        auto club = core::Club::open(file());
        ASSERT_TRUE(club);
        ASSERT_TRUE(club->pins().set("Joss Iveny", *core::Pin::from("4711"), {}));
    }
    ASSERT_TRUE(core::copyClub(file(), kept, false));
    openWith({}, kept, anew);
    take("Restore a backup…");
    auto* pin = window().findChild<QLineEdit*>("unlockPinEdit");
    const auto give = [&](const char* text) {
        pin->setText(text);
        window().findChild<QPushButton*>("unlockButton")->click();
    };
    ASSERT_TRUE(support::waitFor([&] { return pin->isVisible() && pin->hasFocus(); }));
    EXPECT_FALSE(fs::exists(anew));
    give("0815");
    auto* said = window().findChild<QLabel*>("unlockSaidLabel");
    ASSERT_TRUE(support::waitFor([&] { return pin->isVisible() && said->text().contains("Joss Iveny"); }))
        << said->text().toStdString();
    EXPECT_FALSE(fs::exists(anew));
    const int shown = boardsShown();
    give("4711");
    waitForBoard(shown);
    EXPECT_EQ(QSettings().value("club/file").toString().toStdString(), anew.string());
    EXPECT_EQ(headOf(anew), headOf(file()));
}

TEST_F(BackupStory, whatIsNoBackupIsNotRestored) {
    const fs::path none = folder() / "none.tholepin", anew = folder() / "anew.tholepin";
    std::ofstream(none) << "a shopping list";
    openWith({}, none, anew);
    take("Restore a backup…");
    ASSERT_TRUE(support::waitFor([&] { return !boardSaid().isEmpty(); }));
    EXPECT_FALSE(fs::exists(anew));
    EXPECT_EQ(QSettings().value("club/file").toString().toStdString(), file().string())
        << "the open one stays";
}

TEST_F(BackupStory, aCopyGoesToTheFolderAfterEachSignedCheck) {
    openWith({});
    take("A copy after each signed check…");
    EXPECT_TRUE(boardSaid().contains("the last 30 are kept")) << boardSaid().toStdString();
    EXPECT_TRUE(actionOf("No more copies after checks")->isVisible());
    signGrebe();
    ASSERT_TRUE(support::waitFor([&] { return app::CopySettings(file()).newest().has_value(); }));
    const auto files = copiesThere();
    ASSERT_EQ(files.size(), 1u);
    EXPECT_EQ(headOf(files.front()), headOf(file())) << "with the signature";
    EXPECT_TRUE(files.front().filename().string().ends_with(" 2026-03-14T064000.000Z.tholepin"));
}

TEST_F(BackupStory, aWindowThatIsClosedAtOnceStillMakesTheCopy) {
    openWith({});
    take("A copy after each signed check…");
    signGrebe();
    closeWindow();
    ASSERT_EQ(copiesThere().size(), 1u);
    EXPECT_EQ(headOf(copiesThere().front()), headOf(file()));
}

TEST_F(BackupStory, noCopyIsMadeWhereNoneIsWanted) {
    openWith({});
    take("A copy after each signed check…");
    take("No more copies after checks");
    EXPECT_FALSE(actionOf("No more copies after checks")->isVisible());
    signGrebe();
    closeWindow(); // waits for a copy that was begun
    EXPECT_TRUE(copiesThere().empty());
}

TEST_F(BackupStory, aCopyThatFailsHoldsUpNoSignatureAndIsSaidOnTheBoard) {
    openWith({});
    take("A copy after each signed check…");
    fs::remove_all(copies());
    signGrebe();
    EXPECT_TRUE(child("signedPanel")->isVisible());
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::Out);
    ASSERT_TRUE(support::waitFor(
        [&] { return reminder()->text().startsWith("The copy after the last check failed."); }));
    const int shown = boardsShown();
    take("The boats");
    waitForBoard(shown);
    EXPECT_TRUE(reminder()->isVisible());
    EXPECT_TRUE(child("boardBackUpButton")->isVisible()) << "what to do about it stands beside it";
}

TEST_F(BackupStory, theBoardRemindsOfAnOldBackupAndTheReminderGoes) {
    app::CopySettings(file()).setNewest(*core::Instant::parse("2026-01-31T06:40:00Z"));
    openWith(folder() / "kept.tholepin");
    EXPECT_EQ(reminder()->text(), "The newest backup was made 42 days ago.");
    child("boardBackUpButton")->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(support::waitFor([&] { return reminder()->text().isEmpty(); }));
    EXPECT_FALSE(reminder()->isVisible());
}

TEST_F(BackupStory, boatsArePrintedFromTheBoardAndACheckListFromTheMenu) {
    const fs::path to = folder() / "paper.pdf";
    openWith(to);
    auto* strip = window().findChild<app::BoatStrip*>("boatStrip Bittern");
    ASSERT_NE(strip, nullptr);
    ASSERT_TRUE(support::waitFor([&] {
        strip->setFocus();
        return QApplication::focusWidget() == strip;
    }));
    take("Check list on paper…");
    ASSERT_TRUE(support::waitFor([&] { return boardSaid().startsWith("Saved: "); }));
    EXPECT_EQ(m_proposed, "Check list Bittern.pdf");
    const QString path = QString::fromStdString(to.string());
    EXPECT_TRUE(support::outputOf("pdftotext", {path, "-"}).contains("port chamber, 17 to 21 kPa"));
    auto* button = window().board().findChild<app::PaperButton*>("paperButton");
    ASSERT_NE(button, nullptr);
    button->choices().actions().at(1)->trigger();
    ASSERT_TRUE(support::waitFor([&] { return m_proposed == "Boats 2026-03-14.pdf"; }));
    EXPECT_TRUE(support::waitFor([&] {
        return support::outputOf("pdftotext", {path, "-"}).contains("3 boats, 3 not ready.");
    }));
}

TEST(CopyReminder, speaksAfterThirtyDaysAndNotBefore) {
    const auto noon = [](const char* day) { return core::Instant::parse(std::string(day) + "T12:00:00Z"); };
    const core::CalendarDay today = *core::CalendarDay::from(2026, 3, 31);
    EXPECT_EQ(app::copyReminder(noon("2026-03-01"), noon("2025-01-01"), today), "") << "30 days";
    EXPECT_EQ(app::copyReminder(noon("2026-02-28"), noon("2025-01-01"), today),
              "The newest backup was made 31 days ago.");
    EXPECT_EQ(app::copyReminder({}, noon("2026-03-01"), today), "") << "a club of 30 days";
    EXPECT_NE(app::copyReminder({}, noon("2026-02-28"), today), "");
    EXPECT_EQ(app::copyReminder({}, {}, today), "");
}

TEST(CopyNames, theLastThirtyOfThisClubAreKeptAndNothingElseIsTouched) {
    const std::string origin(64, 'a'), other(64, 'b');
    const core::Instant first = *core::Instant::parse("2026-03-01T06:40:00.123Z");
    std::vector<std::string> names{"club.tholepin", "notes.txt", "club aaaaaaaa 2025-01-01.tholepin",
                                   "club aaaaaaaa 2025-01-01T000000.000Z.tholepin-wal",
                                   "aaaaaaaa 2025-01-01T000000.000Z.tholepin.bak"};
    const std::size_t strangers = names.size();
    for (int day = 0; day < 32; ++day) {
        const core::Instant at = core::Instant::fromMillis(first.millis() + day * 86'400'000LL);
        names.push_back(app::copyName("/x/club.tholepin", origin, at));
        names.push_back(app::copyName("/x/club.tholepin", other, at));
    }
    EXPECT_EQ(names[strangers], "club aaaaaaaa 2026-03-01T064000.123Z.tholepin");
    EXPECT_EQ(app::copiesToRemove(names, origin),
              (std::vector<std::string>{names[strangers], names[strangers + 2]}))
        << "the two oldest of its own";
    names.resize(strangers + 60);
    EXPECT_TRUE(app::copiesToRemove(names, origin).empty()) << "thirty are kept";
}

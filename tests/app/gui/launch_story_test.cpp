#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "tests/app/gui/window_story.h"

#include "app/gui/check/check_lists.h"
#include "app/gui/welcome_page.h"
#include "app/text/words.h"

#include <QAbstractItemView>
#include <QComboBox>

#include <algorithm>
#include <sqlite3.h>

using support::WindowStory;

namespace {

class LaunchStory : public WindowStory {
protected:
    /// Petra Lund drives, Sami Reeve is crew: both by their tags.
    void nameTwo() {
        typeCode("PWX3VJVX6Q");
        typeCode("PZ3VKS21SH");
    }

    /// All that Grebe must carry, as the demo's register has it.
    void scanGrebe() {
        for (const char* code :
             {"KFC3K7GM79", "K2P9VZ9SMA", "KBP1BMKPPK", "KR6MF3MV34", "KMC20GKEK9", "K6X020AN9R",
              "K7YMXZCT7E", "K7SN9P9BJG", "KD0XPAMAJG", "KCYV1T03ZE", "KP2QDTCYN4", "KT15P84JQ4"})
            typeCode(code);
    }

    /// Three looks and the buoyancy bag's pressure, from the first point down.
    void lookAtGrebesPoints() {
        press(Qt::Key_P, Qt::ControlModifier);
        for (int point = 0; point < 3; ++point) {
            press(Qt::Key_Space);
            settle();
            press(Qt::Key_Down);
        }
        press(Qt::Key_Return);
        ASSERT_EQ(QApplication::focusWidget()->objectName(), "rowNumberEdit");
        type("3");
        press(Qt::Key_Return);
        // The editor hands its value over when the key has been dealt with.
        ASSERT_TRUE(support::waitFor([&] {
            const auto& points = window().checkPage().session()->state()->answer.points;
            return points.back().value == 3;
        }));
    }
};

} // namespace

TEST_F(LaunchStory, wholeCheckByKeysIsSignedAndStored) {
    openWindow();
    openBoat("Grebe");
    nameTwo();
    scanGrebe();
    lookAtGrebesPoints();
    ASSERT_TRUE(outcome().startsWith("Kit complete")) << outcome().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "signNowButton");
    press(Qt::Key_Return);
    settle();
    EXPECT_TRUE(child("signedPanel")->isVisible());
    closeWindow();

    const core::BoatCondition grebe = storedCondition("Grebe");
    EXPECT_EQ(grebe.kind, core::BoatCondition::Kind::Out);
    EXPECT_EQ(grebe.by, "Petra Lund");
    EXPECT_TRUE(grebe.urgent.empty());
    EXPECT_TRUE(stored().checks().unfinished().empty());
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
}

TEST_F(LaunchStory, answerOnDiskIsTheOneShown) {
    openWindow();
    openBoat("Grebe");
    nameTwo();
    scanGrebe();
    lookAtGrebesPoints();
    const core::Club club = stored();
    ASSERT_EQ(club.checks().unfinished().size(), 1u);
    const auto answer = club.checks().answer(club.checks().unfinished().front().check, today());
    ASSERT_TRUE(answer);
    EXPECT_NE(answer->outcome, core::CheckOutcome::Incomplete);
    for (const core::LineAnswer& line : answer->lines)
        EXPECT_EQ(line.counted, line.wanted) << line.line.kitType;
    for (const core::PointAnswer& point : answer->points)
        EXPECT_EQ(point.state, core::PointState::Done) << point.point.name;
}

TEST_F(LaunchStory, shortKitNeedsAReasonAndIsStoredAsUrgent) {
    openWindow();
    openBoat("Bittern");
    typeCode("P5269VZ10C");
    typeCode("KPZ36AE62R");
    ASSERT_TRUE(outcome().startsWith("Kit incomplete")) << outcome().toStdString();
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(child("signNowButton")->isEnabled());
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "urgentReasonEdit");
    type("Two swimmers drift off");
    EXPECT_TRUE(child("signNowButton")->isEnabled());
    press(Qt::Key_Return);
    pressSignature();
    closeWindow();

    const core::BoatCondition bittern = storedCondition("Bittern");
    EXPECT_EQ(bittern.kind, core::BoatCondition::Kind::Out);
    EXPECT_EQ(bittern.urgent, "Two swimmers drift off");
    EXPECT_EQ(bittern.by, "Tobin Ashe");
}

TEST_F(LaunchStory, savedForLaterIsFoundAndGoneOnWith) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    typeCode("kd0x pama jg");
    press(Qt::Key_S, Qt::ControlModifier);
    ASSERT_TRUE(support::waitFor([&] { return window().isBoardShown(); }));
    closeWindow();

    openWindow();
    openBoat("Grebe");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
    EXPECT_EQ(markOf("KD0XPAMAJG"), app::Mark::Found);
    EXPECT_EQ(markOf("KCYV1T03ZE"), std::nullopt);
    EXPECT_TRUE(window().checkPage().session()->state()->open.resumed);
}

TEST_F(LaunchStory, wrongScanIsUndoneAndStaysInTheRecord) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    typeCode("KQ8SK0R3E2"); // Dabchick's rescue tube
    ASSERT_NE(markOf("KQ8SK0R3E2"), std::nullopt);
    press(Qt::Key_Z, Qt::ControlModifier);
    settle();
    EXPECT_EQ(markOf("KQ8SK0R3E2"), std::nullopt);
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
    closeWindow();

    const auto history = stored().answers().history("KQ8SK0R3E2");
    ASSERT_TRUE(history);
    const auto ofCheck = std::count_if(history->begin(), history->end(), [](const core::HistoryLine& line) {
        return line.kind.find("tag") != std::string::npos || line.kind == "act-taken-back";
    });
    EXPECT_GE(ofCheck, 2) << "the sighting and its undoing";
}

TEST_F(LaunchStory, damagedThingIsWithdrawnWithItsSentence) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    press(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "damageEdit");
    type("Sash torn at the clip");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    settle();
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Look);
    closeWindow();

    EXPECT_EQ(stored().kit().item("KMC20GKEK9")->state, core::ItemState::Unserviceable);
    const auto history = stored().log().entries();
    ASSERT_TRUE(history);
    EXPECT_TRUE(std::any_of(history->begin(), history->end(), [](const core::LogEntry& entry) {
        return entry.item.id == "KMC20GKEK9" && entry.text == "Sash torn at the clip" && !entry.closed;
    }));
}

TEST_F(LaunchStory, slipInACodeIsToldAndRecordsNothing) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK8");
    EXPECT_FALSE(said().isEmpty());
    EXPECT_EQ(markOf("KMC20GKEK9"), std::nullopt);
    typeCode("KMC20GKEK9");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
}

TEST_F(LaunchStory, scannerThatTypesIntoAMeasureIsStillAScanner) {
    openWindow();
    openBoat("Grebe");
    press(Qt::Key_P, Qt::ControlModifier);
    for (int down = 0; down < 3; ++down)
        press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "rowNumberEdit");
    typeCode("KMC20GKEK9");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
    for (const core::PointAnswer& point : window().checkPage().session()->state()->answer.points)
        EXPECT_EQ(point.value, std::nullopt) << point.point.name;
}

TEST_F(LaunchStory, controlTagsAct) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    typeCode("C00000004S"); // undo
    settle();
    EXPECT_EQ(markOf("KMC20GKEK9"), std::nullopt);
    typeCode("KMC20GKEK9");
    typeCode("C00000005Q"); // damaged
    settle();
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Look);
    typeCode("C00000001Y"); // finish: the signature, which wants a reason
    EXPECT_TRUE(child("signPanel")->isVisible());
    press(Qt::Key_Tab); // out of the reason, so that the tag is no text of it
    press(Qt::Key_Tab);
    typeCode("C00000010W"); // put aside
    ASSERT_TRUE(support::waitFor([&] { return window().isBoardShown(); }));
    closeWindow();
    EXPECT_EQ(stored().checks().unfinished().size(), 1u);
}

TEST_F(LaunchStory, clockOfATimedPointGoesOnWhileScanning) {
    openWindow();
    openBoat("Bittern");
    typeCode("C00000008K");
    typeCode("KPZ36AE62R");
    ASSERT_TRUE(support::waitFor([] { return false; }, std::chrono::milliseconds(1200)) == false);
    typeCode("C00000008K");
    settle();
    const auto& points = window().checkPage().session()->state()->answer.points;
    const auto run = std::find_if(points.begin(), points.end(), [](const core::PointAnswer& point) {
        return point.point.name == "engine run";
    });
    ASSERT_NE(run, points.end());
    ASSERT_TRUE(run->value);
    EXPECT_GE(*run->value, 1);
    EXPECT_EQ(markOf("KPZ36AE62R"), app::Mark::Found);
}

TEST_F(LaunchStory, boatsTagTypedOnTheBoardOpensIt) {
    openWindow();
    type("bb60 q6wx 54");
    press(Qt::Key_Return);
    ASSERT_TRUE(support::waitFor([&] { return window().checkPage().boat() == "Grebe"; }));
}

TEST_F(LaunchStory, boardSaysEachBoatsConditionInWords) {
    openWindow();
    const auto strips = window().findChildren<app::BoatStrip*>();
    ASSERT_EQ(strips.size(), 3);
    for (const app::BoatStrip* strip : strips)
        EXPECT_TRUE(strip->accessibleName().contains("not ready")) << strip->accessibleName().toStdString();
}

TEST_F(LaunchStory, returnOfWhatWentOutLeavesTheBoatKitReady) {
    openWindow();
    openBoat("Grebe");
    nameTwo();
    scanGrebe();
    lookAtGrebesPoints();
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return);
    settle();
    const int shownBefore = boardsShown();
    press(Qt::Key_Return); // back to the boats
    waitForBoard(shownBefore);
    openBoat("Grebe");
    ASSERT_EQ(window().checkPage().session()->state()->open.phase, core::Phase::Return);
    nameTwo();
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::StillToFind);
    scanGrebe();
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
    press(Qt::Key_P, Qt::ControlModifier);
    for (int point = 0; point < 3; ++point) {
        press(Qt::Key_Space);
        settle();
        press(Qt::Key_Down);
    }
    press(Qt::Key_Return, Qt::ControlModifier);
    press(Qt::Key_Return);
    settle();
    closeWindow();
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::KitReady);
}

TEST_F(LaunchStory, aThingWithANewTagIsNamedByTheTagThatIsOnIt) {
    const std::string tube = "KMC20GKEK9"; // Grebe's rescue tube
    std::string tag;
    {
        auto club = core::Club::open(file());
        ASSERT_TRUE(club);
        const auto replaced = club->kit().replaceTag(tube, "Petra Lund", moment());
        ASSERT_TRUE(replaced);
        tag = *replaced;
    }
    openWindow();
    openBoat("Grebe");
    typeCode(QString::fromStdString(tag));
    EXPECT_TRUE(said().contains(app::codeInWords(tag))) << said().toStdString();
    EXPECT_FALSE(said().contains(app::codeInWords(tube)));
    const auto& rows = window().checkPage().findChild<app::CheckLists*>()->rows();
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const app::CheckRow& each) {
        return each.code == QString::fromStdString(tube);
    });
    ASSERT_NE(row, rows.end());
    EXPECT_EQ(row->aside, app::codeInWords(tag));
    EXPECT_EQ(row->mark, app::Mark::Found);
    typeCode(app::codeInWords(tube)); // the old one, found in a pocket
    EXPECT_EQ(said(), QString::fromStdString(tube) + " is no tag for this check.");
}

TEST_F(LaunchStory, aFileThatCannotBeReadAnyMoreIsLeftAndSaysSo) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(file().c_str(), &database), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(database, "ALTER TABLE kit_type RENAME TO lost", nullptr, nullptr, nullptr),
              SQLITE_OK);
    typeCode("KFC3K7GM79");
    EXPECT_TRUE(said().contains("kit_type")) << said().toStdString();
    press(Qt::Key_S, Qt::ControlModifier); // to the board, which cannot be read either
    ASSERT_TRUE(support::waitFor([&] {
        const auto pages = window().findChildren<app::WelcomePage*>(); // made anew, and the old one goes
        return std::any_of(pages.begin(), pages.end(), [](const auto* page) {
            return page->isVisible() &&
                   !page->template findChild<QLabel*>("welcomeSaidLabel")->text().isEmpty();
        });
    }));
    // Put right, it is opened again, and both scans are there.
    ASSERT_EQ(sqlite3_exec(database,
                           "ALTER TABLE lost RENAME TO kit_type; PRAGMA writable_schema = ON;"
                           "UPDATE sqlite_schema SET sql = replace(sql, '\"kit_type\"', 'kit_type') "
                           "WHERE name = 'kit_type'; PRAGMA writable_schema = RESET",
                           nullptr, nullptr, nullptr),
              SQLITE_OK);
    ASSERT_EQ(sqlite3_close(database), SQLITE_OK);
    const int shown = boardsShown();
    window().openClub(file());
    waitForBoard(shown);
    openBoat("Grebe");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
}

TEST_F(LaunchStory, arrowsGoThroughTheNamesAndEnterAloneChooses) {
    openWindow();
    openBoat("Grebe");
    auto* driver = child<QComboBox>("driverBox");
    const auto names = [&] { return window().checkPage().session()->state()->names.size(); };
    const auto goThrough = [&](Qt::Key end) {
        window().activateWindow(); // without a display no window is active once a list has closed
        ASSERT_TRUE(support::waitFor([&] { return window().isActiveWindow(); }));
        driver->setFocus(Qt::TabFocusReason);
        press(Qt::Key_Down);
        ASSERT_TRUE(support::waitFor([&] { return driver->view()->isVisible(); }));
        for (int i = 0; i < 3; ++i)
            QTest::keyClick(driver->view(), Qt::Key_Down);
        settle();
        EXPECT_EQ(names(), 0u) << "nobody is named on the way";
        QTest::keyClick(driver->view(), end);
        ASSERT_TRUE(support::waitFor([&] { return !driver->view()->isVisible(); }));
        settle();
    };
    goThrough(Qt::Key_Escape);
    EXPECT_EQ(names(), 0u);
    EXPECT_EQ(driver->currentIndex(), 0);
    goThrough(Qt::Key_Return);
    EXPECT_EQ(names(), 1u);
}

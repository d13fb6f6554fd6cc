#include "core/club/club_answers.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "tests/app/gui/window_story.h"

#include "app/gui/check/trip_words.h"
#include "app/text/words.h"
#include "core/answers/event_tally.h"
#include "core/register/operation.h"

#include <QComboBox>
#include <QPushButton>

#include <algorithm>

using support::WindowStory;

namespace {

constexpr const char* grebesTube = "KMC20GKEK9";
constexpr const char* dabchicksTube = "KQ8SK0R3E2";

class ReturnStory : public WindowStory {
protected:
    std::vector<std::string> kitOf(const std::string& boat) {
        std::vector<std::string> codes;
        const auto tags = stored().kit().labelsOfBoat(boat);
        for (const core::TagLabel& tag : *tags)
            codes.push_back(tag.code);
        return codes;
    }

    void scan(const std::vector<std::string>& codes) {
        for (const std::string& code : codes)
            typeCode(QString::fromStdString(code));
    }

    /// From the lists to the signature and back to the boats; a launch with something short says why.
    void signAndGoBack() {
        press(Qt::Key_Return, Qt::ControlModifier);
        if (QApplication::focusWidget()->objectName() == "urgentReasonEdit") {
            type("Swimmer off the reeds");
            press(Qt::Key_Return);
        }
        pressSignature();
        ASSERT_TRUE(child("signedPanel")->isVisible()) << said().toStdString();
        const int shownBefore = boardsShown();
        press(Qt::Key_Return);
        waitForBoard(shownBefore);
    }

    /// With all its kit, and two people by their tags.
    void launch(const QString& boat, const char* driver, const char* crew) {
        openBoat(boat);
        ASSERT_EQ(window().checkPage().phase(), core::Phase::Launch);
        typeCode(driver);
        typeCode(crew);
        scan(kitOf(boat.toStdString()));
        signAndGoBack();
    }

    void beginReturn(const QString& boat, const char* person) {
        openBoat(boat);
        ASSERT_EQ(window().checkPage().phase(), core::Phase::Return);
        typeCode(person);
    }

    static std::vector<std::string> without(std::vector<std::string> codes, const std::string& one) {
        std::erase(codes, one);
        return codes;
    }

    QString remarkOn(const QString& code) {
        const app::CheckState& state = *window().checkPage().session()->state();
        for (const app::CheckRow& row : app::rowsOf(state.answer, state.context))
            if (row.code == code) return row.remark;
        return {};
    }

    bool isStoredMissing(const std::string& code) {
        return stored().kit().item(code)->state == core::ItemState::Missing;
    }
};

} // namespace

TEST_F(ReturnStory, twoBoatsThatSwappedKitAreToldAndInTheEndNothingIsMissing) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    launch("Dabchick", "PRAC24M2JH", "P4K3DXDST4");

    beginReturn("Grebe", "PWX3VJVX6Q");
    scan(without(kitOf("Grebe"), grebesTube));
    typeCode(dabchicksTube);
    EXPECT_EQ(markOf(dabchicksTube), app::Mark::Look);
    EXPECT_TRUE(remarkOn(dabchicksTube).contains("Went out on Dabchick"))
        << remarkOn(dabchicksTube).toStdString();
    EXPECT_EQ(markOf(grebesTube), app::Mark::StillToFind);
    EXPECT_TRUE(outcome().startsWith("Not back: rescue tube")) << outcome().toStdString();
    signAndGoBack();
    EXPECT_TRUE(isStoredMissing(grebesTube));

    beginReturn("Dabchick", "PRAC24M2JH");
    scan(without(kitOf("Dabchick"), dabchicksTube));
    typeCode(grebesTube);
    EXPECT_TRUE(remarkOn(grebesTube).contains("Went out on Grebe")) << remarkOn(grebesTube).toStdString();
    signAndGoBack();

    EXPECT_FALSE(isStoredMissing(grebesTube)) << "it turned up on Dabchick";
    // Dabchick's return did not see its own tube; the chain says where it is.
    const auto missing = stored().answers().missingItems();
    ASSERT_EQ(missing.size(), 1u);
    EXPECT_EQ(missing.front().item.id, dabchicksTube);
    EXPECT_TRUE(std::any_of(missing.front().chain.begin(), missing.front().chain.end(), [](const auto& link) {
        return link.what == core::ChainLink::What::Seen && link.where == core::Location::boat("Grebe");
    }));
    openBoat("Dabchick"); // carried over, and shown in the next launch check
    typeCode(dabchicksTube);
    EXPECT_FALSE(isStoredMissing(dabchicksTube));
    closeWindow();

    const auto tally = stored().events().tally("2026-03-14");
    ASSERT_TRUE(tally);
    ASSERT_EQ(tally->swaps.size(), 1u);
    const core::Swap& swap = tally->swaps.front();
    EXPECT_EQ((std::set<std::string>{swap.item.id, swap.against.id}),
              (std::set<std::string>{grebesTube, dabchicksTube}));
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
}

TEST_F(ReturnStory, damagedOnReturnIsWithdrawnAtOnceAndTheBoatIsNotReady) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    beginReturn("Grebe", "PWX3VJVX6Q");
    scan(kitOf("Grebe"));
    ASSERT_EQ(markOf(grebesTube), app::Mark::Found);
    typeCode(grebesTube); // in hand now, and seen to be torn
    press(Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "damageEdit");
    type("Strap torn off");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    settle();
    const core::Club asItStands = stored();
    std::string withdrawn;
    for (const std::string& code : kitOf("Grebe"))
        if (asItStands.kit().item(code)->state == core::ItemState::Unserviceable) withdrawn = code;
    EXPECT_FALSE(withdrawn.empty()) << "withdrawn before anything is signed";
    signAndGoBack();
    closeWindow();

    const auto entries = stored().log().entries();
    ASSERT_TRUE(entries);
    EXPECT_TRUE(std::any_of(entries->begin(), entries->end(), [&](const core::LogEntry& entry) {
        return entry.item.id == withdrawn && entry.text == "Strap torn off" && !entry.closed;
    }));
    EXPECT_EQ(storedCondition("Grebe").kind, core::BoatCondition::Kind::NotReady);
}

TEST_F(ReturnStory, whatIsNotBackNamesWhoToAsk) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    beginReturn("Grebe", "PRAC24M2JH"); // another does the return
    const auto asked = [&] {
        const app::CheckState& state = *window().checkPage().session()->state();
        return app::rowsOf(state.answer, state.context).front().remark;
    };
    EXPECT_EQ(asked(), "ask Petra Lund and Sami Reeve");
    scan(kitOf("Grebe"));
    EXPECT_EQ(asked(), "") << "nothing is left to ask for";
}

TEST_F(ReturnStory, everythingBackIsSaidSoAndNeverKitIncomplete) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    beginReturn("Grebe", "PWX3VJVX6Q");
    EXPECT_TRUE(outcome().startsWith("Not back: ")) << outcome().toStdString();
    scan(kitOf("Grebe"));
    EXPECT_TRUE(outcome().startsWith("Everything is back; still to do: ")) << outcome().toStdString();
    EXPECT_FALSE(outcome().contains("Kit incomplete"));
    closeWindow();
}

TEST_F(ReturnStory, tripIsWrittenIntoTheLogByKeys) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    beginReturn("Grebe", "PWX3VJVX6Q");
    press(Qt::Key_T, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget()->objectName(), "tripLeftEdit");
    EXPECT_FALSE(child<QLineEdit>("tripLeftEdit")->text().isEmpty()) << "when the launch was signed";
    type("06:45");
    press(Qt::Key_Tab);
    child<QLineEdit>("tripBackEdit")->selectAll();
    type("7.30");
    press(Qt::Key_Tab);
    type("0,7");
    press(Qt::Key_Tab); // the launches: one, as proposed
    press(Qt::Key_Tab);
    type("half a tank left");
    press(Qt::Key_Tab);
    type("Towed a dinghy off the reeds");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    settle();
    EXPECT_TRUE(child<QPushButton>("tripButton")->text().startsWith("Trip: 06:45 to 07:30"))
        << child<QPushButton>("tripButton")->text().toStdString();
    const std::string check = window().checkPage().session()->state()->open.check;
    closeWindow();

    const auto trip = stored().events().operationOf(check);
    ASSERT_TRUE(trip);
    EXPECT_EQ(app::timeInWords(*trip->left), "06:45");
    EXPECT_EQ(app::timeInWords(*trip->back), "07:30");
    EXPECT_EQ(trip->left->localDay(), today());
    EXPECT_EQ(trip->people, std::vector<std::string>{"Petra Lund"});
    EXPECT_EQ(trip->hours, 0.7);
    EXPECT_EQ(trip->launches, 1);
    EXPECT_EQ(trip->fuel, "half a tank left");
    EXPECT_EQ(trip->incidents, "Towed a dinghy off the reeds");
}

TEST_F(ReturnStory, tripWithTimesTheWrongWayRoundIsToldAndNotWritten) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    beginReturn("Grebe", "PWX3VJVX6Q");
    press(Qt::Key_T, Qt::ControlModifier);
    type("09:00");
    press(Qt::Key_Tab);
    child<QLineEdit>("tripBackEdit")->selectAll();
    type("08:00");
    child<QPushButton>("writeTripButton")->click();
    settle();
    EXPECT_TRUE(child("tripPanel")->isVisible());
    EXPECT_FALSE(window().checkPage().session()->state()->trip);
}

TEST_F(ReturnStory, personsTagAfterTheFinishTagNamesWhoSigns) {
    openWindow();
    launch("Grebe", "PWX3VJVX6Q", "PZ3VKS21SH");
    beginReturn("Grebe", "PWX3VJVX6Q");
    typeCode("C00000001Y"); // finish
    ASSERT_TRUE(child("signPanel")->isVisible());
    typeCode("PRAC24M2JH"); // Marta Quill, who was not aboard
    ASSERT_TRUE(
        support::waitFor([&] { return child<QComboBox>("signedByBox")->currentText() == "Marta Quill"; }));
    typeCode("C00000001Y");
    ASSERT_TRUE(support::waitFor([&] { return child("signedPanel")->isVisible(); }));
    EXPECT_EQ(window().checkPage().session()->state()->names, std::vector<std::string>{"Petra Lund"});
    closeWindow();
    EXPECT_EQ(storedCondition("Grebe").by, "Marta Quill");
}

TEST(TripWords, timesOfDayAreUnderstoodAndOthersAreNot) {
    const core::Instant day = *core::Instant::parse("2026-03-14T12:00:00Z");
    for (const char* typed : {"06:31", "6:31", "0631", "06.31", " 6h31 "}) {
        const auto at = app::timeOn(day, typed);
        ASSERT_TRUE(at) << typed;
        EXPECT_EQ(app::timeInWords(*at), "06:31") << typed;
        EXPECT_EQ(at->localDay(), day.localDay()) << typed;
    }
    for (const char* typed : {"", "24:00", "6:60", "half past six", "6", "06:31:20"})
        EXPECT_FALSE(app::timeOn(day, typed)) << typed;
}

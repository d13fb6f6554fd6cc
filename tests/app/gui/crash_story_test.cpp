#include "core/club/club_checks.h"
#include "core/club/club_record.h"
#include "tests/app/gui/window_story.h"

#include "tests/app/gui/fake_webcam.h"
#include "tests/support/tag_picture.h"

#include <QProcess>

#include <random>
#include <thread>

namespace {

constexpr std::chrono::seconds untilKilled{60};

/// The program itself in a process of its own, driven by what its camera sees.
class CrashStory : public support::WindowStory {
protected:
    void TearDown() override {
        m_program.kill();
        m_program.waitForFinished();
        support::fakeWebcams().pullOut("shed");
        support::WindowStory::TearDown();
    }

    void startProgram() {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_CONFIG_HOME", QString::fromStdString((folder() / "settings").string()));
        environment.insert("LC_ALL", "C.UTF-8");
        m_program.setProcessEnvironment(environment);
        m_program.setProcessChannelMode(QProcess::ForwardedChannels);
        m_program.start(THOLEPIN, {QString::fromStdString(file().string())});
        ASSERT_TRUE(m_program.waitForStarted());
    }

    /// As `kill -9` does: the program is told nothing and can save nothing.
    void killProgram() {
        m_program.kill();
        ASSERT_TRUE(m_program.waitForFinished());
        ASSERT_EQ(m_program.exitStatus(), QProcess::CrashExit);
    }

    void show(const std::vector<std::string>& codes) {
        support::fakeWebcams().show("shed", support::tagPicture(codes));
    }

    /// The lists of the one check that is open, made of what is on disk.
    std::vector<app::CheckRow> storedRows() {
        const core::Club club = stored();
        const auto open = club.checks().unfinishedOf("Grebe", core::Phase::Launch);
        if (!open) return {};
        const auto answer = club.checks().answer(open->check, today());
        return answer ? app::rowsOf(*answer) : std::vector<app::CheckRow>();
    }

    std::size_t storedNames() {
        const core::Club club = stored();
        const auto open = club.checks().unfinishedOf("Grebe", core::Phase::Launch);
        return open ? club.checks().namesOf(open->check).size() : 0;
    }

    bool isStoredFound(const std::string& code) {
        const auto rows = storedRows();
        return std::any_of(rows.begin(), rows.end(), [&](const app::CheckRow& row) {
            return row.code == QString::fromStdString(code) && row.mark != app::Mark::StillToFind;
        });
    }

private:
    QProcess m_program;
};

} // namespace

TEST_F(CrashStory, killedInTheMidstOfACheckItGoesOnWithTheVerySameLists) {
    support::fakeWebcams().plugIn("shed", "Shed camera", "YUY2,1280,720,30");
    show({"BB60Q6WX54"}); // Grebe's own tag, on the board
    startProgram();
    ASSERT_TRUE(support::waitFor([&] { return !storedRows().empty(); }, untilKilled))
        << "no check was opened";
    show({"PWX3VJVX6Q"});
    ASSERT_TRUE(support::waitFor([&] { return storedNames() == 1; }, untilKilled));
    show({"PZ3VKS21SH"});
    ASSERT_TRUE(support::waitFor([&] { return storedNames() == 2; }, untilKilled));
    show({"KFC3K7GM79", "K2P9VZ9SMA", "KBP1BMKPPK", "KR6MF3MV34"});
    for (const char* code : {"KFC3K7GM79", "K2P9VZ9SMA", "KBP1BMKPPK", "KR6MF3MV34"})
        ASSERT_TRUE(support::waitFor([&] { return isStoredFound(code); }, untilKilled)) << code;
    killProgram();
    const auto before = storedRows();
    support::fakeWebcams().pullOut("shed");

    openWindow();
    openBoat("Grebe");
    const app::CheckState& state = *window().checkPage().session()->state();
    EXPECT_TRUE(state.open.resumed);
    EXPECT_EQ(state.names, (std::vector<std::string>{"Petra Lund", "Sami Reeve"}));
    EXPECT_TRUE(app::rowsOf(state.answer) == before);
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
    typeCode("KMC20GKEK9"); // and it takes the next thing
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
}

/// At any moment: while it starts, opens a check, counts what the camera sees. The record is whole each time,
/// and nothing that stood in it is gone.
TEST_F(CrashStory, killedAtAnyMomentItLosesNothingThatStood) {
    support::fakeWebcams().plugIn("shed", "Shed camera", "YUY2,1280,720,30");
    const std::vector<std::vector<std::string>> shown{{"BB60Q6WX54"}, {"PWX3VJVX6Q"},
                                                      {"PZ3VKS21SH"}, {"KFC3K7GM79", "K2P9VZ9SMA"},
                                                      {"KBP1BMKPPK"}, {"KR6MF3MV34"}};
    std::mt19937 random(3);
    std::int64_t facts = stored().record().verify(false)->facts;
    const std::int64_t first = facts;
    for (int time = 0; time < 10; ++time) {
        startProgram();
        for (std::size_t i = 0, many = 1 + random() % 6; i < many; ++i) {
            show(shown[(static_cast<std::size_t>(time) + i) % shown.size()]);
            std::this_thread::sleep_for(std::chrono::milliseconds(150 + random() % 500));
        }
        killProgram();
        const auto found = stored().record().verify(false);
        ASSERT_TRUE(found);
        EXPECT_TRUE(found->problems.empty()) << "kill " << time;
        EXPECT_GE(found->facts, facts) << "kill " << time;
        facts = found->facts;
    }
    EXPECT_GT(facts, first) << "something was recorded between the kills";
}

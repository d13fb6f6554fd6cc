#include "tests/app/cli/small_club.h"

#include <csignal>
#include <fcntl.h>
#include <pty.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;

/// A club whose gear officer Ada Thorne has a PIN, which stands in a file of her own.
class Pins : public SmallClub {
protected:
    void SetUp() override {
        ASSERT_EQ(run({"change", "people", "Ada Thorne", "role=gear officer"}).exit, 0);
        const Ran set = pin({"set", m_file, "--person", "Ada Thorne", "--pin-file", m_pin, "--json"});
        ASSERT_EQ(set.exit, 0) << set.err;
        EXPECT_EQ(Json::parse(set.out)["officers"], Json({"Ada Thorne"}));
    }
    std::string secret(const std::string& name, const std::string& text) const {
        const std::string path = write(name, text);
        ::chmod(path.c_str(), 0600);
        return path;
    }
    static Ran pin(std::vector<std::string> words, const std::string& input = {}) {
        words.insert(words.begin(), "pin");
        return ctl(words, input);
    }
    Ran rename(const std::string& to, std::vector<std::string> more, const std::string& input = {}) const {
        std::vector<std::string> words{"rename", "boats", "Teal", to};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, input);
    }
    void expectRefused(const Ran& ran, const std::string& why) const {
        EXPECT_EQ(ran.exit, 2) << ran.out;
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr(why));
        EXPECT_THAT(ran.err, Not(HasSubstr("4711")));
    }

    const std::string m_pin = secret("ada.pin", "  4711 \r\n");
};

TEST_F(Pins, aGearOfficersCommandsNeedThePinAndTheRecordTellsWhoGaveIt) {
    const std::string before = content();
    expectRefused(rename("Heron", {}), "needs the PIN of Ada Thorne");
    expectRefused(rename("Heron", {"--by", "Ada Thorne"}), "needs the PIN of Ada Thorne");
    expectRefused(rename("Heron", {"--pin-file", m_pin}), "whose PIN");
    expectRefused(rename("Heron", {"--by", "Bo Lind", "--pin-file", m_pin}), "Bo Lind has no PIN");
    EXPECT_EQ(content(), before);
    expectRefused(rename("Heron", {"--by", "Ada Thorne", "--pin-file", "-"}, "0815\n"), "not the PIN");
    // Reading and a crew's acts are free.
    EXPECT_EQ(run({"boats"}).exit, 1);
    EXPECT_EQ(run({"log-add", "--boat", "Teal", "--text", "seat loose", "--by", "Bo Lind"}).exit, 0);
    EXPECT_EQ(rename("Heron", {"--by", "ada thorne", "--pin-file", "-"}, "4711").exit, 0);
    const Ran history = run({"history", "Heron", "--json"});
    const auto line = Json::parse(history.out)["history"].back();
    EXPECT_EQ(line["kind"], "renamed");
    EXPECT_EQ(line["proven"], "Ada Thorne");
    EXPECT_EQ(line["body"]["proven"], "Ada Thorne");
    EXPECT_THAT(run({"history", "Heron"}).out, HasSubstr("Ada Thorne, by PIN"));
    EXPECT_EQ(run({"verify"}).exit, 0);
}

TEST_F(Pins, aFileOfAPinIsItsUsersAloneAndHasOneLine) {
    const auto with = [&](const std::string& path) {
        return rename("Heron", {"--by", "Ada Thorne", "--pin-file", path});
    };
    const std::string open = write("open.pin", "4711\n");
    ::chmod(open.c_str(), 0640);
    expectRefused(with(open), "others can read this file");
    expectRefused(with(secret("two.pin", "4711\n4711\n")), "one line");
    expectRefused(with(secret("long.pin", std::string(5000, '4'))), "one line");
    expectRefused(with(secret("short.pin", "471\n")), "4 to 12 characters");
    expectRefused(with(m_folder / "nowhere"), "cannot be read");
    expectRefused(with(m_folder.path()), "cannot be read");
    expectRefused(with(m_file), "one line");
    EXPECT_EQ(with(m_pin).exit, 0);
}

TEST_F(Pins, everyGearOfficersCommandTakesOne) {
    const std::vector<std::string> by{"--by", "Ada Thorne", "--pin-file", m_pin};
    const std::string csv = m_folder / "more";
    std::filesystem::create_directories(csv);
    write("more/places.csv", "place\nLoft\n");
    const std::string backup = m_folder / "backup.tholepin";
    ASSERT_EQ(run({"backup", backup}).exit, 0);
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{"import", csv, "--today", today},
                                               {"add", "places", "place=Attic"},
                                               {"receive", "--kit-type", "paddle"},
                                               {"merge", backup},
                                               {"machine", "--name", "van"},
                                               {"signing", "--proven", "yes"}}) {
        expectRefused(run(words), "needs the PIN of Ada Thorne");
        auto proven = words;
        proven.insert(proven.end(), by.begin(), by.end());
        const Ran ran = run(proven);
        EXPECT_EQ(ran.exit, 0) << words.front() << ": " << ran.err;
    }
    expectRefused(ctl({"restore", backup, m_folder / "again"}), "needs the PIN");
    EXPECT_EQ(ctl({"restore", backup, m_folder / "again", "--by", "Ada Thorne", "--pin-file", m_pin}).exit,
              0);
    const auto machine = Json::parse(run({"machine", "--json"}).out);
    EXPECT_EQ(machine["name"], "van");
    EXPECT_EQ(Json::parse(run({"verify", "--json"}).out)["machines"][0]["name"], "van");
}

TEST_F(Pins, areSetClearedAndReset) {
    const std::string bos = secret("bo.pin", "bo's own");
    const auto setBo = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"set", m_file, "--person", "Bo Lind", "--pin-file", bos};
        words.insert(words.end(), more.begin(), more.end());
        return pin(words);
    };
    expectRefused(setBo({}), "needs the PIN of Ada Thorne");
    EXPECT_EQ(setBo({"--by", "Ada Thorne", "--by-pin-file", m_pin}).exit, 0);
    EXPECT_EQ(setBo({"--by-pin-file", bos}).exit, 0) << "one's own by one's own";
    expectRefused(pin({"reset", m_file, "--person", "Bo Lind"}), "Ada Thorne has a PIN");
    EXPECT_EQ(pin({"clear", m_file, "--person", "Bo Lind", "--pin-file", bos}).exit, 0);
    const Ran reset = pin({"reset", m_file, "--person", "Ada Thorne", "--by", "Bo Lind"});
    EXPECT_EQ(reset.exit, 0) << reset.err;
    EXPECT_EQ(rename("Heron", {}).exit, 0) << "open again";
    const auto board = Json::parse(run({"boats", "--json"}).out);
    ASSERT_EQ(board["pin_resets"].size(), 1U);
    EXPECT_EQ(board["pin_resets"][0]["person"], "Ada Thorne");
    EXPECT_EQ(board["pin_resets"][0]["by"], "Bo Lind");
    EXPECT_THAT(run({"boats"}).out, HasSubstr("The PIN of Ada Thorne was reset"));
}

TEST_F(Pins, aSignatureIsProvenByTheSignersOwn) {
    ASSERT_EQ(run({"signing", "--proven", "yes", "--by", "Ada Thorne", "--pin-file", m_pin}).exit, 0);
    const Ran refused = check(wholeKit(), {"--sign", "Ada Thorne"});
    EXPECT_EQ(refused.exit, 2);
    EXPECT_THAT(refused.err, HasSubstr("Ada Thorne has one"));
    expectRefused(check(wholeKit(), {"--pin-file", m_pin}), "whose PIN");
    const Ran done = check(wholeKit(), {"--sign", "Ada Thorne", "--pin-file", m_pin});
    EXPECT_EQ(Json::parse(done.out)["signed_by"], "Ada Thorne") << done.err;
    const auto history = Json::parse(run({"history", "Teal", "--json"}).out)["history"];
    EXPECT_EQ(history.back()["kind"], "check-signed");
    EXPECT_EQ(history.back()["proven"], "Ada Thorne");
}

TEST_F(Pins, fiveWrongOnesMakeTheNextProgramWait) {
    for (int i = 0; i < 5; ++i)
        expectRefused(rename("Heron", {"--by", "Ada Thorne", "--pin-file", "-"}, "0815"), "not the PIN");
    expectRefused(rename("Heron", {"--by", "Ada Thorne", "--pin-file", m_pin}), "has to wait for");
}

TEST_F(Pins, theirHistoryIsToldInWords) {
    const std::vector<std::string> by{"--by", "Ada Thorne", "--pin-file", m_pin};
    const std::string bos = secret("bo.pin", "bo's own");
    ASSERT_EQ(pin({"set", m_file, "--person", "Bo Lind", "--pin-file", bos, "--by", "Ada Thorne",
                   "--by-pin-file", m_pin})
                  .exit,
              0);
    ASSERT_EQ(pin({"clear", m_file, "--person", "Bo Lind", "--pin-file", bos}).exit, 0);
    EXPECT_THAT(run({"history", "Bo Lind"}).out,
                testing::AllOf(HasSubstr("PIN set"), HasSubstr("PIN removed"),
                               HasSubstr("Measures or PIN erased"), Not(HasSubstr("Pin-"))));
    ASSERT_EQ(pin({"reset", m_file, "--person", "Ada Thorne"}).exit, 0);
    EXPECT_THAT(run({"history", "Ada Thorne"}).out, HasSubstr("PIN reset by whoever owns the file"));
}

/// tholepinctl at a terminal of its own, in which it has asked for a PIN.
class AtTerminal {
public:
    explicit AtTerminal(std::vector<std::string> words) {
        words.insert(words.begin(), THOLEPINCTL);
        std::vector<char*> arguments;
        for (std::string& word : words)
            arguments.push_back(word.data());
        arguments.push_back(nullptr);
        m_program = ::forkpty(&m_terminal, nullptr, nullptr, nullptr);
        if (m_program == 0) {
            ::execv(THOLEPINCTL, arguments.data());
            ::_exit(127);
        }
        std::string said;
        for (char letter = 0; said.find("not shown") == std::string::npos;) {
            if (::read(m_terminal, &letter, 1) != 1) break;
            said += letter;
        }
        EXPECT_THAT(said, HasSubstr("type the PIN"));
    }
    ~AtTerminal() { ::close(m_terminal); }
    bool shows() const {
        termios now{};
        EXPECT_EQ(::tcgetattr(m_terminal, &now), 0);
        return (now.c_lflag & ECHO) != 0;
    }
    void type(const std::string& text) const {
        EXPECT_EQ(::write(m_terminal, text.data(), text.size()), static_cast<ssize_t>(text.size()));
    }
    void send(int signal) const { ::kill(m_program, signal); }
    int status() const { ///< when it has ended
        int status = 0;
        EXPECT_EQ(::waitpid(m_program, &status, 0), m_program);
        return status;
    }

private:
    int m_terminal = -1;
    pid_t m_program = -1;
};

TEST_F(Pins, aTerminalShowsWhatIsTypedAgainHoweverTheProgramEnds) {
    const std::vector<std::string> words{"rename", m_file,       "boats",      "Teal", "Heron",
                                         "--by",   "Ada Thorne", "--pin-file", "-"};
    for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGQUIT}) {
        const AtTerminal program(words);
        EXPECT_FALSE(program.shows());
        program.send(signal);
        const int status = program.status();
        EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == signal) << signal;
        EXPECT_TRUE(program.shows()) << signal;
    }
    const AtTerminal program(words);
    program.type("4711\n");
    EXPECT_EQ(program.status(), 0);
    EXPECT_TRUE(program.shows());
}

TEST_F(Pins, restoringABackupWaitsLikewise) {
    const auto restore = [&](const std::string& file, const std::string& text) {
        return ctl({"restore", m_file, m_folder / file, "--by", "Ada Thorne", "--pin-file", "-"}, text);
    };
    for (int i = 0; i < 4; ++i)
        expectRefused(restore("again", "0815"), "not the PIN");
    EXPECT_EQ(restore("right", "4711").exit, 0) << "a right one is a new beginning";
    for (int i = 0; i < 5; ++i)
        expectRefused(restore("again", "0815"), "not the PIN");
    expectRefused(restore("again", "4711"), "has to wait for");
}

TEST_F(SmallClub, whoIsSaidToDoItMustBeKnown) {
    const std::string backup = m_folder / "backup.tholepin";
    ASSERT_EQ(run({"backup", backup}).exit, 0);
    const auto ends = [&](const std::string& by, int exit) {
        for (const Ran& ran : {run({"merge", backup, "--by", by}),
                               ctl({"restore", backup, m_folder / ("of " + by), "--by", by})}) {
            EXPECT_EQ(ran.exit, exit) << ran.err;
            EXPECT_EQ(ran.err.find("Nobody Known") != std::string::npos, exit != 0) << ran.err;
        }
    };
    ends("Nobody Known", 2);
    ends("Ada Thorne", 0);
    const Ran joined = ctl({"hub", "join", m_file, "postgresql://localhost/none", "--by", "Nobody Known"});
    EXPECT_EQ(joined.exit, 2);
    EXPECT_THAT(joined.err, HasSubstr("Nobody Known"));
}

} // namespace
} // namespace small_club

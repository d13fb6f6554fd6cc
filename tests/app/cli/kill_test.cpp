#include "tests/app/cli/small_club.h"
#include "tests/support/kept_state.h"

#include <chrono>
#include <iostream>
#include <random>
#include <set>

// Every command that writes is killed at random moments, 20 times each; THOLEPIN_KILLS says how often.
// Whatever the moment: the file is whole, each act is in it once or not at all, what the program said it did
// is in it, the next run goes as if nothing had been, and nothing lies about.

namespace small_club {
namespace {

namespace fs = std::filesystem;
using std::chrono::microseconds;
using Words = std::vector<std::string>;

struct Killed {
    std::string name;
    Words words;       ///< FILE, COPY and DIR are filled in
    std::string input; ///< on its standard input
    int acts = 1;      ///< what it records, each by itself
    bool mayBeRepeated =
        true; ///< a second run records again, or finds that nothing is left to do: exit 0 or 1
};

const std::vector<Killed>& killedCommands() {
    static const std::vector<Killed> all{
        {"import", {"import", "FILE", "DIR"}, ""},
        {"check",
         {"check", "FILE", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--codes", "-"},
         lines(wholeKit()),
         static_cast<int>(wholeKit().size()) + 2},
        {"signing",
         {"check", "FILE", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--codes", "-",
          "--sign", "Ada Thorne", "--urgent", "somebody in the water"},
         lines(wholeKit()),
         static_cast<int>(wholeKit().size()) + 3},
        {"stocktake", {"stocktake", "FILE", "--place", "Shed", "--codes", "-"}, lines({paddle1, knife}), 3},
        {"service",
         {"service", "FILE", "--rule", "yearly look", "--day", "2026-03-01", "--by", "Ada Thorne", "--codes",
          "-", "--today", today},
         lines({towLine})},
        {"receive",
         {"receive", "FILE", "--kit-type", "paddle", "--place", "Shed", "--count", "3", "--today", today},
         ""},
        {"retag", {"retag", "FILE", paddle1}, ""},
        {"write-off", {"write-off", "FILE", paddle1, "--why", "lost"}, "", 1, false},
        {"reinstate", {"reinstate", "FILE", writtenOff, "--why", "found in the van"}, "", 1, false},
        {"log-add", {"log-add", "FILE", "--boat", "Teal", "--text", "bung seeps"}, ""},
        {"change", {"change", "FILE", "people", "Bo Lind", "note=tall", "--today", today}, "", 1},
        {"move", {"move", "FILE", paddle1, paddle2, "--place", "Shed", "--today", today}, "", 1},
        {"rename", {"rename", "FILE", "people", "Bo Lind", "Bo Linden"}, "", 1, false},
        {"erase", {"erase", "FILE", "Ada Thorne"}, ""},
        {"rebuild", {"verify", "FILE", "--rebuild"}, "", 0},
        {"create", {"create", "COPY", "--club", "Other Club", "--from", "DIR"}, "", 0, false},
        {"backup", {"backup", "FILE", "COPY"}, "", 0, false},
        {"restore", {"restore", "FILE", "COPY"}, "", 0, false},
    };
    return all;
}

int timesEach() {
    const char* asked = std::getenv("THOLEPIN_KILLS");
    return asked == nullptr ? 20 : std::atoi(asked);
}

class Kills : public SmallClub, public testing::WithParamInterface<Killed> {
protected:
    Kills() { fs::copy_file(m_file, m_folder / "before"); }

    /// The club as it was at first, and nothing else, in a folder of its own; and the keys as they were.
    void startAnew() {
        fs::remove_all(m_folder / "files");
        fs::create_directory(m_folder / "files");
        fs::copy_file(m_folder / "before", club());
        m_keys.putBack();
    }
    fs::path club() const { return m_folder / "files" / "club.tholepin"; }
    fs::path copy() const { return m_folder / "files" / "copy.tholepin"; }

    Words filled() const {
        Words words = GetParam().words;
        for (std::string& word : words) {
            if (word == "FILE") word = club();
            if (word == "COPY") word = copy();
            if (word == "DIR") word = m_folder / "more";
        }
        return words;
    }
    /// How many facts are in that file, which has to be whole.
    static int factsOf(const fs::path& file) {
        const Ran ran = ctl({"verify", file, "--json"});
        EXPECT_EQ(ran.exit, 0) << ran.err << ran.out;
        return ran.exit == 0 ? Json::parse(ran.out)["facts"].get<int>() : -1;
    }
    std::set<std::string> names() const {
        std::set<std::string> found;
        for (const auto& entry : fs::directory_iterator(m_folder / "files"))
            found.insert(entry.path().filename().string());
        for (const char* file : {"club.tholepin", "copy.tholepin"})
            for (const char* end : {"", "-wal", "-shm"})
                found.erase(std::string(file) + end);
        return found;
    }

private:
    const support::KeptState m_keys;
};

TEST_P(Kills, atAnyMomentLeaveTheFileWholeAndNothingElse) {
    const Killed& killed = GetParam();
    writeFiles(m_folder / "more", {{"places.csv", "place,note\nShed,north wall\nVan,\n"}});
    startAnew();
    const int before = factsOf(club());
    const auto begun = std::chrono::steady_clock::now();
    const Ran whole = ctl(filled(), killed.input);
    const auto took =
        std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - begun).count();
    ASSERT_TRUE(whole.exit == 0 || whole.exit == 1) << whole.err;
    const int after = factsOf(club());
    const int ofCopy = fs::exists(copy()) ? factsOf(copy()) : 0;
    std::mt19937 random(11);
    int ended = 0;
    for (int i = 0; i < timesEach(); ++i) {
        startAnew();
        const microseconds moment(std::uniform_int_distribution<long>(0, took)(random));
        SCOPED_TRACE(killed.name + " after " + std::to_string(moment.count()) + " us");
        const Ran ran = ctl(filled(), killed.input, {.killAfter = moment});
        ended += ran.exit == -1 ? 0 : 1;
        const int now = factsOf(club());
        if (killed.acts == 1) {
            EXPECT_TRUE(now == before || now == after) << now << " facts, not " << before << " or " << after;
        }
        EXPECT_GE(now, before);
        EXPECT_LE(now, after);
        if (!ran.out.empty()) {
            EXPECT_EQ(now, after) << "it said that it was done";
        }
        const bool isThere = fs::exists(copy());
        if (isThere) {
            EXPECT_EQ(factsOf(copy()), ofCopy);
        }
        const Ran again = ctl(filled(), killed.input);
        const bool isDone = killed.acts == 0 ? isThere : now == after;
        if (killed.mayBeRepeated || !isDone) {
            EXPECT_TRUE(again.exit == 0 || again.exit == 1) << again.err;
        } else {
            EXPECT_EQ(again.exit, 2) << again.err;
        }
        EXPECT_GE(factsOf(club()), after);
        EXPECT_THAT(names(), testing::IsEmpty());
    }
    std::cout << killed.name << ": killed " << timesEach() - ended << " times, ended before it " << ended
              << '\n';
    EXPECT_LT(ended, timesEach()) << "none was killed";
}

INSTANTIATE_TEST_SUITE_P(Commands, Kills, testing::ValuesIn(killedCommands()), [](const auto& each) {
    std::string name = each.param.name;
    name.erase(std::remove(name.begin(), name.end(), '-'), name.end());
    return name;
});

} // namespace
} // namespace small_club

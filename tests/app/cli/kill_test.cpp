#include "tests/app/cli/small_club.h"
#include "tests/support/kept_state.h"

#include <QImage>
#include <QString>

#include <chrono>
#include <iostream>
#include <map>
#include <optional>
#include <random>
#include <set>

// Every command that writes is killed at random moments, 6 times each; THOLEPIN_KILLS says how often.
// Whatever the moment: the file is whole, each act is in it once or not at all, what the program said it did
// is in it, the next run goes as if nothing had been, and nothing lies about. A file that is only read stays
// as it is.

namespace small_club {
namespace {

namespace fs = std::filesystem;
using std::chrono::microseconds;
using Words = std::vector<std::string>;

struct Killed {
    std::string name;
    Words words;       ///< FILE, COPY, OTHER, DIR, RULES, PICTURE and CODES are filled in
    std::string input; ///< on its standard input
    int acts = 1;      ///< what it records, each by itself
    bool mayBeRepeated =
        true; ///< a second run records again, or finds that nothing is left to do: exit 0 or 1
    std::vector<Words> first{}; ///< what was done before, and is not killed
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
        {"fit-out", {"fit-out", "FILE", "--boat", "Coot", "--today", today}, ""},
        {"happened",
         {"happened", "FILE", towLine, "--event", "long tow", "--today", today},
         "",
         1,
         true,
         {{"import", "FILE", "RULES", "--today", today}}},
        {"withdraw-record",
         {"withdraw-record", "FILE", towLine, "--rule", "yearly look", "--on", "2026-03-01", "--why",
          "another line was meant"},
         "",
         1,
         false,
         {{"service", "FILE", "--rule", "yearly look", "--day", "2026-03-01", "--by", "Ada Thorne", "--codes",
           "CODES", "--today", today}}},
        {"event", {"event", "FILE", "Winter patrol"}, ""},
        {"event-ends", {"event", "FILE", "-"}, "", 1, false, {{"event", "FILE", "Winter patrol"}}},
        {"photo", {"photo", "FILE", "--code", jacketM, "PICTURE", "--today", today}, ""},
        {"end", {"end", "FILE", "person", "Bo Lind", "--on", today, "--today", today}, ""},
        {"merge",
         {"merge", "FILE", "OTHER"},
         "",
         1,
         true,
         {{"copy", "FILE", "OTHER"},
          {"add", "FILE", "places", "place=Quay"}, // and the other file is another machine's from here on
          {"import", "OTHER", "DIR"},
          {"photo", "OTHER", "--code", jacketM, "PICTURE"},
          {"fit-out", "OTHER", "--boat", "Coot", "--today", today},
          {"rename", "OTHER", "people", "Bo Lind", "Bo Linden"}}},
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
    return asked == nullptr ? 6 : std::atoi(asked);
}

class Kills : public SmallClub, public testing::WithParamInterface<Killed> {
protected:
    Kills() {
        writeFiles(m_folder / "more", {{"places.csv", "place,note\nShed,north wall\nVan,\n"}});
        writeFiles(m_folder / "rules",
                   {{"life_rules.csv", "kit_type,rule,kind,event,undated,source\n"
                                       "tow line,after a tow,after_event,long tow,ignore,its maker\n"}});
        write("codes.txt", towLine + '\n');
        QImage picture(400, 300, QImage::Format_RGB32);
        picture.fill(Qt::darkCyan);
        EXPECT_TRUE(picture.save(QString::fromStdString(m_folder / "picture.png")));
        fs::create_directory(m_folder / "files");
        fs::create_directory(m_folder / "other");
        fs::copy_file(m_file, club());
        for (const Words& words : GetParam().first) {
            const Ran ran = ctl(filled(words));
            if (ran.exit != 0) throw std::runtime_error(words.front() + ": " + ran.err);
        }
        fs::copy_file(club(), m_folder / "before");
        m_otherBefore = textOf(other());
        m_keys.emplace();
    }

    /// The club as it was at first, and nothing else, in a folder of its own; and the keys as they were.
    void startAnew() {
        fs::remove_all(m_folder / "files");
        fs::create_directory(m_folder / "files");
        fs::copy_file(m_folder / "before", club());
        m_keys->putBack();
    }
    fs::path other() const { return m_folder / "other" / "van.tholepin"; }
    fs::path club() const { return m_folder / "files" / "club.tholepin"; }
    fs::path copy() const { return m_folder / "files" / "copy.tholepin"; }

    Words filled(Words words) const {
        const std::map<std::string, std::string> meant{{"FILE", club()},
                                                       {"COPY", copy()},
                                                       {"OTHER", other()},
                                                       {"DIR", m_folder / "more"},
                                                       {"RULES", m_folder / "rules"},
                                                       {"PICTURE", m_folder / "picture.png"},
                                                       {"CODES", m_folder / "codes.txt"}};
        for (std::string& word : words)
            if (const auto found = meant.find(word); found != meant.end()) word = found->second;
        return words;
    }
    void expectOtherAsBefore() const {
        EXPECT_EQ(textOf(other()), m_otherBefore);
        const auto inFolder = fs::directory_iterator(m_folder / "other");
        EXPECT_EQ(std::distance(begin(inFolder), end(inFolder)), m_otherBefore.empty() ? 0 : 1)
            << "nothing beside it";
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
    std::optional<support::KeptState> m_keys;
    std::string m_otherBefore;
};

TEST_P(Kills, atAnyMomentLeaveTheFileWholeAndNothingElse) {
    const Killed& killed = GetParam();
    startAnew();
    const int before = factsOf(club());
    const auto begun = std::chrono::steady_clock::now();
    const Ran whole = ctl(filled(killed.words), killed.input);
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
        const Ran ran = ctl(filled(killed.words), killed.input, {.killAfter = moment});
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
        const Ran again = ctl(filled(killed.words), killed.input);
        const bool isDone = killed.acts == 0 ? isThere : now == after;
        if (killed.mayBeRepeated || !isDone) {
            EXPECT_TRUE(again.exit == 0 || again.exit == 1) << again.err;
        } else {
            EXPECT_EQ(again.exit, 2) << again.err;
        }
        EXPECT_GE(factsOf(club()), after);
        EXPECT_THAT(names(), testing::IsEmpty());
        expectOtherAsBefore();
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

#include "app/flow/check_flow.h"

#include "core/base/error.h"
#include "core/club/club_answers.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/record/documents.h"
#include "tests/app/flow/control_tag_cases.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <random>
#include <regex>

namespace small_club {
namespace {

using app::CheckFlow;
using app::FlowStep;
using core::Phase;
using What = FlowStep::What;

/// What a check found when it was opened, and must leave when all of it is taken back.
struct Found {
    std::map<std::string, std::string> register_; ///< by file, but the log: what was closed stays in it
    std::string answer;                           ///< lines, findings, points
    std::vector<std::string> names;
    std::string trip;
    std::size_t openEntries = 0;
    bool isUnfinished = false; ///< told on the board

    friend bool operator==(const Found&, const Found&) = default;
};

/// A crew that does anything at any time. The same seed does the same, whichever program it sits at.
class RandomCrew {
public:
    RandomCrew(CheckFlow::Finish finish, Phase phase, unsigned seed)
        : m_finish(finish)
        , m_phase(phase)
        , m_random(seed) {
        beginTealsLaunch(m_folder / "club.tholepin");
        m_club.emplace(core::Club::open(m_folder / "club.tholepin").value());
        if (phase == Phase::Return) launch();
        begin();
    }

    void act() {
        ++m_seconds;
        switch (upTo(40)) {
        case 0:
            return note(club().events().fileUnder(check(), upTo(2) ? "Autumn drill" : "Patrol", moment()));
        case 1:
            return m_phase == Phase::Return ? note(flow().recordTrip(club(), trip(), moment()))
                                            : show(clockTag);
        case 2:
            return note(flow().takeBack(club(), kit(), moment()));
        case 3:
            return note(flow().withdraw(club(), kit(), "cracked at the edge", moment()));
        case 4:
        case 5:
            return show(damagedTag);
        case 6:
            return note(flow().recordPoint(club(), upTo(2) ? "hull" : "bow chamber", upTo(2), moment()));
        case 7:
            return giveNames();
        case 8:
            return upTo(8) ? show(finishTag) : signUrgently();
        case 9:
            return upTo(8) ? show(clockTag) : discard();
        case 10:
        case 11:
        case 12:
        case 13:
            return show(undoTag);
        default:
            return show(other());
        }
    }

    /// Undo until nothing stands.
    void undoAll() {
        for (int left = 5000; left > 0; --left) {
            ++m_seconds;
            const auto step = flow().undo(club(), moment());
            ASSERT_TRUE(step);
            if (step->what == What::NothingToTakeBack) return;
            ++undone;
        }
        FAIL() << "there is no end of it";
    }

    Found now() {
        Found found;
        const support::ScratchFolder folder;
        EXPECT_TRUE(club().register_().exportCsv(folder.path(), {}));
        for (const auto& file : std::filesystem::directory_iterator(folder.path())) {
            std::ifstream in(file.path(), std::ios::binary);
            if (file.path().filename() != "log.csv")
                found.register_[file.path().filename()] = {std::istreambuf_iterator<char>(in), {}};
        }
        found.answer = core::textOf(*club().checks().answer(check(), moment().today));
        found.names = club().checks().namesOf(check());
        if (const auto trip = club().events().operationOf(check())) found.trip = core::textOf(*trip);
        const auto log = club().log().entries();
        found.openEntries = static_cast<std::size_t>(
            std::count_if(log->begin(), log->end(), [](const auto& entry) { return !entry.closed; }));
        found.isUnfinished = !club().checks().unfinished().empty();
        return found;
    }

    /// All that is recorded of Teal and its kit, without the ids that are made at random.
    std::string facts() {
        std::string text;
        std::vector<std::string> subjects = wholeKit();
        subjects.insert(subjects.end(), {"Teal", cootKnife, writtenOff, "Ada Thorne", "Bo Lind"});
        for (const std::string& subject : subjects) {
            const auto history = club().answers().history(subject);
            if (!history) continue;
            for (const core::HistoryLine& line : *history)
                text += subject + ' ' + line.by + ' ' + line.kind + ' ' + line.body + '\n';
        }
        return withoutIds(text);
    }

    const Found& found() const { return m_found; }
    core::Club& club() { return *m_club; }
    CheckFlow& flow() { return *m_flow; }
    int checks = 0, undone = 0;

private:
    unsigned upTo(unsigned count) { return static_cast<unsigned>(m_random() % count); }
    std::string kit() {
        static const auto codes = [] {
            auto kit = wholeKit();
            kit.insert(kit.end(), {cootKnife, writtenOff});
            return kit;
        }();
        return codes[upTo(static_cast<unsigned>(codes.size()))];
    }
    std::string other() {
        static const std::vector<std::string> others{adaTag,  boTag,   unknownTag,
                                                     tealTag, cootTag, "4099052913969"};
        return upTo(5) ? kit() : others[upTo(static_cast<unsigned>(others.size()))];
    }
    core::Operation trip() {
        core::Operation told{.launches = static_cast<int>(upTo(4))};
        told.hours = upTo(8) * 0.5;
        if (upTo(2)) told.fuel = "20 l";
        return told;
    }

    core::Moment moment() const {
        return {core::Instant::fromMillis(small_club::now().at.millis() + 1000 * m_seconds),
                small_club::now().today};
    }
    const std::string& check() const { return m_flow->check().check; }

    void begin() {
        auto flow = CheckFlow::open(club(), "Teal", m_phase, moment(), m_finish);
        ASSERT_TRUE(flow);
        m_flow.emplace(std::move(*flow));
        ++checks;
        // The first was begun by somebody else, who told names and points: they are taken back, too.
        if (m_flow->check().resumed) undoAll();
        m_found = now();
    }
    void launch() {
        m_phase = Phase::Launch;
        begin();
        giveNames();
        signUrgently();
        m_phase = Phase::Return;
    }

    void note(const core::Outcome& done) { note(done ? core::Result<FlowStep>(FlowStep{}) : done.error()); }
    void note(const core::Result<FlowStep>& step) {
        if (step) {
            if (step->isLast()) begin();
            return;
        }
        // A person may want what cannot be; the file is whole all the same.
        EXPECT_TRUE(step.error().kind() == core::ErrorKind::NotFound ||
                    step.error().kind() == core::ErrorKind::NotAllowed ||
                    step.error().kind() == core::ErrorKind::BadInput);
    }
    /// The window asks before it signs, and is answered at once.
    void show(const std::string& code) {
        const app::FlowTime time{moment(),
                                 std::chrono::steady_clock::time_point(std::chrono::seconds(m_seconds))};
        const auto shown = [&] {
            return flow().scan(club(), core::ScannedText::typed(code), core::SeenBy::Typed, time);
        };
        auto step = shown();
        if (!step || step->what != What::SignatureAsked) return note(step);
        ASSERT_EQ(shown()->what, What::SignatureGiven);
        flow().setSignatureAsked(false);
        const auto names = club().checks().namesOf(check());
        if (!names.empty()) note(flow().sign(club(), {names.front(), {}}, moment()));
    }
    void giveNames() {
        static const std::vector<std::vector<std::string>> crews{
            {}, {"Ada Thorne"}, {"Ada Thorne", "Bo Lind"}, {"Bo Lind"}};
        note(flow().giveNames(club(), crews[upTo(4)], moment()));
    }
    void signUrgently() { note(flow().sign(club(), {"Ada Thorne", "somebody is in the water"}, moment())); }
    void discard() { note(flow().discard(club(), upTo(2) ? "nobody goes out" : "", moment())); }

    static std::string withoutIds(const std::string& text) {
        static const std::regex id("[0-9a-f]{8}-[0-9a-f-]{27}|[0-9a-f]{64}"); // and salted digests
        std::map<std::string, std::string> known;
        std::string plain;
        auto rest = text.begin();
        for (std::sregex_iterator each(text.begin(), text.end(), id), end; each != end; ++each) {
            const auto name =
                known.try_emplace(each->str(), "#" + std::to_string(known.size())).first->second;
            plain.append(rest, (*each)[0].first).append(name);
            rest = (*each)[0].second;
        }
        return plain.append(rest, text.end());
    }

    support::ScratchFolder m_folder;
    std::optional<core::Club> m_club;
    std::optional<CheckFlow> m_flow;
    CheckFlow::Finish m_finish;
    Phase m_phase;
    std::mt19937 m_random;
    int m_seconds = 0;
    Found m_found;
};

struct Stream {
    Phase phase;
    unsigned seed;
};

class RandomActs : public testing::TestWithParam<Stream> {};

/// docs/rules.md, "Taken back".
TEST_P(RandomActs, undoneToTheBottomGiveWhatTheOpeningFound) {
    RandomCrew crew(CheckFlow::Finish::SignsAtOnce, GetParam().phase, GetParam().seed);
    bool differed = false;
    for (int acts = 1; acts <= 2000; ++acts) {
        crew.act();
        if (acts % 250 != 0) continue;
        differed = differed || !(crew.now() == crew.found());
        crew.undoAll();
        const Found now = crew.now();
        EXPECT_EQ(now.register_, crew.found().register_) << acts;
        EXPECT_EQ(now.answer, crew.found().answer) << acts;
        EXPECT_TRUE(now == crew.found()) << acts;
    }
    EXPECT_TRUE(differed) << "or nothing was done at all";
    EXPECT_GT(crew.undone, 50);
    EXPECT_GT(crew.checks, 2);
    EXPECT_TRUE(crew.club().record().verify(true)->problems.empty());
}

/// docs/register-csv.md, "Codes for a check without a camera": alike at the camera and in a code stream.
TEST_P(RandomActs, leaveTheSameFactsInTheWindowAndOnTheCommandLine) {
    RandomCrew window(CheckFlow::Finish::AsksFirst, GetParam().phase, GetParam().seed);
    RandomCrew commandLine(CheckFlow::Finish::SignsAtOnce, GetParam().phase, GetParam().seed);
    for (int acts = 0; acts < 500; ++acts) {
        window.act();
        commandLine.act();
    }
    const std::string facts = window.facts();
    EXPECT_EQ(facts, commandLine.facts());
    EXPECT_GT(std::count(facts.begin(), facts.end(), '\n'), 150);
    EXPECT_TRUE(window.now() == commandLine.now());
}

INSTANTIATE_TEST_SUITE_P(Streams, RandomActs,
                         testing::Values(Stream{Phase::Launch, 1}, Stream{Phase::Launch, 2},
                                         Stream{Phase::Return, 3}, Stream{Phase::Return, 4}),
                         [](const auto& info) { return "seed" + std::to_string(info.param.seed); });

} // namespace
} // namespace small_club

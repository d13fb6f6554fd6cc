#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/history.h"
#include "core/answers/item_record.h"
#include "core/answers/missing_list.h"
#include "core/club/club_answers.h"
#include "core/register/new_kit.h"
#include "tests/core/club/merge_clubs.h"
#include "tests/support/own_clock.h"
#include "tests/support/watched_disk.h"

#include <chrono>
#include <gmock/gmock.h>
#include <iostream>
#include <random>
#include <sstream>

// Any split, order, repetition and interruption of merges, between machines whose clocks are up to three
// hours wrong, ends in the same club: equal tables, equal answers, a record that verifies, and tables made
// anew that are the same. A few histories run with the tests; THOLEPIN_HISTORIES says how many, of which each
// is made of its number alone.

namespace {

using core::CellTexts;
using core::Club;
using core::ClubExchange;
using core::SheetId;
using support::dumpOf;

/// What machines do to a club, each thing somewhere among others; what is refused is refused.
class RandomActs : public support::Merge {
protected:
    using Act = void (RandomActs::*)(Club&);

    template <class Things>
    auto pick(Things&& from) -> decltype(*std::begin(from)) {
        return *std::next(std::begin(from), static_cast<long>(random() % std::size(from)));
    }
    std::string someBoat(Club& club) { return pick(club.register_().boats()).name; }
    std::string someItem(Club& club) { return pick(club.kit().all()).id; }
    std::string newName(const char* what) { return what + (' ' + std::to_string(++m_names)); }

    void changeRow(Club& club) {
        write(club, SheetId::Boats, {{"boat", someBoat(club)}}, {{"note", std::to_string(random() % 5)}},
              full.now);
    }
    void addPerson(Club& club) {
        const std::string name = "Person " + std::to_string(random() % 30);
        if (!club.register_().rowNamed(SheetId::People, name))
            (void)club.register_().write({SheetId::People, {{{}, {{"person", name}, {"mass_kg", "60"}}, {}}}},
                                         {}, full.now);
    }
    void renameSomething(Club& club) { // to a name that nobody gave
        const auto register_ = club.register_();
        const core::Item jacket = *club.kit().item(full.jacket);
        const auto rename = [&](core::Named named, const std::string& from, const char* to,
                                const std::string& of = {}) {
            (void)club.register_().rename(named, from, newName(to), of, {});
        };
        switch (random() % 6) {
        case 0:
            return rename(core::Named::Person, pick(register_.people()).name, "Crew");
        case 1:
            return rename(core::Named::Place, pick(register_.places()), "Place");
        case 2:
            return rename(core::Named::KitType, jacket.kitType, "jacket");
        case 3:
            return rename(core::Named::Size, jacket.size, "size", jacket.kitType);
        case 4:
            return rename(core::Named::BoatClass, register_.boats().front().boatClass, "class");
        default:
            return rename(core::Named::Boat, someBoat(club), "Boat");
        }
    }
    void moveItem(Club& club) {
        (void)club.register_().write(
            {SheetId::Items, {{{{"code", someItem(club)}}, {{"boat", someBoat(club)}}, {}}}}, {}, full.now);
    }
    void checkBoat(Club& club) {
        const auto opened = club.checks().open(
            someBoat(club), random() % 2 ? core::Phase::Launch : core::Phase::Return, full.now);
        if (!opened) return;
        (void)club.checks().giveNames(opened->check, {pick(club.register_().people()).name}, full.now);
        for (const auto& [code, type] : support::publishedKit)
            if (random() % 2)
                (void)club.checks().scan(opened->check, core::ScannedText::typed(code), core::SeenBy::Typed,
                                         full.now);
        (void)club.checks().recordPoint(opened->check, "bow chamber", 20, full.now);
        if (random() % 4 == 0) (void)club.checks().withdraw(opened->check, "K0D6EKB9KR", "cracked", full.now);
        for (auto undone = random() % 3; undone > 0; --undone)
            (void)club.checks().undo(opened->check, "taken back", full.now);
        if (random() % 2) return;
        (void)club.checks().sign(opened->check, pick(club.register_().people()).name, "needed at once",
                                 full.now);
        (void)club.events().recordOperation(opened->check, {.hours = 1.5}, full.now);
    }
    void letGo(Club& club) {
        const auto open = club.checks().unfinished();
        if (!open.empty()) (void)club.checks().discard(pick(open).check, "nobody goes", full.now);
    }
    void writeOff(Club& club) {
        const std::string item = someItem(club);
        if (random() % 2)
            (void)club.kit().writeOff(item, "lost", {}, full.now);
        else
            (void)club.kit().reinstate(item, "found in the shed", {}, full.now);
    }
    void serve(Club& club) {
        const core::ServiceOrder order{.rule = "yearly look",
                                       .day = full.now.today,
                                       .by = pick(club.register_().people()).name,
                                       .passed = random() % 2 == 0,
                                       .scans = {full.jacket}};
        (void)club.kit().recordService(order, full.now);
    }
    void withdrawRecord(Club& club) {
        const auto records = club.kit().serviceRecords(full.jacket);
        if (!records.empty())
            (void)club.kit().withdrawRecord(full.jacket, pick(records), "typed twice", {}, full.now);
    }
    void happen(Club& club) {
        if (random() % 2)
            (void)club.kit().happened(full.jacket, "blow", full.now.today, {}, full.now);
        else
            (void)club.kit().release(full.jacket, {}, full.now);
    }
    void holdEvent(Club& club) {
        if (random() % 3 == 0)
            (void)club.events().end({}, full.now);
        else
            (void)club.events().begin("Patrol " + std::to_string(random() % 4), {}, {}, full.now);
    }
    void photograph(Club& club) {
        const std::string jpeg = "\xFF\xD8\xFF picture " + std::to_string(random() % 9) + " \xFF\xD9";
        (void)club.photos().addToItem(someItem(club), jpeg, {}, full.now);
    }
    void changeManifest(Club& club) {
        const std::string boat = someBoat(club);
        const core::ManifestOwner owner{core::ManifestOwner::Kind::Boat, boat};
        const core::ManifestLine line{.kitType = "radio", .quantity = static_cast<int>(random() % 3)};
        if (random() % 2)
            (void)club.manifests().changeLine(owner, line, {}, full.now);
        else
            (void)club.manifests().dropOwnLine(owner, line, {}, full.now);
    }
    void receive(Club& club) {
        core::NewKit kit;
        kit.kitType = "knife";
        kit.boat = someBoat(club);
        (void)club.kit().registerKit(kit, {}, full.now);
    }
    void replaceTag(Club& club) { (void)club.kit().replaceTag(someItem(club), {}, full.now); }
    void endSomething(Club& club) {
        if (random() % 2)
            (void)club.register_().end(core::Named::Person, pick(club.register_().people()).name,
                                       full.now.today, {}, full.now);
        else
            (void)club.register_().end(core::Named::Place, pick(club.register_().places()), full.now.today,
                                       {}, full.now);
    }
    /// Kit types and sizes made in error: some are used meanwhile, or elsewhere.
    void slip(Club& club) {
        const auto register_ = club.register_();
        const std::string kitType = "slip " + std::to_string(random() % 3);
        const auto put = [&](SheetId sheet, const CellTexts& key, const CellTexts& cells) {
            (void)club.register_().write({sheet, {{key, cells, {}}}}, {}, full.now);
        };
        const auto remove = [&](SheetId sheet, const std::string& name) {
            if (const auto row = register_.rowNamed(sheet, name))
                (void)club.register_().remove(sheet, *row, {}, full.now);
        };
        switch (random() % 8) {
        case 0:
            return put(SheetId::KitTypes, {},
                       {{"kit_type", kitType}, {"price", std::to_string(random() % 5)}});
        case 1:
            return put(SheetId::KitTypes, {{"kit_type", kitType}},
                       {{"pack", std::to_string(1 + random() % 5)}});
        case 2:
            return put(SheetId::Sizes, {}, {{"kit_type", kitType}, {"size", "M"}, {"wanted", "2"}});
        case 3:
            return put(SheetId::ManifestLines, {}, {{"boat", someBoat(club)}, {"kit_type", kitType}});
        case 4:
            return put(SheetId::Items, {}, {{"kit_type", kitType}, {"size", random() % 2 ? "M" : ""}});
        case 5:
            return put(SheetId::Items, {{"code", someItem(club)}}, {{"kit_type", "knife"}, {"size", ""}});
        case 6:
            for (const core::Cells& line : register_.rows(SheetId::ManifestLines))
                if (line[2].starts_with("slip"))
                    remove(SheetId::ManifestLines, register_.nameOfRow(SheetId::ManifestLines, line));
            return remove(SheetId::Sizes, kitType + "/M");
        default:
            remove(SheetId::Sizes, kitType + "/M");
            return remove(SheetId::KitTypes, kitType);
        }
    }
    void nameClub(Club& club) { (void)club.register_().nameClub(newName("Club"), {}); }
    void eraseSomebody(Club& club) {
        (void)club.record().eraseMeasures(pick(club.register_().people()).name, {});
    }
    void log(Club& club) {
        const auto entries = club.log().entries();
        if (random() % 2 && !entries->empty())
            (void)club.log().close(pick(*entries).id, "done", {}, full.now);
        else
            (void)club.log().add(someBoat(club), "entry " + std::to_string(random() % 9),
                                 core::Severity::Remark, {}, full.now);
    }

    void act(Club& club) {
        static constexpr Act acts[] = {&RandomActs::changeRow,
                                       &RandomActs::addPerson,
                                       &RandomActs::renameSomething,
                                       &RandomActs::moveItem,
                                       &RandomActs::checkBoat,
                                       &RandomActs::checkBoat,
                                       &RandomActs::checkBoat,
                                       &RandomActs::letGo,
                                       &RandomActs::writeOff,
                                       &RandomActs::serve,
                                       &RandomActs::withdrawRecord,
                                       &RandomActs::happen,
                                       &RandomActs::holdEvent,
                                       &RandomActs::photograph,
                                       &RandomActs::changeManifest,
                                       &RandomActs::receive,
                                       &RandomActs::replaceTag,
                                       &RandomActs::endSomething,
                                       &RandomActs::eraseSomebody,
                                       &RandomActs::log,
                                       &RandomActs::slip,
                                       &RandomActs::slip,
                                       &RandomActs::slip,
                                       &RandomActs::nameClub};
        (this->*pick(acts))(club);
    }

    std::mt19937 random;

private:
    int m_names = 0;
};

/// What the club answers, in words that tell it from another.
std::string answersOf(const Club& club, core::Moment now) {
    std::ostringstream said;
    const core::ClubAnswers answers = club.answers();
    for (const core::BoatCondition& boat : answers.boatConditions(now.today))
        said << boat.boat << ' ' << core::nameOf(boat.kind) << ' ' << boat.by << ' ' << boat.urgent << ' '
             << (boat.since ? boat.since->iso() : "") << ' ' << boat.reasons.size() << '\n';
    for (const core::MissingItem& item : answers.missingItems())
        said << item.item.id << ' ' << item.item.tag << ' ' << item.boat << ' ' << item.chain.size() << '\n';
    for (const core::DueRow& row : answers.dueList(now.today, 4000))
        said << row.item.id << ' ' << row.boat << ' ' << row.due.rule.name << ' '
             << (row.due.due ? row.due.due->iso() : "") << '\n';
    const auto entries = club.log().entries();
    for (const core::LogEntry& entry : *entries)
        said << entry.id << ' ' << entry.text << '\n';
    for (const core::Boat& boat : club.register_().boats()) {
        const auto history = answers.history(boat.name);
        for (const core::HistoryLine& line : *history)
            said << boat.name << ' ' << line.machine << ' ' << line.seq << ' ' << line.kind << '\n';
    }
    if (const auto held = club.events().held(now.at)) said << held->event << '\n';
    for (const std::string& event : club.events().names())
        said << event << ' ' << club.events().checksOf(event).size() << '\n';
    for (const core::Photo& photo : club.photos().all())
        said << photo.item << ' ' << photo.sha256 << ' ' << club.photos().jpegOf(photo.sha256)->size()
             << '\n';
    return said.str();
}

struct Machine {
    std::string name;
    std::filesystem::path file;
    std::chrono::milliseconds clockOff;
    Club club;
};

class RandomMerges : public RandomActs {
protected:
    ~RandomMerges() override { support::setClockOff({}); }

    void begin(int history) {
        random.seed(static_cast<unsigned>(history));
        machines.clear();
        sticks.clear();
        const int count = 2 + static_cast<int>(random() % 5);
        constexpr int threeHours = 3 * 60 * 60 * 1000;
        for (int i = 0; i < count; ++i) {
            const std::string name = "m" + std::to_string(history) + "-" + std::to_string(i);
            const std::chrono::milliseconds off(static_cast<int>(random() % (2 * threeHours)) - threeHours);
            machines.push_back({name, path(name), off, copy(name)});
        }
    }
    /// A copy of a machine's file as it is now, on a stick: who takes it in later takes in a part.
    void putOnStick(const Machine& from) {
        const std::string name = from.name + "-stick" + std::to_string(sticks.size());
        ASSERT_TRUE(core::copyClub(from.file, path(name), false));
        sticks.push_back(path(name));
    }
    void takeIn(Machine& into) {
        std::vector<std::filesystem::path> others;
        for (auto count = 1 + random() % 2; count > 0; --count)
            others.push_back(random() % 2 && !sticks.empty() ? pick(sticks) : pick(machines).file);
        std::erase(others, into.file);
        if (others.empty()) return;
        if (random() % 3 == 0) interrupt(into, others);
        const auto done = into.club.exchange().merge(others, ClubExchange::Forks::Refused);
        ASSERT_TRUE(done) << support::described(done.error());
        ++merges;
        if (random() % 3) return;
        const auto again = into.club.exchange().merge(others, ClubExchange::Forks::Refused);
        EXPECT_EQ(again->facts, 0) << "twice is nothing new";
    }
    /// The disk fails at some write; what was told to have failed has done nothing.
    void interrupt(Machine& into, const std::vector<std::filesystem::path>& others) {
        const std::string before = dumpOf(into.file);
        disk.fail(support::DiskCall::Write, 1 + static_cast<int>(random() % 30), failure, random() % 2 == 0);
        const auto done = into.club.exchange().merge(others, ClubExchange::Forks::Refused);
        disk.heal();
        if (done) return;
        ++interrupted;
        EXPECT_EQ(dumpOf(into.file), before);
    }
    void live() {
        for (int step = 0; step < 40; ++step) {
            Machine& machine = pick(machines);
            support::setClockOff(machine.clockOff);
            ASSERT_NEAR(static_cast<double>(core::Instant::now().millis() / 1000 - ::time(nullptr)),
                        static_cast<double>(machine.clockOff.count()) / 1000, 5)
                << "its own clock";
            const auto what = random() % 8;
            if (what == 0)
                putOnStick(machine);
            else if (what == 1)
                takeIn(machine);
            else
                act(machine.club);
            if (HasFatalFailure()) return;
        }
        support::setClockOff({});
        for (int round = 0; round < 2; ++round) // everything has come everywhere
            for (Machine& into : machines)
                for (const Machine& from : machines)
                    if (&into != &from) merged(into.club, from.file);
    }
    void expectEqual(int history) {
        const std::string tables = dumpOf(machines.front().file);
        const std::string answers = answersOf(machines.front().club, full.now);
        for (Machine& machine : machines) {
            SCOPED_TRACE("history " + std::to_string(history) + ", machine " + machine.name);
            ASSERT_EQ(dumpOf(machine.file), tables);
            ASSERT_EQ(answersOf(machine.club, full.now), answers);
            expectWhole(machine.club);
        }
        EXPECT_TRUE(machines.front().club.record().verify(true)->problems.empty());
        ASSERT_EQ(dumpOf(machines.front().file), tables) << "made anew, history " << history;
    }
    void end() {
        std::vector<std::filesystem::path> files = sticks;
        for (const Machine& machine : machines)
            files.push_back(machine.file);
        machines.clear();
        for (const auto& file : files)
            std::filesystem::remove(file);
    }

    static constexpr int failure = 10 | (3 << 8); ///< SQLITE_IOERR_WRITE
    support::WatchedDisk disk;
    std::vector<Machine> machines;
    std::vector<std::filesystem::path> sticks;
    int merges = 0, interrupted = 0;
};

TEST_F(RandomMerges, endInEqualClubs) {
    const char* wanted = std::getenv("THOLEPIN_HISTORIES");
    const char* first = std::getenv("THOLEPIN_FIRST_HISTORY");
    const int from = first ? std::atoi(first) : 0, count = wanted ? std::atoi(wanted) : 3;
    for (int history = from; history < from + count && !HasFailure(); ++history) {
        begin(history);
        live();
        if (!HasFatalFailure()) expectEqual(history);
        end();
    }
    std::cout << count << " histories, " << merges << " merges in their middle, of which " << interrupted
              << " were interrupted before\n";
    EXPECT_GT(merges, 0);
}

} // namespace

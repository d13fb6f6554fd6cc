#include "core/answers/item_record.h"
#include "core/base/error_code.h"
#include "core/club/club_copy.h"
#include "core/club/club_exchange.h"
#include "core/club/club_hub.h"
#include "core/club/right.h"
#include "core/register/new_kit.h"
#include "core/spreadsheet/workbook.h"
#include "core/store/fact_table.h"
#include "tests/core/club/pin_club.h"

#include <fstream>
#include <functional>
#include <gmock/gmock.h>
#include <regex>
#include <set>
#include <sstream>

// Who may do what: docs/rules.md, rules 11. Every function of the faces that can write stands in one of the
// three lists below; they are compared with the headers, so that a new one is not forgotten.

namespace {

using core::ErrorCode;
using core::Outcome;
using support::PinClub;

struct Act {
    const char* function;
    std::function<Outcome(PinClub&)> done;
};

template <class Value>
Outcome outcome(const core::Result<Value>& result) {
    return result ? Outcome(core::Done{}) : Outcome(result.error());
}

const core::ManifestOwner tern{core::ManifestOwner::Kind::Boat, "Tern"};
const core::ManifestLine ownLine{.kitType = "radio", .quantity = 2};
const core::PhasePoint ownPoint{"launch", {.name = "seat tight"}};
const char* const jpeg = "\xFF\xD8\xFF another \xFF\xD9";

/// In the order in which they are done.
const std::vector<Act>& crewActs() {
    static std::string check, entry;
    static const std::vector<Act> acts{
        {"ClubChecks::open",
         [](PinClub& full) {
             const auto open = full.club.checks().open("Petrel", core::Phase::Launch, full.now);
             check = open ? open->check : std::string();
             return outcome(open);
         }},
        {"ClubChecks::giveNames",
         [](PinClub& full) { return full.club.checks().giveNames(check, {"Odalys Finch"}, full.now); }},
        {"ClubChecks::scan",
         [](PinClub& full) {
             return outcome(full.club.checks().scan(check, core::ScannedText::typed("KGFB6J8WF9"),
                                                    core::SeenBy::Typed, full.now));
         }},
        {"ClubChecks::recordPoint",
         [](PinClub& full) { return full.club.checks().recordPoint(check, "bow chamber", 20, full.now); }},
        {"ClubChecks::undo",
         [](PinClub& full) { return outcome(full.club.checks().undo(check, "taken back", full.now)); }},
        {"ClubChecks::undoSightingOf",
         [](PinClub& full) { return full.club.checks().undoSightingOf(check, "KGFB6J8WF9", full.now); }},
        {"ClubChecks::withdraw",
         [](PinClub& full) {
             return full.club.checks().withdraw(check, "K79TE08WXH", "torn apart", full.now);
         }},
        {"ClubEvents::fileUnder",
         [](PinClub& full) { return full.club.events().fileUnder(check, "Regatta", full.now); }},
        {"ClubEvents::recordOperation",
         [](PinClub& full) {
             return full.club.events().recordOperation(full.back, {.hours = 2.0}, full.now);
         }},
        {"ClubEvents::begin",
         [](PinClub& full) {
             return outcome(full.club.events().begin("Regatta", {}, "Bram Oke", full.now));
         }},
        {"ClubEvents::end",
         [](PinClub& full) { return outcome(full.club.events().end("Bram Oke", full.now)); }},
        {"ClubChecks::sign",
         [](PinClub& full) {
             return outcome(full.club.checks().sign(check, "Odalys Finch", "drill", full.now));
         }},
        {"ClubChecks::openStocktake",
         [](PinClub& full) { return outcome(full.club.checks().openStocktake("Boat house", full.now)); }},
        {"ClubChecks::discard",
         [](PinClub& full) { return full.club.checks().discard(full.stillOpen, "nobody goes", full.now); }},
        {"ClubLog::add",
         [](PinClub& full) {
             const auto added =
                 full.club.log().add("Tern", "seat loose", core::Severity::Remark, {}, full.now);
             entry = added ? added->id : std::string();
             return outcome(added);
         }},
        {"ClubPhotos::addToEntry",
         [](PinClub& full) { return outcome(full.club.photos().addToEntry(entry, jpeg, {}, full.now)); }},
        {"ClubPhotos::addToItem",
         [](PinClub& full) {
             return outcome(full.club.photos().addToItem(full.jacket, jpeg, {}, full.now));
         }},
        {"ClubPhotos::takeBack",
         [](PinClub& full) {
             return full.club.photos().takeBack({full.club.photos().all().front().id}, {}, full.now);
         }},
        {"ClubLog::close",
         [](PinClub& full) { return full.club.log().close(entry, "tightened", {}, full.now); }},
        {"ClubKit::happened",
         [](PinClub& full) {
             return outcome(full.club.kit().happened(full.jacket, "blow", full.now.today, {}, full.now));
         }},
    };
    return acts;
}

Outcome importPlaces(PinClub& full) {
    std::filesystem::create_directories(full.folder / "csv of a right");
    support::writeFile(full.folder / "csv of a right" / "places.csv", "place\nLoft\n");
    return outcome(full.club.register_().importCsv(full.folder / "csv of a right", full.now.today, false));
}

Outcome importSheet(PinClub& full) {
    const auto book = core::readWorkbook(std::string_view("place\nAttic\n"), "places.csv");
    if (!book) return book.error();
    core::ClubSheetChoices choices;
    choices.sheet = core::SheetId::Places;
    return outcome(full.club.register_().importClubSheet(*book, choices, full.now.today, false));
}

Outcome mergeCopy(PinClub& full) {
    const auto copy = full.folder / "merged.tholepin";
    if (!std::filesystem::exists(copy) && !core::copyClub(full.file(), copy, false)) return core::Error{};
    return outcome(full.club.exchange().merge({copy}, core::ClubExchange::Forks::Refused));
}

Outcome giveToCopy(PinClub& full) {
    const auto copy = full.folder / "given.tholepin";
    if (!std::filesystem::exists(copy) && !core::copyClub(full.file(), copy, false)) return core::Error{};
    return outcome(full.club.exchange().give(copy));
}

core::ServiceOrder earlierLook(const PinClub& full) {
    return {.rule = "yearly look",
            .day = full.now.today.plusDays(-9),
            .by = "Odalys Finch",
            .scans = {full.jacket}};
}

const std::vector<Act>& officersActs() {
    static const std::vector<Act> acts{
        {"ClubRegister::importCsv", importPlaces},
        {"ClubRegister::importClubSheet", importSheet},
        {"ClubRegister::write",
         [](PinClub& full) {
             return outcome(full.club.register_().write(
                 {core::SheetId::Places, {{{{"place", "Store"}}, {{"note", "dry"}}, {}}}}, {}, full.now));
         }},
        {"ClubRegister::rename",
         [](PinClub& full) {
             return full.club.register_().rename(core::Named::Place, "Boat house", "Shed", {}, {});
         }},
        {"ClubRegister::remove",
         [](PinClub& full) {
             return full.club.register_().remove(core::SheetId::LifeRules,
                                                 full.club.register_().rows(core::SheetId::LifeRules).front(),
                                                 {}, full.now);
         }},
        {"ClubRegister::nameClub",
         [](PinClub& full) { return full.club.register_().nameClub("Quillmere Rescue", {}); }},
        {"ClubRegister::forgetWords",
         [](PinClub& full) {
             return outcome(full.club.register_().forgetWords({{.word = "bow hand"}}, {}));
         }},
        {"ClubRegister::end",
         [](PinClub& full) {
             return outcome(full.club.register_().end(core::Named::Boat, "Tern", full.now.today.plusDays(400),
                                                      {}, full.now));
         }},
        {"ClubKit::registerKit",
         [](PinClub& full) {
             return outcome(full.club.kit().registerKit({.kitType = "knife"}, {}, full.now));
         }},
        {"ClubKit::registerAll",
         [](PinClub& full) {
             return outcome(full.club.kit().registerAll({{.kitType = "knife"}}, {}, full.now));
         }},
        {"ClubKit::writeOff",
         [](PinClub& full) { return full.club.kit().writeOff("KGFB6J8WF9", "lost", {}, full.now); }},
        {"ClubKit::reinstate",
         [](PinClub& full) { return full.club.kit().reinstate("KGFB6J8WF9", "in the van", {}, full.now); }},
        {"ClubKit::writeOffAll",
         [](PinClub& full) { return full.club.kit().writeOffAll({"KGFB6J8WF9"}, "lost", {}, full.now); }},
        {"ClubKit::release",
         [](PinClub& full) { return full.club.kit().release("KD2289T9SE", {}, full.now); }},
        {"ClubKit::recordService",
         [](PinClub& full) { return outcome(full.club.kit().recordService(earlierLook(full), full.now)); }},
        {"ClubKit::withdrawRecord",
         [](PinClub& full) {
             const core::ServiceEntry record{.rule = "yearly look", .day = earlierLook(full).day.iso()};
             return full.club.kit().withdrawRecord(full.jacket, record, "typed twice", {}, full.now);
         }},
        {"ClubKit::replaceTag",
         [](PinClub& full) { return outcome(full.club.kit().replaceTag("K80NSC1FX4", {}, full.now)); }},
        {"ClubKit::giveMissingTags",
         [](PinClub& full) { return full.club.kit().giveMissingTags({"Petrel"}, {}, full.now); }},
        {"ClubManifests::changeLine",
         [](PinClub& full) { return full.club.manifests().changeLine(tern, ownLine, {}, full.now); }},
        {"ClubManifests::dropOwnLine",
         [](PinClub& full) { return full.club.manifests().dropOwnLine(tern, ownLine, {}, full.now); }},
        {"ClubManifests::changePoint",
         [](PinClub& full) { return full.club.manifests().changePoint(tern, ownPoint, {}, full.now); }},
        {"ClubManifests::dropPoint",
         [](PinClub& full) { return full.club.manifests().dropPoint(tern, ownPoint, {}, full.now); }},
        {"ClubRecord::nameMachine", [](PinClub& full) { return full.club.record().nameMachine("van", {}); }},
        {"ClubExchange::merge", mergeCopy},
        {"ClubExchange::give", giveToCopy},
        {"ClubPins::set",
         [](PinClub& full) { return full.club.pins().set("Odalys Finch", support::pin("0815"), {}); }},
        {"ClubPins::clear", [](PinClub& full) { return full.club.pins().clear("Odalys Finch", {}); }},
        {"ClubPins::proveSignatures",
         [](PinClub& full) { return full.club.pins().proveSignatures(true, {}); }},
        {"ClubRecord::eraseMeasures",
         [](PinClub& full) { return outcome(full.club.record().eraseMeasures("Odalys Finch", {})); }},
    };
    return acts;
}

/// They write nothing of the record, or ask for what they need by themselves (club_pins_test.cpp, below), or
/// take in what other machines recorded, as an officer arranged it.
const std::set<std::string> neither{"ClubRecord::verify", "ClubExchange::planMerge", "ClubPins::unlock",
                                    "ClubPins::lock",     "ClubPins::reset",         "ClubPins::goBy",
                                    "ClubHub::join",      "ClubHub::leave",          "ClubHub::exchange"};

std::string textWithoutComments(const std::filesystem::path& file) {
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    return std::regex_replace(text.str(), std::regex("//[^\n]*"), "");
}

/// Member functions of a class that are not const, as "Class::function".
void addWriters(const std::string& name, std::string body, std::set<std::string>& into) {
    body = std::regex_replace(body, std::regex(R"(explicit[^{]*\{\})"), "");
    std::istringstream statements(body.substr(0, body.find("private:")));
    const std::regex declared(R"((\w+)\()");
    for (std::string statement; std::getline(statements, statement, ';');) {
        std::smatch found;
        if (!std::regex_search(statement, found, declared) ||
            statement.find("static ") != std::string::npos || statement.find("using ") != std::string::npos)
            continue;
        if (!std::regex_search(statement, std::regex(R"(\)\s*const\s*$)")))
            into.insert(name + "::" + found.str(1));
    }
}

std::set<std::string> writersOfFaces() {
    std::set<std::string> writers;
    for (const auto& entry : std::filesystem::directory_iterator(CLUB_FACES)) {
        if (entry.path().extension() != ".h" || !entry.path().filename().string().starts_with("club_"))
            continue;
        const std::string text = textWithoutComments(entry.path());
        const std::regex face(R"(\nclass (Club\w+) \{)");
        for (std::sregex_iterator at(text.begin(), text.end(), face), end; at != end; ++at) {
            const auto begin = static_cast<std::size_t>(at->position()) + at->str().size();
            addWriters(at->str(1), text.substr(begin, text.find("\n};", begin) - begin), writers);
        }
    }
    return writers;
}

TEST(Rights, everyFunctionOfTheFacesThatWritesSaysWhoMay) {
    std::set<std::string> listed = neither;
    for (const auto* acts : {&crewActs(), &officersActs()})
        for (const Act& act : *acts)
            EXPECT_TRUE(listed.insert(act.function).second) << act.function << " stands in two lists";
    EXPECT_EQ(writersOfFaces(), listed);
}

/// As it is in a register that was made without tags.
void takeTagOff(PinClub& full) {
    core::Database database(full.file(), core::Database::Mode::ReadWrite);
    core::Transaction transaction(database);
    core::Ledger(database).append(core::rowWritten(core::SheetId::Boats, {{"boat", "Petrel"}}, {{"tag", ""}}),
                                  {});
    transaction.commit();
}

TEST(Rights, aGearOfficersActsNeedThePinAndACrewsDoNot) {
    PinClub full;
    takeTagOff(full);
    for (const Act& act : officersActs()) {
        const auto before = full.facts();
        const Outcome refused = act.done(full);
        ASSERT_FALSE(refused) << act.function;
        EXPECT_EQ(refused.error(), (core::Error{ErrorCode::PinNeeded, {"Bram Oke"}})) << act.function;
        EXPECT_EQ(full.facts(), before) << act.function;
    }
    for (const Act& act : crewActs()) {
        const auto before = full.facts();
        const Outcome done = act.done(full);
        EXPECT_TRUE(done) << act.function << ": " << (done ? "" : support::described(done.error()));
        EXPECT_GT(full.facts(), before) << act.function;
    }
    ASSERT_TRUE(full.unlock());
    core::Database file(full.file(), core::Database::Mode::ReadOnly);
    for (const Act& act : officersActs()) {
        const auto before = full.facts();
        const Outcome done = act.done(full);
        EXPECT_TRUE(done) << act.function << ": " << (done ? "" : support::described(done.error()));
        if (std::string(act.function).starts_with("ClubExchange::")) continue; // nothing new here
        EXPECT_GT(full.facts(), before) << act.function;
        EXPECT_EQ(core::provenBy(*core::factTable::newest(file)), "Bram Oke") << act.function;
    }
    const auto crews = file.number("SELECT count(*) FROM fact WHERE kind IN ('tag-seen', 'check-opened', "
                                   "'check-signed', 'photo-added') AND body LIKE '%proven%'");
    EXPECT_EQ(crews, 0) << "what a crew does is proven by nobody";
    EXPECT_TRUE(full.club.record().verify(false)->problems.empty());
}

TEST(Rights, joiningAHubAndLeavingItNeedThePin) {
    PinClub full;
    const core::HubPlace nowhere{"postgresql:///club?host=/nonexistent", false};
    EXPECT_EQ(full.club.hub().join(nowhere).error().code, ErrorCode::PinNeeded);
    EXPECT_EQ(full.club.hub().leave().error().code, ErrorCode::PinNeeded);
    ASSERT_TRUE(full.unlock());
    EXPECT_EQ(full.club.hub().join(nowhere).error().code, ErrorCode::HubNotReached);
    EXPECT_TRUE(full.club.hub().leave());
}

// The positive twin of all refusals: without a gear officer's PIN nothing is asked of anybody.
TEST(Rights, withoutAPinOfAGearOfficerEverythingIsOpen) {
    PinClub full;
    ASSERT_TRUE(full.unlock());
    ASSERT_TRUE(full.club.pins().clear("Bram Oke", {}));
    EXPECT_FALSE(full.club.pins().unlocked());
    EXPECT_TRUE(full.club.pins().isSet("Odalys Finch")) << "who is none has one";
    for (const Act& act : officersActs()) {
        const Outcome done = act.done(full);
        const bool guarded =
            act.function == std::string("ClubPins::set") || act.function == std::string("ClubPins::clear");
        if (guarded)
            EXPECT_EQ(done.error().code, ErrorCode::PinSetAlready) << act.function;
        else
            EXPECT_TRUE(done) << act.function << ": " << (done ? "" : support::described(done.error()));
    }
    core::Database file(full.file(), core::Database::Mode::ReadOnly);
    EXPECT_EQ(core::provenBy(*core::factTable::newest(file)), "");
}

} // namespace

#include "core/record/facts.h"
#include "core/record/private_cells.h"

#include "core/base/error_code.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace {

using core::Fact;
using core::FactBody;
using nlohmann::json;

const core::Instant at = *core::Instant::parse("2026-03-14T06:40:00Z");

Fact factOf(const FactBody& body) {
    return {.id = "f", .machine = "a1b2", .seq = 7, .kind = core::kindOf(body), .body = core::textOf(body)};
}

Fact factWith(std::string kind, const json& body) {
    return {.id = "f", .machine = "a1b2", .seq = 7, .kind = std::move(kind), .body = body.dump()};
}

core::CheckAnswer answer() {
    core::CheckAnswer answer{.location = {core::Location::Kind::Boat, "Petrel"},
                             .today = *core::CalendarDay::parse("2026-03-14")};
    answer.outcome = core::CheckOutcome::CompleteWithRemarks;
    return answer;
}

/// By a failed record.
core::RowWritten withdrawn() {
    core::RowWritten row =
        core::stateGiven("KGFB6J8WF9", "unserviceable", *core::CalendarDay::parse("2026-03-14"), "failed");
    row.rule = "yearly look";
    return row;
}

/// A fact of each kind and its body as it stands in the first club files: the chain is over these bytes.
const std::vector<std::pair<FactBody, std::string>>& facts() {
    static const std::vector<std::pair<FactBody, std::string>> all{
        {core::MachineBegun{"00ff", "shed", ""}, R"({"continues":"","name":"shed","public_key":"00ff"})"},
        {core::ClubNamed{"Quillmere \"Lake\""}, R"({"name":"Quillmere \"Lake\""})"},
        {core::CheckOpened{"c1", "Petrel", core::Phase::Stocktake, at},
         R"({"at":"2026-03-14T06:40:00.000Z","boat":"Petrel","check":"c1","phase":"stocktake"})"},
        {core::CheckOpened{"c1", "Petrel", core::Phase::Return, at, "Lake festival"},
         R"({"at":"2026-03-14T06:40:00.000Z","boat":"Petrel","check":"c1","event":"Lake festival",)"
         R"("phase":"return"})"},
        {core::NamesGiven{"c1", {"Bram Oke", "Åse"}, at},
         R"({"at":"2026-03-14T06:40:00.000Z","check":"c1","people":["Bram Oke","Åse"]})"},
        {core::TagSeen{"c1", "KGFB6J8WF9", at, "camera"},
         R"({"at":"2026-03-14T06:40:00.000Z","check":"c1","code":"KGFB6J8WF9","seen_by":"camera"})"},
        {core::TagSeen{"c1", "KGFB6J8WF9", at, "camera", 1.6},
         R"({"at":"2026-03-14T06:40:00.000Z","check":"c1","code":"KGFB6J8WF9","print":1.6,)"
         R"("seen_by":"camera"})"},
        {core::ActTakenBack{"", "f0", "found in the van", at},
         R"({"act":"f0","at":"2026-03-14T06:40:00.000Z","check":"","reason":"found in the van"})"},
        {core::RecordWithdrawn{"KGFB6J8WF9", "", "look", "2026-03", {"f0", "f1"}, "wrong jacket", at},
         R"({"acts":["f0","f1"],"at":"2026-03-14T06:40:00.000Z","code":"KGFB6J8WF9","day":"2026-03",)"
         R"("part":"","reason":"wrong jacket","rule":"look"})"},
        {core::PointRecorded{"c1", "bow chamber", 20, at},
         R"({"at":"2026-03-14T06:40:00.000Z","check":"c1","point":"bow chamber","value":20.0})"},
        {core::CheckSigned{"c1", "Petrel", core::Phase::Return, at, {"Bram Oke"}, "drill", answer()},
         R"({"answer":{"best":[0,0,0,0,0],"boat":"Petrel","findings":[],"lines":[],"log_open":[],)"
         R"("outcome":"complete-with-remarks","phase":"launch","points":[],"today":"2026-03-14"},)"
         R"("at":"2026-03-14T06:40:00.000Z","boat":"Petrel","check":"c1","people":["Bram Oke"],)"
         R"("phase":"return","urgent":"drill"})"},
        {core::CheckClosed{"c1", "nobody goes", at},
         R"({"at":"2026-03-14T06:40:00.000Z","check":"c1","reason":"nobody goes"})"},
        {core::UrgentEnded{"c1"}, R"({"check":"c1"})"},
        {core::EventGiven{"c1", "Lake festival", at},
         R"({"at":"2026-03-14T06:40:00.000Z","check":"c1","event":"Lake festival"})"},
        {core::EventHeld{"Lake festival", at, at},
         R"({"at":"2026-03-14T06:40:00.000Z","event":"Lake festival","until":"2026-03-14T06:40:00.000Z"})"},
        {core::OperationLogged{"c1", "Petrel", {.hours = 1.5, .launches = 2, .fuel = "5 l"}, at},
         R"({"at":"2026-03-14T06:40:00.000Z","boat":"Petrel","check":"c1","operation":)"
         R"({"fuel":"5 l","hours":1.5,"incidents":"","launches":2,"people":[]}})"},
        {core::TagFixed{"KGFB6J8WF9", "K80NSC1FX4", at},
         R"({"at":"2026-03-14T06:40:00.000Z","code":"KGFB6J8WF9","tag":"K80NSC1FX4"})"},
        {core::PhotoAdded{"KGFB6J8WF9", true, "", "2026-03-14", "zip stiff", "00ff", 7, at},
         R"({"at":"2026-03-14T06:40:00.000Z","boat":"","bytes":7,"code":"KGFB6J8WF9","day":"2026-03-14",)"
         R"("of_entry":true,"sha256":"00ff","text":"zip stiff"})"},
        {core::PrivateErased{{"f0", "f1"}}, R"({"facts":["f0","f1"]})"},
        {core::Renamed{core::Named::KitType, "", "oar", "paddle"},
         R"({"from":"oar","named":"kit_type","of":"","to":"paddle"})"},
        {core::WordTold{"people", "role", "bow hand", "crew"},
         R"({"column":"role","means":"crew","sheet":"people","word":"bow hand"})"},
        {core::WordForgotten{"people", "role", "bow hand"},
         R"({"column":"role","sheet":"people","word":"bow hand"})"},
        {core::PinSet{"Bram Oke", "", "00ff"}, R"({"person":"Bram Oke","sealed":"00ff"})"},
        {core::PinCleared{"Bram Oke", true}, R"({"person":"Bram Oke","reset":true})"},
        {core::SignaturesProven{true}, R"({"asked":true})"},
        {core::MachineNamed{"van"}, R"({"name":"van"})"},
        {core::rowWritten(core::SheetId::Sizes, {{"kit_type", "Jacket"}, {"size", "M"}}, {{"wanted", "4"}}),
         R"({"key":"jacket\u001fm","row":{"kit_type":"Jacket","size":"M"},"set":{"wanted":"4"}})"},
        {core::stateGiven("KGFB6J8WF9", "missing", *core::CalendarDay::parse("2026-03-14"), {}, "c1"),
         R"({"check":"c1","key":"kgfb6j8wf9","row":{"code":"KGFB6J8WF9"},)"
         R"("set":{"since":"2026-03-14","state":"missing","why":""}})"},
        {withdrawn(), R"({"key":"kgfb6j8wf9","row":{"code":"KGFB6J8WF9"},"rule":"yearly look",)"
                      R"("set":{"since":"2026-03-14","state":"unserviceable","why":"failed"}})"},
        {core::RowWritten{.sheet = core::SheetId::Services,
                          .key = "k",
                          .keyCells = {"K", "", "look", "2026-03-14"},
                          .order = 3,
                          .at = at,
                          .isGone = true},
         R"({"at":"2026-03-14T06:40:00.000Z","gone":true,"key":"k","order":3,)"
         R"("row":{"code":"K","day":"2026-03-14","part":"","rule":"look"},"set":{}})"},
    };
    return all;
}

TEST(Facts, everyKindIsWrittenAsInTheFirstClubFiles) {
    std::set<std::size_t> kinds;
    for (const auto& [body, text] : facts()) {
        EXPECT_EQ(core::textOf(body), text);
        EXPECT_TRUE(core::isCanonical(text)) << text;
        kinds.insert(body.index());
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<FactBody>);
}

TEST(Facts, kindsAreThoseOfTheFirstClubFiles) {
    std::vector<std::string> kinds;
    for (const auto& [body, text] : facts())
        kinds.push_back(core::kindOf(body));
    EXPECT_THAT(kinds, testing::ElementsAre(
                           "machine-begun", "club-named", "check-opened", "check-opened", "names-given",
                           "tag-seen", "tag-seen", "act-taken-back", "record-withdrawn", "point-recorded",
                           "check-signed", "check-closed", "urgent-ended", "event-given", "event-held",
                           "operation-logged", "tag-fixed", "photo-added", "private-erased", "renamed",
                           "word-told", "word-forgotten", "pin-set", "pin-cleared", "signatures-proven",
                           "machine-named", "size", "item", "item", "service"));
}

// By whose PIN a fact was written stands in what is hashed, whatever the fact says else.
TEST(Facts, everyKindMaySayByWhosePinItWasWritten) {
    for (const auto& [body, text] : facts()) {
        Fact fact{.id = "f", .kind = core::kindOf(body), .body = core::textOf(body, "Bram Oke")};
        EXPECT_EQ(core::provenBy(fact), "Bram Oke") << text;
        const auto read = core::bodyOf(fact);
        ASSERT_TRUE(read && *read) << text;
        EXPECT_EQ(core::textOf(**read), text) << "and reads as the other";
        EXPECT_EQ(core::provenBy(factOf(body)), "");
    }
    EXPECT_EQ(core::provenBy({.kind = "tag-seen", .body = R"({"proven":7})"}), "");
}

TEST(Facts, aPinStandsBesideItsFact) {
    FactBody body = core::PinSet{"Bram Oke", "$argon2id$secret"};
    const auto cells = core::seal(body, "f0");
    ASSERT_EQ(cells.size(), 1U);
    EXPECT_EQ(cells.front().value, "$argon2id$secret");
    EXPECT_EQ(core::textOf(body).find("secret"), std::string::npos);
    ASSERT_EQ(core::sealedCells(body).size(), 1U);
    EXPECT_EQ(core::sealedCells(body).front().digest, core::digestOf("f0", cells.front()));
}

TEST(Facts, everyKindIsReadAsItWasWritten) {
    for (const auto& [body, text] : facts()) {
        const auto read = core::bodyOf(factOf(body));
        ASSERT_TRUE(read && *read) << text;
        EXPECT_EQ(core::kindOf(**read), core::kindOf(body));
        EXPECT_EQ(core::textOf(**read), text);
    }
}

TEST(Facts, everySheetHasItsKindOfRow) {
    for (const core::Sheet& sheet : core::allSheets()) {
        core::RowWritten row{.sheet = sheet.id, .key = "k"};
        row.keyCells.assign(static_cast<std::size_t>(sheet.keyColumns), "x");
        for (int column = sheet.keyColumns; column < static_cast<int>(sheet.columns.size()); ++column)
            row.set.emplace_back(column, std::string(sheet.columns[static_cast<std::size_t>(column)].name));
        EXPECT_EQ(core::kindOf(row), sheet.table);
        const auto read = core::bodyOf(factOf(row));
        ASSERT_TRUE(read && *read) << sheet.table;
        const auto& same = std::get<core::RowWritten>(**read);
        EXPECT_EQ(same.sheet, sheet.id);
        EXPECT_EQ(same.keyCells, row.keyCells);
        EXPECT_THAT(same.set, testing::UnorderedElementsAreArray(row.set));
    }
}

TEST(Facts, whatALaterProgramAddsIsNoFault) {
    const auto later = core::bodyOf(factWith("boat-painted", {{"colour", "red"}}));
    ASSERT_TRUE(later);
    EXPECT_FALSE(*later);
    const auto more = core::bodyOf(factWith("club-named", {{"name", "x"}, {"motto", {"y"}}}));
    ASSERT_TRUE(more && *more);
    EXPECT_EQ(std::get<core::ClubNamed>(**more).name, "x");
    const auto column = core::bodyOf(factWith(
        "place", {{"key", "k"}, {"row", {{"place", "Shed"}}}, {"set", {{"colour", 5}, {"note", "n"}}}}));
    ASSERT_TRUE(column && *column);
    EXPECT_THAT(std::get<core::RowWritten>(**column).set, testing::ElementsAre(testing::Pair(3, "n")));
    EXPECT_EQ(core::fieldText(factWith("check-signed", {{"answer", {{"boat", "b"}, {"air", 3}}}}), "answer"),
              R"({"air":3,"boat":"b"})");
}

/// What an error says of the fact: its number, its machine, the field and what stands there.
std::vector<std::string> faultOf(const Fact& fact) {
    const auto read = core::bodyOf(fact);
    EXPECT_FALSE(read) << fact.body;
    if (read) return {};
    EXPECT_EQ(read.error().kind(), core::ErrorKind::FileDamaged);
    return read.error().arguments;
}

TEST(Facts, aFaultNamesTheFactAndTheField) {
    using testing::ElementsAre;
    const json seen{{"check", "c1"}, {"code", "K"}, {"at", "2026-03-14T06:40:00Z"}, {"seen_by", "camera"}};
    ASSERT_TRUE(core::bodyOf(factWith("tag-seen", seen)));
    const auto with = [&](json patch) {
        json body = seen;
        body.merge_patch(patch);
        return faultOf(factWith("tag-seen", body));
    };
    EXPECT_THAT(with({{"code", nullptr}}), ElementsAre("7", "a1b2", "tag-seen.code"));
    EXPECT_THAT(with({{"code", 5}}), ElementsAre("7", "a1b2", "tag-seen.code", "5"));
    EXPECT_THAT(with({{"at", "noon"}}), ElementsAre("7", "a1b2", "tag-seen.at", "noon"));
    EXPECT_THAT(faultOf(factWith("tag-seen", json::array())), ElementsAre("7", "a1b2", "tag-seen", "[]"));
    Fact cut = factWith("tag-seen", seen);
    cut.body.pop_back();
    EXPECT_THAT(faultOf(cut), ElementsAre("7", "a1b2", "tag-seen", testing::StartsWith("{\"at\"")));
    EXPECT_THAT(
        faultOf(factWith("check-opened", {{"check", "c"}, {"boat", "b"}, {"phase", "patrol"}, {"at", ""}})),
        ElementsAre("7", "a1b2", "check-opened.phase", "patrol"));
    EXPECT_THAT(faultOf(factWith("place", {{"key", "k"}, {"row", json::object()}})),
                ElementsAre("7", "a1b2", "place.row.place"));
    EXPECT_THAT(faultOf(factWith("place", {{"key", "k"}, {"row", {{"place", "x"}}}, {"set", {{"note", 5}}}})),
                ElementsAre("7", "a1b2", "place.set.note", "5"));
}

/// The paths of all values in a document, as JSON pointers; of a list only its first.
void addPaths(const json& document, const json::json_pointer& path, std::vector<json::json_pointer>& paths) {
    if (document.is_object())
        for (const auto& [key, value] : document.items()) {
            paths.push_back(path / key);
            addPaths(value, path / key, paths);
        }
    if (document.is_array() && !document.empty()) {
        paths.push_back(path / 0);
        addPaths(document[0], path / 0, paths);
    }
}

// Whatever stands in whatever field: a fact is read, or the error names that field.
TEST(Facts, noFieldOfAnyKindCanHoldWhatBreaksTheReader) {
    const std::vector<json> garbage{5,       -1, 2.5,        1e300,  "garbage", "\x1F",
                                    nullptr, {}, {{"a", 1}}, {1, 2}, true};
    int refused = 0, taken = 0;
    for (const auto& [body, text] : facts()) {
        const json clean = json::parse(text);
        std::vector<json::json_pointer> paths;
        addPaths(clean, json::json_pointer(), paths);
        for (const auto& path : paths)
            for (const json& each : garbage) {
                json planted = clean;
                planted[path] = each;
                const auto read = core::bodyOf(factWith(core::kindOf(body), planted));
                ++(read ? taken : refused);
                if (read) continue;
                ASSERT_GE(read.error().arguments.size(), 3U);
                EXPECT_THAT(read.error().arguments[2], testing::StartsWith(core::kindOf(body))) << planted;
            }
    }
    EXPECT_GT(refused, 500);
    EXPECT_GT(taken, 50); // texts take any text
}

TEST(Facts, theInstantThatThePersonGaveIsReadOfAnyKind) {
    EXPECT_EQ(core::givenInstant(factWith("boat-painted", {{"at", "2026-03-14T06:40:00Z"}})), at);
    EXPECT_FALSE(core::givenInstant(factWith("tag-seen", {{"at", "noon"}})));
    EXPECT_FALSE(core::givenInstant(factWith("tag-seen", {{"at", 5}})));
    EXPECT_FALSE(core::givenInstant(factWith("tag-seen", json::array())));
    Fact cut{.kind = "tag-seen", .body = "{"};
    EXPECT_FALSE(core::givenInstant(cut));
}

} // namespace

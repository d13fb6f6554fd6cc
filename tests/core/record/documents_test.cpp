#include "core/record/documents.h"

#include "core/base/error_code.h"
#include "core/record/fact.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;

const core::CellPlace place{"sign_off", "c1", "answer"};

std::string sameTag(const std::string& id) {
    return id;
}

core::CalendarDay day(const char* iso) {
    return *core::CalendarDay::parse(iso);
}

/// An answer with every field filled.
core::CheckAnswer fullAnswer() {
    core::RuleDue due;
    due.rule = {.part = "cylinder", .name = "weigh", .kind = core::RuleKind::AfterEvent, .n = 24};
    due.rule.strict = true;
    due.rule.source = "label";
    due.due = day("2026-02-01");
    due.lastGoodDay = day("2026-01-31");
    due.state = core::DueState::Undated;
    due.severity = core::Severity::Remark;
    due.anchor = core::Anchor::Event;
    due.anchorDay = day("2024-02-01");
    due.event = "impact";
    due.counted = 3.5;
    due.limit = 24;
    core::Finding finding;
    finding.kind = core::FindingKind::Swapped;
    finding.severity = core::Severity::Stop;
    finding.kitType = "jacket";
    finding.item.id = "KGFB6J8WF9";
    finding.quantity = 2;
    finding.due = due;
    finding.people = {"Bram Oke"};
    finding.boat = "Tern";
    finding.size = "M";
    finding.text = "torn";
    finding.entry = "0123456789";
    finding.since = day("2026-03-01");
    finding.value = 18;
    finding.afloat = 17.25;
    finding.unit = "kPa";
    finding.low = 18;
    finding.high = 22;
    core::CheckAnswer answer{.location = {core::Location::Kind::Boat, "Petrel"},
                             .phase = core::Phase::Return,
                             .today = day("2026-03-14")};
    answer.outcome = core::CheckOutcome::Complete;
    answer.lines = {{.line = {.kitType = "jacket", .quantity = 2, .required = false, .substitutes = {"vest"}},
                     .wanted = 2,
                     .counted = 1,
                     .items = {{{"KGFB6J8WF9", {}}, "vest", true, "Bram Oke", day("2027-01-01")}},
                     .withoutPeople = {"Åse"}}};
    answer.findings = {finding};
    answer.points = {{.point = {.name = "bow chamber",
                                .kind = core::PointKind::Measure,
                                .unit = "kPa",
                                .limits = {18, 22},
                                .required = false},
                      .state = core::PointState::OutOfRange,
                      .value = 25,
                      .afloat = 24.5}};
    answer.logOpen = {{.id = "9876543210",
                       .boat = "Petrel",
                       .day = day("2026-02-02"),
                       .text = "leaks",
                       .severity = core::Severity::Stop}};
    answer.score = {1, 2, 3, 4, 5000000000};
    return answer;
}

TEST(Documents, anAnswerIsReadAsItWasWritten) {
    const std::string text = core::textOf(fullAnswer());
    EXPECT_TRUE(core::isCanonical(text));
    const auto read = core::answerFrom(text, place, sameTag);
    ASSERT_TRUE(read);
    EXPECT_EQ(core::textOf(*read), text);
    EXPECT_EQ(read->findings.front().due->rule.name, "weigh");
    EXPECT_EQ(read->score, fullAnswer().score);
}

// The bytes of the first club files: enumerations by number, phase and outcome by name, unknown as null.
TEST(Documents, anAnswerStandsAsInTheFirstClubFiles) {
    const json answer = json::parse(core::textOf(fullAnswer()));
    EXPECT_EQ(answer["best"], json({1, 2, 3, 4, 5000000000}));
    EXPECT_EQ(answer["phase"], "return");
    EXPECT_EQ(answer["outcome"], "complete");
    EXPECT_EQ(answer["lines"][0].dump(),
              R"({"counted":1,"items":[{"code":"KGFB6J8WF9","counts":true,"due":"2027-01-01",)"
              R"("kit_type":"vest","worn_by":"Bram Oke"}],"kit_type":"jacket","quantity":2,"required":false,)"
              R"("substitutes":["vest"],"wanted":2,"without":["Åse"]})");
    EXPECT_EQ(
        answer["findings"][0].dump(),
        R"({"afloat":17.25,"boat":"Tern","code":"KGFB6J8WF9","due":{"anchor":6,"anchor_day":"2024-02-01",)"
        R"("counted":3.5,"due":"2026-02-01","event":"impact","kind":8,"last_good":"2026-01-31","limit":24.0,)"
        R"("n":24.0,)"
        R"("part":"cylinder","rule":"weigh","severity":0,"source":"label","state":4,"strict":true},)"
        R"("entry":"0123456789","high":22.0,"kind":20,"kit_type":"jacket","low":18.0,"people":["Bram Oke"],)"
        R"("quantity":2,"severity":1,"since":"2026-03-01","size":"M","text":"torn","unit":"kPa","value":18.0})");
    EXPECT_EQ(
        answer["points"][0].dump(),
        R"({"afloat":24.5,"high":22.0,"kind":1,"low":18.0,"point":"bow chamber","required":false,"state":2,)"
        R"("unit":"kPa","value":25.0})");
    EXPECT_EQ(
        answer["log_open"][0].dump(),
        R"({"boat":"Petrel","code":"","day":"2026-02-02","entry":"9876543210","severity":1,"text":"leaks"})");
    core::CheckAnswer bare{.today = day("2026-03-14")};
    bare.findings.emplace_back();
    const json finding = json::parse(core::textOf(bare))["findings"][0];
    for (const char* unknown : {"due", "since", "value", "afloat", "low", "high"})
        EXPECT_TRUE(finding[unknown].is_null()) << unknown;
}

TEST(Documents, whatAnEarlierProgramDidNotWriteHasItsDefault) {
    const auto read =
        core::answerFrom(R"({"findings":[{"kind":3}],"today":"2026-03-14","later":[1]})", place, sameTag);
    ASSERT_TRUE(read);
    EXPECT_EQ(read->findings.front().kind, core::FindingKind::Undated);
    EXPECT_EQ(read->findings.front().quantity, 1);
    EXPECT_EQ(read->outcome, core::CheckOutcome::Incomplete);
}

TEST(Documents, aFaultNamesThePlaceAndTheField) {
    json answer = json::parse(core::textOf(fullAnswer()));
    const auto faultAt = [&](const char* pointer, const json& value) {
        json planted = answer;
        planted[json::json_pointer(pointer)] = value;
        const auto read = core::answerFrom(planted.dump(), place, sameTag);
        EXPECT_FALSE(read) << pointer;
        return read ? std::vector<std::string>() : read.error().arguments;
    };
    using testing::ElementsAre;
    EXPECT_THAT(faultAt("/findings/0/kind", 22),
                ElementsAre("sign_off", "c1", "answer.findings.0.kind", "22"));
    EXPECT_THAT(faultAt("/findings/0/due/anchor", 7),
                ElementsAre("sign_off", "c1", "answer.findings.0.due.anchor", "7"));
    EXPECT_THAT(faultAt("/points/0/state", -1), ElementsAre("sign_off", "c1", "answer.points.0.state", "-1"));
    EXPECT_THAT(faultAt("/outcome", "fine"), ElementsAre("sign_off", "c1", "answer.outcome", "fine"));
    EXPECT_THAT(faultAt("/best/4", "x"), ElementsAre("sign_off", "c1", "answer.best", "x"));
    EXPECT_THAT(faultAt("/lines/0/wanted", 3000000000),
                ElementsAre("sign_off", "c1", "answer.lines.0.wanted", "3000000000"));
    EXPECT_FALSE(core::answerFrom("{", place, sameTag));
    EXPECT_EQ(core::answerFrom("[1]", place, sameTag).error().arguments,
              (std::vector<std::string>{"sign_off", "c1", "answer", "[1]"}));
}

// The record names an item by its id; the tag is what is on it now.
TEST(Documents, anAnswerHasTheTagsThatAreOnItsItemsNow) {
    core::CheckAnswer answer = fullAnswer();
    answer.logOpen.front().item.id = "K80NSC1FX4";
    const std::string text = core::textOf(answer);
    const auto read = core::answerFrom(text, place, [](const std::string& id) { return "new " + id; });
    ASSERT_TRUE(read);
    EXPECT_EQ(read->findings.front().item, (core::ItemName{"KGFB6J8WF9", "new KGFB6J8WF9"}));
    EXPECT_EQ(read->lines.front().items.front().item.tag, "new KGFB6J8WF9");
    EXPECT_EQ(read->logOpen.front().item.tag, "new K80NSC1FX4");
    EXPECT_EQ(core::textOf(*read), text) << "tags are not kept";
    const auto none =
        core::answerFrom(core::textOf(fullAnswer()), place, [](const std::string&) { return "x"; });
    EXPECT_EQ(none->logOpen.front().item, core::ItemName{}) << "an entry on the boat has no item";
}

// Each enumeration up to its last, and one beyond.
TEST(Documents, enumerationsEndWhereTheyEnd) {
    const json answer = json::parse(core::textOf(fullAnswer()));
    for (const auto& [pointer, last] : std::vector<std::pair<const char*, int>>{
             {"/findings/0/kind", static_cast<int>(core::FindingKind::Last)},
             {"/findings/0/severity", static_cast<int>(core::Severity::Stop)},
             {"/findings/0/due/kind", static_cast<int>(core::RuleKind::AfterEvent)},
             {"/findings/0/due/state", static_cast<int>(core::DueState::Undated)},
             {"/findings/0/due/anchor", static_cast<int>(core::Anchor::Event)},
             {"/points/0/kind", static_cast<int>(core::PointKind::Timed)},
             {"/points/0/state", static_cast<int>(core::PointState::OutOfRange)}})
        for (int number = -1; number <= last + 1; ++number) {
            json planted = answer;
            planted[json::json_pointer(pointer)] = number;
            EXPECT_EQ(static_cast<bool>(core::answerFrom(planted.dump(), place, sameTag)),
                      number >= 0 && number <= last)
                << pointer << ' ' << number;
        }
}

TEST(Documents, anOperationIsReadAsItWasWritten) {
    const core::Operation operation{.left = core::Instant::parse("2026-03-14T08:00:00Z"),
                                    .people = {"Bram Oke"},
                                    .hours = 0.5,
                                    .launches = 2,
                                    .incidents = "none"};
    const std::string text = core::textOf(operation);
    EXPECT_EQ(text,
              R"({"fuel":"","hours":0.5,"incidents":"none","launches":2,"left":"2026-03-14T08:00:00.000Z",)"
              R"("people":["Bram Oke"]})");
    const auto read = core::operationFrom(text, {"operation", "c1", "body"});
    ASSERT_TRUE(read);
    EXPECT_EQ(core::textOf(*read), text);
    EXPECT_EQ(core::operationFrom(R"({"hours":"long"})", {"operation", "c1", "body"}).error().arguments,
              (std::vector<std::string>{"operation", "c1", "body.hours", "long"}));
}

} // namespace

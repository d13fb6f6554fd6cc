#include "app/cli/json/json_out.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace app {
namespace {

using Json = nlohmann::ordered_json;

std::vector<std::string> namesOf(const Json& object) {
    std::vector<std::string> names;
    for (const auto& [name, value] : object.items())
        names.push_back(name);
    return names;
}

// Expected names and values: the contract of the command line.
TEST(JsonOut, documentsHaveTheirOneField) {
    EXPECT_EQ(Json::parse(codesJson({"K1", "K2"})), (Json{{"codes", Json::array({"K1", "K2"})}}));
    EXPECT_EQ(Json::parse(codesJson({"K1"})), (Json{{"codes", Json::array({"K1"})}}));
    EXPECT_EQ(Json::parse(fileJson("a")), (Json{{"file", "a"}}));
    EXPECT_EQ(Json::parse(boatsJson({}, {}))["boats"], Json::array());
    EXPECT_EQ(Json::parse(missingJson({}))["missing"], Json::array());
    EXPECT_EQ(Json::parse(readingsJson({}))["pictures"], Json::array());
}

TEST(JsonOut, aCheckHasTheContractsFieldsInItsOrder) {
    CheckReport report{.check = "id",
                       .answer = {.location = core::Location::boat("Teal"),
                                  .today = *core::CalendarDay::parse("2026-03-14")},
                       .signedBy = {},
                       .urgent = {},
                       .unread = {"x"}};
    const Json document = Json::parse(checkJson(report));
    EXPECT_EQ(namesOf(document),
              (std::vector<std::string>{"check", "boat", "phase", "today", "signed_by", "urgent", "outcome",
                                        "lines", "findings", "points", "log_open", "unread", "best"}));
    EXPECT_EQ(namesOf(document["best"]),
              (std::vector<std::string>{"required", "other", "own_type", "own_boat", "due_sum"}));
    EXPECT_TRUE(document["signed_by"].is_null());
    EXPECT_EQ(document["unread"], Json::array({"x"}));
}

TEST(JsonOut, everyRuleKindStateAndAnchorHasItsName) {
    const std::vector<std::string> kinds{
        "stamped",       "from_made",   "from_first_use", "year_end_from_made", "inspect_every",
        "service_every", "every_hours", "every_uses",     "after_event"};
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        core::DueRow row;
        row.due.rule.kind = static_cast<core::RuleKind>(i);
        EXPECT_EQ(Json::parse(dueJson({row}, core::CalendarDay::fromNumber(1)))["due"][0]["kind"], kinds[i]);
    }
    const std::vector<std::pair<core::DueState, std::string>> states{
        {core::DueState::Later, "later"},
        {core::DueState::DueSoon, "due-soon"},
        {core::DueState::WithinTolerance, "within-tolerance"},
        {core::DueState::Passed, "passed"},
        {core::DueState::Undated, "undated"}};
    for (const auto& [state, name] : states) {
        core::DueRow row;
        row.due.state = state;
        EXPECT_EQ(Json::parse(dueJson({row}, core::CalendarDay::fromNumber(1)))["due"][0]["state"], name);
    }
    const std::vector<std::pair<core::Anchor, std::string>> anchors{
        {core::Anchor::Made, "made"},       {core::Anchor::FirstUse, "first_use"},
        {core::Anchor::Stamped, "stamped"}, {core::Anchor::Registered, "registered"},
        {core::Anchor::Service, "service"}, {core::Anchor::Event, "event"}};
    for (const auto& [anchor, name] : anchors) {
        core::DueRow row;
        row.due.anchor = anchor;
        EXPECT_EQ(Json::parse(dueJson({row}, core::CalendarDay::fromNumber(1)))["due"][0]["anchor"], name);
    }
    EXPECT_TRUE(Json::parse(dueJson({core::DueRow{}}, core::CalendarDay::fromNumber(1)))["due"][0]["anchor"]
                    .is_null());
}

TEST(JsonOut, aVideoHasItsFrames) {
    scanner::PathReading reading;
    reading.path = "a.avi";
    reading.frames = 12;
    EXPECT_EQ(Json::parse(readingsJson({reading}))["pictures"][0]["frames"], 12);
}

} // namespace
} // namespace app

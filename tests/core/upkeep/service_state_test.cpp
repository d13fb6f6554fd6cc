#include "core/upkeep/service_state.h"

#include "tests/core/base/days.h"

#include <gtest/gtest.h>

namespace core {
namespace {

// Design: register CSV, `items.state`: the latest service record decides, each rule by itself.

ServiceRecord record(const char* rule, const char* on, bool passed, const char* part = "") {
    return {part, rule, day(on), {}, passed};
}

TEST(ServiceState, withoutAFailedRecordIsFine) {
    EXPECT_FALSE(failedSince({}));
    EXPECT_FALSE(failedSince({record("look", "2026-01-01", true)}));
}

TEST(ServiceState, isUnserviceableSinceTheFailedRecord) {
    EXPECT_EQ(failedSince({record("look", "2026-01-05", false)}), day("2026-01-05"));
    EXPECT_EQ(failedSince({record("look", "2026-01-05", false), record("look", "2026-01-01", true)}),
              day("2026-01-05"));
}

TEST(ServiceState, aLaterPassedRecordOfTheSameRulePutsItRight) {
    EXPECT_FALSE(failedSince({record("look", "2026-01-05", false), record("Look ", "2026-02-01", true)}));
}

TEST(ServiceState, ofOneDayTheInstantsDecideWhereBothAreKnown) {
    const auto at = [](const char* instant, bool passed) {
        ServiceRecord made = record("look", "2026-01-05", passed);
        made.at = Instant::parse(instant);
        return made;
    };
    const auto failed = at("2026-01-05T10:00:00Z", false);
    EXPECT_FALSE(failedSince({failed, at("2026-01-05T10:00:01Z", true)}));
    EXPECT_EQ(failedSince({failed, at("2026-01-05T09:59:59Z", true)}), day("2026-01-05"));
    EXPECT_EQ(failedSince({failed, at("2026-01-05T10:00:00Z", true)}), day("2026-01-05"))
        << "in doubt it is not";
    EXPECT_EQ(failedSince({failed, record("look", "2026-01-05", true)}), day("2026-01-05"))
        << "in doubt it is not";
    EXPECT_EQ(failedSince({record("look", "2026-01-05", false), at("2026-01-05T11:00:00Z", true)}),
              day("2026-01-05"));
}

TEST(ServiceState, anotherRulesOrPartsRecordDoesNot) {
    EXPECT_EQ(failedSince({record("look", "2026-01-05", false), record("weigh", "2026-02-01", true)}),
              day("2026-01-05"));
    EXPECT_EQ(
        failedSince({record("look", "2026-01-05", false, "cylinder"), record("look", "2026-02-01", true)}),
        day("2026-01-05"));
}

} // namespace
} // namespace core

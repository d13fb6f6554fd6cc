#include "app/text/words.h"

#include "tests/core/base/days.h"

#include <gtest/gtest.h>

namespace app {
namespace {

using core::day;

TEST(Words, daysAreSaidAsAPersonSaysThem) {
    EXPECT_EQ(inWords(day("2026-03-01")), QStringLiteral("1 March 2026"));
    EXPECT_EQ(inWords(day("2024-12-31")), QStringLiteral("31 December 2024"));
}

TEST(Words, instantsAreSaidAgainstToday) {
    const auto at = *core::Instant::parse("2026-03-14T06:40:00Z");
    const core::CalendarDay local = at.localDay();
    EXPECT_TRUE(inWords(at, local).endsWith(QStringLiteral(" today")));
    EXPECT_TRUE(inWords(at, local.plusDays(1)).endsWith(QStringLiteral(" yesterday")));
    EXPECT_TRUE(inWords(at, local.plusDays(2)).endsWith(QStringLiteral(" on ") + inWords(local)));
    EXPECT_EQ(inWords(at, local).size(), QStringLiteral("06:40 today").size());
}

TEST(Words, codesAreGroupedAndOtherTextsStay) {
    EXPECT_EQ(codeInWords("KD0XPAMAJG"), QStringLiteral("KD0X PAMA JG"));
    EXPECT_EQ(codeInWords("hello"), QStringLiteral("hello"));
}

TEST(Words, numbersCarryNoZerosThatSayNothing) {
    EXPECT_EQ(numberInWords(20), QStringLiteral("20"));
    EXPECT_EQ(numberInWords(18.5), QStringLiteral("18.5"));
    EXPECT_EQ(numberInWords(0.25), QStringLiteral("0.25"));
    EXPECT_EQ(numberInWords(100), QStringLiteral("100"));
    EXPECT_EQ(numberInWords(-0.0001), QStringLiteral("0"));
}

TEST(Words, secondsAreSaidAsOnAClock) {
    EXPECT_EQ(app::secondsInWords(125), "2:05");
    EXPECT_EQ(app::secondsInWords(0), "0:00");
    EXPECT_EQ(app::secondsInWords(59.9), "0:59");
}

TEST(Words, rangesSayTheirEndsAndTheirUnit) {
    using core::BoatPoint, core::PointKind, app::WithUnit;
    const auto said = [](PointKind kind, core::Range limits, WithUnit withUnit = WithUnit::Yes) {
        return app::rangeInWords({.kind = kind, .unit = "kPa", .limits = limits}, withUnit).toStdString();
    };
    EXPECT_EQ(said(PointKind::Measure, {17, 21.5}), "17 to 21.5 kPa");
    EXPECT_EQ(said(PointKind::Measure, {17, 21.5}, WithUnit::No), "17 to 21.5");
    EXPECT_EQ(said(PointKind::Measure, {17, {}}), "at least 17 kPa");
    EXPECT_EQ(said(PointKind::Measure, {{}, 21}), "at most 21 kPa");
    EXPECT_EQ(said(PointKind::Measure, {}), "");
    EXPECT_EQ(said(PointKind::Timed, {60, 305}), "1:00 to 5:05 min");
    EXPECT_EQ(said(PointKind::Timed, {60, {}}, WithUnit::No), "at least 1:00");
    EXPECT_EQ(said(PointKind::Look, {17, 21}), "");
}

TEST(Words, listsEndWithAnd) {
    EXPECT_EQ(listed(QStringList{}), QString());
    EXPECT_EQ(listed(QStringList{"a"}), QStringLiteral("a"));
    EXPECT_EQ(listed(QStringList{"a", "b"}), QStringLiteral("a and b"));
    EXPECT_EQ(listed(QStringList{"a", "b", "c"}), QStringLiteral("a, b and c"));
}

TEST(Words, countsTakeTheRightForm) {
    EXPECT_EQ(counted(1, "%n day", "%n days"), QStringLiteral("1 day"));
    EXPECT_EQ(counted(2, "%n day", "%n days"), QStringLiteral("2 days"));
    EXPECT_EQ(counted(0, "%n day", "%n days"), QStringLiteral("0 days"));
}

} // namespace
} // namespace app

#include "core/check/points.h"

#include "tests/core/check/check_support.h"

#include <cmath>
#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::DoubleNear;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::Optional;

// Design: rules 7.

PointState stateOf(PointKind kind, std::optional<double> value, Range limits = {}) {
    return answerPoints({{{"point", kind, "kPa", limits, true, {}}, value}})[0].state;
}

TEST(Points, aLookIsDoneOnlyByOne) {
    EXPECT_EQ(stateOf(PointKind::Look, 1), PointState::Done);
    EXPECT_EQ(stateOf(PointKind::Look, 0), PointState::Open);
    EXPECT_EQ(stateOf(PointKind::Look, 2), PointState::Open);
    EXPECT_EQ(stateOf(PointKind::Look, {}), PointState::Open);
}

TEST(Points, aMeasureAndATimeIncludeTheirLimits) {
    for (PointKind kind : {PointKind::Measure, PointKind::Timed}) {
        EXPECT_EQ(stateOf(kind, {}, {20.0, 25.0}), PointState::Open);
        EXPECT_EQ(stateOf(kind, 19.9, {20.0, 25.0}), PointState::OutOfRange);
        EXPECT_EQ(stateOf(kind, 20, {20.0, 25.0}), PointState::Done);
        EXPECT_EQ(stateOf(kind, 25, {20.0, 25.0}), PointState::Done);
        EXPECT_EQ(stateOf(kind, 25.1, {20.0, 25.0}), PointState::OutOfRange);
        EXPECT_EQ(stateOf(kind, 1e9, {20.0, {}}), PointState::Done);
        EXPECT_EQ(stateOf(kind, -1e9, {{}, 25.0}), PointState::Done);
        EXPECT_EQ(stateOf(kind, 0, {}), PointState::Done);
        EXPECT_EQ(stateOf(kind, std::nan(""), {20.0, 25.0}), PointState::Open);
    }
}

TEST(Points, stopWhenRequiredAndAreRemarkedOtherwise) {
    CheckBuilder check;
    check.somethingIsAsked();
    check.point("bungs", PointKind::Look, {});
    check.point("keel", PointKind::Measure, 30, {20.0, 25.0}, "kPa");
    check.point("horn", PointKind::Look, {}, {}, {}, false);
    check.point("flush", PointKind::Timed, 100, {180.0, {}}, {}, false);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop point-open", "stop point-out-of-range",
                                             "remark point-open", "remark point-out-of-range"));
    EXPECT_EQ(answer.findings[0].text, "bungs");
    EXPECT_EQ(answer.findings[1].value, 30);
    EXPECT_EQ(answer.findings[1].unit, "kPa");
    EXPECT_EQ(answer.findings[1].low, 20);
    EXPECT_EQ(answer.findings[1].high, 25);
    EXPECT_EQ(answer.points.size(), 4u);
    EXPECT_EQ(answer.points[3].state, PointState::OutOfRange);
}

TEST(Points, makeTheCheckCompleteWhenAllAreDone) {
    CheckBuilder check;
    check.somethingIsAsked();
    check.point("bungs", PointKind::Look, 1);
    check.point("engine", PointKind::Timed, 180, {180.0, 300.0});
    EXPECT_EQ(check.answer().outcome, CheckOutcome::Complete);
}

// Gay-Lussac's law (pressure over absolute temperature is constant at fixed volume), 0 °C = 273.15 K (SI
// brochure) and the standard atmosphere 101.325 kPa (ISO 2533). Worked by hand: (24 + 101.325) · 283.15 /
// 308.15 − 101.325.
TEST(PressureAfloat, followsTheGasLaw) {
    EXPECT_THAT(pressureAfloatKpa(24, 35, 10), DoubleNear(13.83247, 1e-5));
    EXPECT_THAT(pressureAfloatKpa(24, 10, 35), DoubleNear(35.06525, 1e-5));
    EXPECT_DOUBLE_EQ(pressureAfloatKpa(24, 18, 18), 24);
    EXPECT_THAT(pressureAfloatKpa(0, 0, 273.15), DoubleNear(101.325, 1e-9))
        << "twice as hot, twice the pressure";
    EXPECT_THAT(pressureAfloatKpa(24, 35, 10, 98), DoubleNear(14.10222, 1e-5));
}

CheckBuilder withTemperatures(double air, double water) {
    CheckBuilder check;
    check.somethingIsAsked();
    check.point("Air temperature", PointKind::Measure, air, {}, "°C");
    check.point("water temperature", PointKind::Measure, water, {}, "°C");
    check.point("keel chamber", PointKind::Measure, 24, {20.0, 25.0}, "kPa");
    return check;
}

TEST(PressureAfloat, isRemarkedWhereItLeavesTheRangeThoughTheGaugeIsInside) {
    auto check = withTemperatures(35, 10);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark point-out-of-range"));
    EXPECT_EQ(answer.findings[0].text, "keel chamber");
    EXPECT_EQ(answer.findings[0].value, 24);
    EXPECT_THAT(answer.findings[0].afloat, Optional(DoubleNear(13.83247, 1e-5)));
    EXPECT_EQ(answer.points[2].state, PointState::Done);
    EXPECT_THAT(answer.points[2].afloat, Optional(DoubleNear(13.83247, 1e-5)));
    EXPECT_EQ(answer.points[0].afloat, std::nullopt);
}

TEST(PressureAfloat, isSilentWhereItStaysInTheRange) {
    const auto answer = withTemperatures(20, 18).answer();
    EXPECT_THAT(answer.findings, IsEmpty());
    EXPECT_TRUE(answer.points[2].afloat);
}

TEST(PressureAfloat, addsNothingToAGaugeThatIsOutsideAlready) {
    auto check = withTemperatures(35, 10);
    check.input.points[2].value = 26;
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop point-out-of-range"));
    EXPECT_EQ(answer.findings[0].afloat, std::nullopt);
}

TEST(PressureAfloat, needsBothTemperaturesInDegreesCelsius) {
    auto check = withTemperatures(35, 10);
    check.input.points[0].value.reset();
    EXPECT_EQ(check.answer().points[2].afloat, std::nullopt);
    check = withTemperatures(35, 10);
    check.input.points[1].point.unit = "°F";
    EXPECT_EQ(check.answer().points[2].afloat, std::nullopt);
    for (const auto& [air, water] : {std::pair(-300.0, 10.0), {-273.15, 10.0}, {10.0, -273.15}})
        EXPECT_EQ(withTemperatures(air, water).answer().points[2].afloat, std::nullopt) << air;
    EXPECT_EQ(withTemperatures(-300, 10).answer().points[0].state, PointState::OutOfRange) << "it is told";
    EXPECT_EQ(withTemperatures(-273.1, 10).answer().points[0].state, PointState::Done);
    EXPECT_TRUE(withTemperatures(-273.1, -273.1).answer().points[2].afloat) << "cold, but a temperature";
    check = withTemperatures(35, 10);
    check.input.points[2].point.unit = "bar";
    EXPECT_EQ(check.answer().points[2].afloat, std::nullopt);
    check.input.points[2].point.unit = "kpa";
    EXPECT_TRUE(check.answer().points[2].afloat);
}

TEST(PressureAfloat, takesAMeasuredAtmosphere) {
    auto check = withTemperatures(35, 10);
    check.point("atmospheric pressure", PointKind::Measure, 98, {}, "kPa");
    EXPECT_THAT(check.answer().points[2].afloat, Optional(DoubleNear(14.10222, 1e-5)));
    EXPECT_EQ(check.answer().points[3].afloat, std::nullopt);
    check.input.points[3].value = 980;
    check.input.points[3].point.unit = "hPa";
    EXPECT_THAT(check.answer().points[2].afloat, Optional(DoubleNear(14.10222, 1e-5)));
}

} // namespace
} // namespace core

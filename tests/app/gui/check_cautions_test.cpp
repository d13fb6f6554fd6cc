#include "app/gui/check/check_row.h"
#include "app/gui/check/sign_panel.h"
#include "app/gui/club/check_state.h"
#include "app/gui/printout/check_printout.h"
#include "app/text/cautions.h"
#include "tests/app/gui/window_story.h"

namespace {

/// A launch check that is complete, but for what the tests change.
app::CheckState launchOf(core::CheckOutcome outcome = core::CheckOutcome::Complete) {
    const core::Location teal = core::Location::boat("Teal");
    const core::Instant at = *core::Instant::parse("2026-03-14T06:40:00Z");
    app::CheckState state{.open = {.check = "c", .location = teal, .openedAt = at},
                          .answer = {teal, core::Phase::Launch, *core::CalendarDay::from(2026, 3, 14)}};
    state.answer.outcome = outcome;
    state.names = {"Ada Marsh"};
    state.people = {"Ada Marsh"};
    return state;
}

core::PointAnswer timed(const char* name, core::PointState state) {
    core::PointAnswer point;
    point.point.name = name;
    point.point.kind = core::PointKind::Timed;
    point.state = state;
    return point;
}

core::PointAnswer chamber(std::optional<double> afloat) {
    core::PointAnswer point;
    point.point.name = "bow chamber";
    point.point.kind = core::PointKind::Measure;
    point.point.unit = "kPa";
    point.value = 20;
    point.state = core::PointState::Done;
    point.afloat = afloat;
    return point;
}

QString remarkOf(const core::PointAnswer& point) {
    app::CheckState state = launchOf();
    state.answer.points = {point};
    return app::rowsOf(state.answer).back().remark;
}

QString onThePanel(const app::CheckState& state) {
    app::SignPanel panel;
    panel.setState(state);
    return panel.findChild<QLabel*>("cautionLabel")->text() + QLatin1Char('\n') +
           panel.findChild<QLabel*>("withoutJacketLabel")->text();
}

QStringList onTheSheet(const app::CheckState& state) {
    const core::SignedCheck check{
        .check = "c", .by = "Ada Marsh", .at = state.open.openedAt, .urgent = {}, .answer = state.answer};
    return app::printoutOf(check, state).cautions;
}

class CheckCautions : public support::WindowStory {};

} // namespace

TEST_F(CheckCautions, pressureAfloatIsAFirstEstimateInTheRowAndOnTheSheet) {
    EXPECT_TRUE(remarkOf(chamber(15.9)).contains("about 15.9 kPa afloat, a first estimate"));
    EXPECT_FALSE(remarkOf(chamber({})).contains("afloat"));
    app::CheckState state = launchOf();
    state.answer.points = {chamber({})};
    EXPECT_FALSE(onTheSheet(state).contains(app::pressureCaution()));
    EXPECT_FALSE(onThePanel(state).contains(app::pressureCaution()));
    state.answer.points = {chamber(15.9)};
    EXPECT_TRUE(onTheSheet(state).contains(app::pressureCaution()));
    EXPECT_TRUE(onThePanel(state).contains(app::pressureCaution()));
}

TEST_F(CheckCautions, anEngineRunHasItsGuardsBesideIt) {
    EXPECT_TRUE(remarkOf(timed("engine run", core::PointState::Open)).contains(app::engineCaution()));
    EXPECT_TRUE(
        remarkOf(timed("Außenborder: Motorlauf", core::PointState::Open)).contains(app::engineCaution()));
    EXPECT_FALSE(remarkOf(timed("engine run", core::PointState::Done)).contains(app::engineCaution()))
        << "it was done";
    EXPECT_FALSE(remarkOf(timed("radio check", core::PointState::Open)).contains(app::engineCaution()));
    app::CheckState state = launchOf();
    state.answer.points = {timed("radio check", core::PointState::Open)};
    EXPECT_FALSE(onTheSheet(state).contains(app::engineCaution()));
    state.answer.points = {timed("engine run", core::PointState::Done)};
    EXPECT_TRUE(onTheSheet(state).contains(app::engineCaution()));
}

TEST_F(CheckCautions, nobodyGoesAfloatWithoutAJacketWhereALaunchIsUrgent) {
    const app::CheckState urgent = launchOf(core::CheckOutcome::Incomplete);
    EXPECT_TRUE(onThePanel(urgent).contains(app::jacketCaution()));
    EXPECT_TRUE(onTheSheet(urgent).contains(app::jacketCaution()));
    const app::CheckState complete = launchOf();
    EXPECT_FALSE(onThePanel(complete).contains(app::jacketCaution()));
    EXPECT_FALSE(onTheSheet(complete).contains(app::jacketCaution()));
    EXPECT_TRUE(onThePanel(complete).contains(app::fitCaution()));
    EXPECT_TRUE(onTheSheet(complete).contains(app::fitCaution()));
}

TEST_F(CheckCautions, whoeverIsWithoutAJacketIsNamed) {
    app::CheckState state = launchOf(core::CheckOutcome::Incomplete);
    state.context.wornTypes = {"life jacket"};
    core::Finding none;
    none.kind = core::FindingKind::NoFit;
    none.kitType = "life jacket";
    none.people = {"Ada Marsh"};
    state.answer.findings = {none};
    EXPECT_TRUE(onThePanel(state).contains(app::jacketCaution() + " Without one: Ada Marsh."));
}

TEST_F(CheckCautions, kitAndPointsAreAllThatTheBoardKnows) {
    openWindow();
    EXPECT_EQ(window().findChild<QLabel*>("boardCautionLabel")->text(), app::boardCaution());
    EXPECT_TRUE(app::boardCaution().contains(app::launchCaution()));
}

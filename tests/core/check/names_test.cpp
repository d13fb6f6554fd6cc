#include "core/check/boat_check.h"

#include <gmock/gmock.h>

namespace core {
namespace {

TEST(CheckNames, areThoseOfTheCommandLinesDocuments) {
    // In the order of the contract (command line, JSON, `check`).
    const std::vector<std::pair<FindingKind, std::string>> kinds{
        {FindingKind::Missing, "missing"},
        {FindingKind::NoFit, "no-fit"},
        {FindingKind::OutOfDate, "out-of-date"},
        {FindingKind::Undated, "undated"},
        {FindingKind::ServiceOverdue, "service-overdue"},
        {FindingKind::Unserviceable, "unserviceable"},
        {FindingKind::WrittenOff, "written-off"},
        {FindingKind::WrongSize, "wrong-size"},
        {FindingKind::FitNotChecked, "fit-not-checked"},
        {FindingKind::PersonNotChecked, "person-not-checked"},
        {FindingKind::OtherPerson, "other-person"},
        {FindingKind::OtherBoat, "other-boat"},
        {FindingKind::WasMissing, "was-missing"},
        {FindingKind::UnknownTag, "unknown-tag"},
        {FindingKind::DueSoon, "due-soon"},
        {FindingKind::Extra, "extra"},
        {FindingKind::PointOpen, "point-open"},
        {FindingKind::PointOutOfRange, "point-out-of-range"},
        {FindingKind::LogOpen, "log-open"},
        {FindingKind::NotReturned, "not-returned"},
        {FindingKind::Swapped, "swapped"},
    };
    for (const auto& [kind, name] : kinds)
        EXPECT_EQ(nameOf(kind), name);
    EXPECT_STREQ(nameOf(Severity::Stop), "stop");
    EXPECT_STREQ(nameOf(Severity::Remark), "remark");
    EXPECT_STREQ(nameOf(Phase::Launch), "launch");
    EXPECT_STREQ(nameOf(Phase::Return), "return");
    EXPECT_STREQ(nameOf(CheckOutcome::Complete), "complete");
    EXPECT_STREQ(nameOf(CheckOutcome::CompleteWithRemarks), "complete-with-remarks");
    EXPECT_STREQ(nameOf(CheckOutcome::Incomplete), "incomplete");
    EXPECT_STREQ(nameOf(PointState::Done), "done");
    EXPECT_STREQ(nameOf(PointState::Open), "open");
    EXPECT_STREQ(nameOf(PointState::OutOfRange), "out-of-range");
}

TEST(CheckNames, aPhaseIsFoundByItsName) {
    for (const Phase phase : {Phase::Launch, Phase::Return, Phase::Stocktake})
        EXPECT_EQ(phaseOf(nameOf(phase)), phase);
    EXPECT_EQ(phaseOf("anything else"), Phase::Launch);
}

} // namespace
} // namespace core

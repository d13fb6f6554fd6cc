#include "tests/app/flow/control_tag_cases.h"
#include "tests/support/ctl_process.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace small_club {
namespace {

class ControlTagsOnTheCommandLine : public testing::TestWithParam<ControlTagCase> {};

TEST_P(ControlTagsOnTheCommandLine, leaveWhatTheyLeaveInEveryProgram) {
    const support::ScratchFolder folder;
    const auto file = folder / "club.tholepin";
    const std::string check = beginTealsLaunch(file);
    const support::Ran ran =
        support::ctl({"check", file, "--boat", "Teal", "--phase", "launch", "--codes", "-", "--today", today},
                     lines(GetParam().shown));
    EXPECT_TRUE(ran.exit == 0 || ran.exit == 1) << ran.err;
    const auto club = core::Club::open(file, core::Club::Access::ReadOnly);
    ASSERT_TRUE(club);
    expectCame(*club, check, GetParam());
}

INSTANTIATE_TEST_SUITE_P(Shown, ControlTagsOnTheCommandLine, testing::ValuesIn(controlTagCases()),
                         nameOfCase);

} // namespace
} // namespace small_club

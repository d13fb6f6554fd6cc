#include "app/gui/club/check_state.h"

#include "app/flow/check_flow.h"
#include "app/gui/check/check_row.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"
#include "tests/app/flow/control_tag_cases.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/statement_count.h"

#include <stdexcept>

namespace small_club {
namespace {

using app::CheckFlow;
using app::CheckReader;
using support::DatabaseWork;

/// Teal's launch check as the window holds it, on the club's thread.
class WindowsCheck {
public:
    explicit WindowsCheck(const std::filesystem::path& file)
        : club(core::Club::open(file).value())
        , flow(
              CheckFlow::open(club, "Teal", core::Phase::Launch, now(), CheckFlow::Finish::AsksFirst).value())
        , reader(flow.check())
        , state(app::stateOf(flow.check(), reader.read(club, now(), CheckReader::Extent::All).value())) {}

    void show(const std::string& code) {
        ASSERT_TRUE(
            flow.scan(club, core::ScannedText::typed(code), core::SeenBy::Camera, app::FlowTime{now()}));
        read(CheckReader::Extent::Scan);
    }
    void read(CheckReader::Extent extent) { app::apply(state, reader.read(club, now(), extent).value()); }

    core::Club club;
    CheckFlow flow;
    CheckReader reader;
    app::CheckState state;
};

/// More people, entries of the log and replaced tags, of Coot and the shed.
void grow(const std::filesystem::path& file) {
    core::Club club = core::Club::open(file).value();
    const support::ScratchFolder folder;
    std::map<std::string, std::string> files{{"people.csv", csvFiles()["people.csv"]},
                                             {"items.csv", "code,kit_type,boat\n"}};
    const auto codes = club.kit().mintCodes(40);
    for (const std::string& code : codes) {
        files["people.csv"] += "Hand " + code + ",,crew,70\n";
        files["items.csv"] += code + ",paddle,Coot\n";
    }
    writeFiles(folder.path(), files);
    const auto plan = club.register_().importCsv(folder.path(), now().today, false);
    if (!plan || !plan->rejected.empty()) throw std::runtime_error("the club does not grow");
    for (const std::string& code : codes)
        if (!club.kit().replaceTag(code, "Bo Lind", now()) ||
            !club.log().add("Coot", "rub mark " + code, core::Severity::Remark, "Bo Lind", now()))
            throw std::runtime_error("the club does not grow");
}

DatabaseWork workOfOneScan(bool isGrown) {
    const support::ScratchFolder folder;
    beginTealsLaunch(folder / "club.tholepin");
    if (isGrown) grow(folder / "club.tholepin");
    support::StatementCount count;
    WindowsCheck check(folder / "club.tholepin");
    check.show(knife); // prepares what is prepared once
    count.take();
    check.show(paddle1);
    return count.take();
}

TEST(CheckState, aScanReadsTheSameInAClubWithMorePeopleLogAndReplacedTags) {
    const DatabaseWork small = workOfOneScan(false);
    EXPECT_GT(small.statements, 5) << "the counter counts";
    EXPECT_EQ(workOfOneScan(true), small);
}

TEST(CheckState, afterScansIsAsIfEverythingWereReadAnew) {
    const support::ScratchFolder folder;
    const std::string id = beginTealsLaunch(folder / "club.tholepin");
    WindowsCheck check(folder / "club.tholepin");
    for (const std::string& code : {knife, jacketM, jacketL, unknownTag, cootKnife}) {
        check.show(code);
        WindowsCheck anew(folder / "club.tholepin");
        EXPECT_TRUE(app::rowsOf(check.state.answer, check.state.context) ==
                    app::rowsOf(anew.state.answer, anew.state.context))
            << code;
        EXPECT_EQ(check.state.names, anew.state.names);
        EXPECT_EQ(check.state.people, anew.state.people);
        EXPECT_EQ(check.state.context.worn.size(), anew.state.context.worn.size());
    }
    EXPECT_EQ(check.state.context.worn.size(), 2U) << "both jackets";
}

TEST(CheckState, isStaleWhenAnotherProgramWroteAndNotAfterItsOwnScan) {
    const support::ScratchFolder folder;
    beginTealsLaunch(folder / "club.tholepin");
    WindowsCheck check(folder / "club.tholepin");
    EXPECT_FALSE(check.reader.isStale(check.club));
    check.show(knife);
    EXPECT_FALSE(check.reader.isStale(check.club));
    core::Club other = core::Club::open(folder / "club.tholepin").value();
    ASSERT_TRUE(other.log().add("Teal", "bung loose", core::Severity::Remark, "Bo Lind", now()));
    EXPECT_TRUE(check.reader.isStale(check.club));
    EXPECT_TRUE(check.state.log.empty());
    check.read(CheckReader::Extent::All);
    EXPECT_FALSE(check.reader.isStale(check.club));
    EXPECT_EQ(check.state.log.size(), 1U);
}

} // namespace
} // namespace small_club

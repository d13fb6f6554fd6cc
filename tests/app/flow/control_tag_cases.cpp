#include "tests/app/flow/control_tag_cases.h"

#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <cctype>
#include <ostream>
#include <stdexcept>

namespace small_club {
namespace {

using Codes = std::vector<std::string>;

Codes wholeKitThen(const Codes& more) {
    Codes codes = wholeKit();
    codes.insert(codes.end(), more.begin(), more.end());
    return codes;
}

std::set<std::string> wholeKitSeen() {
    const Codes kit = wholeKit();
    return {kit.begin(), kit.end()};
}

std::set<std::string> seenIn(const core::CheckAnswer& answer) {
    std::set<std::string> codes;
    for (const core::LineAnswer& line : answer.lines)
        for (const core::LineItem& item : line.items)
            codes.insert(item.item.id);
    return codes;
}

/// Undo right after the tag for damage.
bool isDamageTakenBack(const ControlTagCase& shown) {
    const Codes wanted{damagedTag, undoTag};
    return std::search(shown.shown.begin(), shown.shown.end(), wanted.begin(), wanted.end()) !=
           shown.shown.end();
}

template <class Value>
Value must(core::Result<Value> result) {
    if (!result) throw std::runtime_error("the club cannot be made");
    return std::move(*result);
}

} // namespace

const std::vector<ControlTagCase>& controlTagCases() {
    static const std::vector<ControlTagCase> cases{
        {"nothing shown", {}, {}, {}, ""},
        {"undo takes the newest sighting back", {knife, paddle1, undoTag}, {knife}, {}, ""},
        {"undo twice takes two back", {knife, paddle1, undoTag, undoTag}, {}, {}, ""},
        {"undo before anything was shown takes back what was told before", {undoTag, knife}, {knife}, {}, ""},
        {"undo takes back what was seen last anew, not what was shown again",
         {knife, paddle1, knife, undoTag},
         {knife},
         {},
         ""},
        {"damaged withdraws the item just seen", {paddle1, knife, damagedTag}, {paddle1, knife}, {knife}, ""},
        {"damaged withdraws the item that was seen again",
         {knife, paddle1, knife, damagedTag},
         {knife, paddle1},
         {knife},
         ""},
        {"damaged with no item before it", {damagedTag, knife}, {knife}, {}, ""},
        {"undo, then damaged: what was taken back is not withdrawn",
         {knife, undoTag, damagedTag},
         {},
         {},
         ""},
        {"undo, then damaged: the item that is then the newest",
         {paddle1, knife, undoTag, damagedTag},
         {paddle1},
         {paddle1},
         ""},
        {"undo of nothing, then damaged", {undoTag, damagedTag}, {}, {}, ""},
        {"undo, shown again, then damaged", {knife, undoTag, knife, damagedTag}, {knife}, {knife}, ""},
        {"damaged, then undo: the damage is taken back", {knife, damagedTag, undoTag}, {knife}, {}, ""},
        {"damaged, then undo twice: the sighting, too", {knife, damagedTag, undoTag, undoTag}, {}, {}, ""},
        {"damaged twice, then undo: one of them stands",
         {knife, damagedTag, paddle1, damagedTag, undoTag},
         {knife, paddle1},
         {knife},
         ""},
        {"damaged after an unknown tag: nobody's", {knife, unknownTag, damagedTag}, {knife}, {}, ""},
        {"damaged after a person's tag", {knife, boTag, damagedTag}, {knife}, {knife}, ""},
        {"damaged after the boat's own tag", {knife, tealTag, damagedTag}, {knife}, {knife}, ""},
        {"damaged after what is no code: nobody's", {knife, "4099052913969", damagedTag}, {knife}, {}, ""},
        {"finish signs by the driver", wholeKitThen({finishTag}), wholeKitSeen(), {}, "Ada Thorne"},
        {"finish, then more: what is signed does not change",
         wholeKitThen({finishTag, undoTag}),
         wholeKitSeen(),
         {},
         "Ada Thorne"},
        {"finish of an incomplete launch signs nothing and the check goes on",
         {knife, finishTag, paddle1},
         {knife, paddle1},
         {},
         ""},
        {"finish of what was found damaged signs nothing",
         wholeKitThen({damagedTag, finishTag}),
         wholeKitSeen(),
         {radio},
         "Ada Thorne"}, // a radio is not required
        {"next boat ends it", {knife, nextBoatTag, paddle1}, {knife}, {}, ""},
        {"put aside ends it", {knife, putAsideTag, paddle1}, {knife}, {}, ""},
        {"the clock, started and stopped", {clockTag, knife, clockTag}, {knife}, {}, "", true},
        {"the clock, started only", {clockTag, knife}, {knife}, {}, ""},
        {"the clock, once more than there are points", {clockTag, clockTag, clockTag}, {}, {}, "", true},
        {"undo leaves the clock alone", {knife, clockTag, undoTag, clockTag}, {}, {}, "", true},
        {"undo takes the engine's run back", {knife, clockTag, clockTag, undoTag}, {knife}, {}, ""},
        {"the clock does not hide what is damaged", {knife, clockTag, damagedTag}, {knife}, {knife}, ""},
    };
    return cases;
}

std::string nameOfCase(const testing::TestParamInfo<ControlTagCase>& info) {
    std::string name = info.param.name;
    for (char& c : name)
        if (!std::isalnum(static_cast<unsigned char>(c))) c = '_';
    return name;
}

void PrintTo(const ControlTagCase& shown, std::ostream* out) {
    *out << shown.name;
}

core::Moment now() {
    return {*core::Instant::parse("2026-03-14T06:40:00Z"), *core::CalendarDay::from(2026, 3, 14)};
}

std::string beginTealsLaunch(const std::filesystem::path& file) {
    const support::ScratchFolder folder;
    writeFiles(folder.path(), csvFiles());
    core::Club club = must(core::Club::create(file, "Small Club"));
    if (!must(club.register_().importCsv(folder.path(), now().today, false)).rejected.empty())
        throw std::runtime_error("a row of the small club is rejected");
    const std::string check = must(club.checks().open("Teal", core::Phase::Launch, now())).check;
    must(club.checks().giveNames(check, {"Ada Thorne", "Bo Lind"}, now()));
    must(club.checks().recordPoint(check, "hull", 1, now()));
    must(club.checks().recordPoint(check, "bow chamber", 20, now()));
    return check;
}

void expectCame(const core::Club& club, const std::string& check, const ControlTagCase& shown) {
    const auto answer = club.checks().answer(check, now().today);
    ASSERT_TRUE(answer);
    EXPECT_EQ(seenIn(*answer), shown.seen);
    EXPECT_EQ(answer->points.back().value.has_value(), shown.isTimed);

    std::set<std::string> withdrawn;
    for (const std::string& code : wholeKit())
        if (club.kit().item(code)->state == core::ItemState::Unserviceable) withdrawn.insert(code);
    EXPECT_EQ(withdrawn, shown.withdrawn);
    const auto log = club.log().entries();
    ASSERT_TRUE(log);
    const auto open =
        std::count_if(log->begin(), log->end(), [](const auto& entry) { return !entry.closed; });
    EXPECT_EQ(open, static_cast<long>(shown.withdrawn.size())) << "an entry for each, and for nothing else";
    EXPECT_EQ(log->size() > shown.withdrawn.size(), isDamageTakenBack(shown)) << "which stays, closed";

    EXPECT_EQ(club.checks().unfinished().empty(), !shown.signedBy.empty());
    const auto boats = club.answers().boatConditions(now().today);
    const auto teal =
        std::find_if(boats.begin(), boats.end(), [](const auto& each) { return each.boat == "Teal"; });
    ASSERT_NE(teal, boats.end());
    EXPECT_EQ(teal->by, shown.signedBy);
}

} // namespace small_club

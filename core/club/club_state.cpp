#include "core/club/club_state.h"

#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/one_slip.h"
#include "core/base/result.h"
#include "core/register/typed_rows.h"
#include "core/store/check_acts.h"
#include "core/store/row_table.h"
#include "core/store/sign_off_tables.h"
#include "core/tag/tag_code.h"

namespace core {

Error noSuchPlace(const std::string& name, const std::string& known) {
    return known.empty() ? Error{ErrorCode::NoPlaces, {name}} : Error{ErrorCode::NoSuchPlace, {name, known}};
}

Error unknownPerson(const std::string& name) {
    return {ErrorCode::NoSuchPerson, {name}};
}

Outcome ClubState::mayDo(Right right) {
    if (const auto prover = pinLock.proverOf(right); !prover) return prover.error();
    pinLock.renew(right);
    return Done{};
}

Result<CheckRun> ClubState::anyRun(const std::string& check) const {
    if (auto run = checkTables::run(*database, check)) return *run;
    return Error{ErrorCode::NoSuchCheck, {check}};
}

Result<CheckRun> ClubState::heldRun(const std::string& check) const {
    auto run = anyRun(check);
    if (run && checkActs::isClosed(*database, check)) return Error{ErrorCode::CheckClosedUnsigned};
    return run;
}

Result<CheckRun> ClubState::openRun(const std::string& check) const {
    auto run = heldRun(check);
    if (run && signOffTables::signOff(*database, check)) return Error{ErrorCode::CheckSigned};
    return run;
}

std::vector<BoatPoint> ClubState::pointsOf(const CheckRun& run) const {
    const auto boat = registerStore.boat(run.location.name);
    return boat ? registerStore.pointsOf(*boat, nameOf(run.phase)) : std::vector<BoatPoint>();
}

bool ClubState::isTouched(const std::string& check) const {
    return !checkActs::standing(*database, check, 1).empty();
}

SignedCheck ClubState::signedCheck(const SignOff& signOff) const {
    return {signOff.check, signOff.by, signOff.at, signOff.urgent,
            signOffTables::signedAnswer(*database, signOff.check).value()};
}

std::vector<std::string> ClubState::tagsLike(const std::string& typed) const {
    constexpr std::size_t most = 3;
    constexpr std::size_t length = 10;
    const std::string text = asPrinted(typed);
    std::vector<std::string> alike;
    if (text.size() + 1 < length || text.size() > length + 1) return alike;
    const auto add = [&](const std::string& tag) {
        if (alike.size() < most && isOneSlip(text, tag)) alike.push_back(groupedTag(tag));
    };
    for (const Item& item : registerStore.allItems())
        add(item.tag);
    for (const SheetId id : {SheetId::Boats, SheetId::People, SheetId::Places})
        for (const Cells& cells : registerStore.all(id))
            add(std::string(cellOf(sheet(id), cells, "tag")));
    return alike;
}

std::string ClubState::newLogText(const std::string& boat, const std::string& code, CalendarDay day,
                                  const std::string& text) const {
    const auto isTaken = [&](const std::string& words) {
        return registerStore.find(SheetId::Log, keyOf(sheet(SheetId::Log), {boat, code, day.iso(), words}));
    };
    std::string words = text;
    for (int number = 2; isTaken(words); ++number)
        words = text + " (" + std::to_string(number) + ")";
    return words;
}

void closeEntry(Ledger& ledger, const LogEntry& entry, const std::string& closing, const std::string& by,
                CalendarDay today) {
    ledger.append(
        rowWritten(
            SheetId::Log,
            {{"boat", entry.boat}, {"code", entry.item.id}, {"day", entry.day.iso()}, {"text", entry.text}},
            {{"closed", today.iso()}, {"closing", closing}}),
        by);
}

int placeBehind(Database& database, const RowChange& change) {
    const Sheet& kind = sheet(change.sheet);
    const auto cellOfKey = [&](const char* column) -> const std::string& {
        return change.keyCells[static_cast<std::size_t>(kind.indexOf(column))];
    };
    const char* owner = cellOfKey("boat").empty() ? "boat_class" : "boat";
    return rowTable::placeBehind(database, kind, owner, cellOfKey(owner));
}

} // namespace core

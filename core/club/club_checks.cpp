#include "core/club/club_checks.h"
#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/club/club_state.h"
#include "core/tag/reason.h"
#include "core/tag/tag_code.h"

#include "core/club/club_kit.h"

#include "core/club/club_register.h"

#include "core/base/plain_text.h"
#include "core/club/scanned_code.h"
#include "core/store/check_acts.h"
#include "core/store/fact_table.h"

#include <algorithm>

namespace core {
namespace {

const char* nameOf(SeenBy seenBy) {
    switch (seenBy) {
    case SeenBy::Camera:
        return "camera";
    case SeenBy::Picture:
        return "picture";
    case SeenBy::Scanner:
        return "scanner";
    case SeenBy::Typed:
        return "typed";
    }
    return "";
}

OpenCheck openCheckOf(const CheckRun& run, bool resumed) {
    return {run.check, run.location, run.phase, run.openedAt, resumed};
}

ItemName tagItself(const TagCode& code) {
    return {code.text(), code.text()};
}

bool stands(const std::vector<Sighting>& sightings, const std::string& code) {
    return std::any_of(sightings.begin(), sightings.end(), [&](const Sighting& s) { return s.code == code; });
}

ErrorCode codeOfUnknownPoint(Phase phase) {
    if (phase == Phase::Stocktake) return ErrorCode::NoSuchPointAtStocktake;
    return phase == Phase::Return ? ErrorCode::NoSuchPointAtReturn : ErrorCode::NoSuchPointAtLaunch;
}

int missingIn(const CheckAnswer& answer) {
    return static_cast<int>(
        std::count_if(answer.findings.begin(), answer.findings.end(),
                      [](const Finding& each) { return each.kind == FindingKind::Missing; }));
}

Error unknownPerson(const std::string& name) {
    return Error{ErrorCode::NoSuchPerson, {name}};
}

} // namespace

Result<OpenCheck> ClubChecks::open(const std::string& name, Phase phase, Moment moment) {
    return guarded([&]() -> Result<OpenCheck> {
        const auto found = ClubRegister(*m_state).boat(name);
        if (!found) return found.error();
        return m_state->openOrResume(found->name, phase, moment);
    });
}

OpenCheck ClubState::openOrResume(const std::string& where, Phase phase, Moment moment) {
    Transaction transaction(*database);
    if (const auto unfinished = checkTables::unfinished(*database, where, phase)) {
        const bool isOfToday = unfinished->openedAt.localDay() == moment.today;
        if (isOfToday || isTouched(unfinished->check)) return openCheckOf(*unfinished, true);
        // Somebody looked at it another day and left: the new check is of today.
        ledger.append(CheckClosed{unfinished->check, {}, moment.at}, {});
    }
    const std::string check = newUuid7(moment.at);
    ledger.append(CheckOpened{check, where, phase, moment.at}, {});
    transaction.commit();
    return {check, locationOf(phase, where), phase, moment.at, false};
}

std::vector<OpenCheck> ClubChecks::unfinished() const {
    std::vector<OpenCheck> open;
    for (const CheckRun& run : checkTables::allUnfinished(*m_state->database))
        if (run.phase == Phase::Stocktake || m_state->isTouched(run.check))
            open.push_back(openCheckOf(run, true));
    return open;
}

Result<OpenCheck> ClubChecks::unfinishedOf(const std::string& where, Phase phase) const {
    return guarded([&]() -> Result<OpenCheck> {
        const auto run = checkTables::unfinished(*m_state->database, where, phase);
        if (!run) return Error{ErrorCode::NoUnfinishedCheck, {where}};
        return openCheckOf(*run, true);
    });
}

std::vector<std::string> ClubChecks::namesOf(const std::string& check) const {
    return checkActs::names(*m_state->database, check);
}

Outcome ClubChecks::giveNames(const std::string& check, const std::vector<std::string>& people,
                              Moment moment) {
    return guarded([&]() -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        std::vector<std::string> names;
        for (const std::string& given : people) {
            const auto person = m_state->registerStore.person(given);
            if (!person) return unknownPerson(given);
            if (std::find(names.begin(), names.end(), person->name) == names.end())
                names.push_back(person->name);
        }
        if (names == namesOf(check)) return Done{};
        Transaction transaction(*m_state->database);
        m_state->ledger.append(NamesGiven{check, names, moment.at}, {});
        transaction.commit();
        return Done{};
    });
}

Result<Scanned> ClubChecks::scan(const std::string& check, const ScannedText& text, SeenBy seenBy,
                                 Moment moment) {
    return guarded([&]() -> Result<Scanned> {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const RegisterStore& store = m_state->registerStore;
        const auto code = scannedCode(text, *m_state->database, store, moment.today.year());
        if (!code) return Scanned{.alike = m_state->tagsLike(text.text)};
        const auto ignored = [&] { return Scanned{Scanned::What::Ignored, tagItself(*code), {}, {}}; };
        const auto see = [&](Scanned scanned) -> Scanned {
            if (stands(checkTables::sightings(*m_state->database, check), code->text())) {
                scanned.what = Scanned::What::SeenBefore;
                return scanned;
            }
            Transaction transaction(*m_state->database); // from here on nobody else writes
            const bool isHeld = m_state->heldCheck.isCurrent(check);
            m_state->ledger.append(TagSeen{check, code->text(), moment.at, nameOf(seenBy)}, {});
            const std::int64_t mark = m_state->database->changeMark();
            transaction.commit();
            if (isHeld) m_state->heldCheck.add(*run, code->text(), mark);
            return scanned;
        };
        switch (code->tagClass()) {
        case TagClass::Control:
            if (const auto control = controlOf(*code))
                return Scanned{Scanned::What::Control, tagItself(*code), {}, control};
            return Scanned{};
        case TagClass::Shelf:
            return ignored();
        case TagClass::Boat: {
            const auto boat = store.boatOfTag(code->text());
            return boat && boat->name == run->location.name
                       ? ignored()
                       : Scanned{Scanned::What::Unread, tagItself(*code), {}, {}};
        }
        case TagClass::Person: {
            const auto person = store.personOfTag(code->text());
            if (!person) return see({Scanned::What::UnknownTag, tagItself(*code), {}, {}});
            auto names = namesOf(check);
            if (std::find(names.begin(), names.end(), person->name) != names.end()) return ignored();
            names.push_back(person->name);
            if (auto given = giveNames(check, names, moment); !given) return given.error();
            return Scanned{Scanned::What::PersonNamed, tagItself(*code), person->name, {}};
        }
        case TagClass::Kit:
            break;
        }
        const auto item = store.item(code->text());
        return see({item ? Scanned::What::NewItem : Scanned::What::UnknownTag,
                    item ? item->name() : tagItself(*code),
                    item ? item->kitType : "",
                    {}});
    });
}

Outcome ClubChecks::recordPoint(const std::string& check, const std::string& point, double value,
                                Moment moment) {
    return guarded([&]() -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto boat = m_state->registerStore.boat(run->location.name);
        const auto points = boat ? m_state->registerStore.pointsOf(*boat, core::nameOf(run->phase))
                                 : std::vector<BoatPoint>();
        const auto found = std::find_if(points.begin(), points.end(), [&](const BoatPoint& p) {
            return foldName(p.name) == foldName(point);
        });
        if (found == points.end()) return Error{codeOfUnknownPoint(run->phase), {point, run->location.name}};
        if (found->kind == PointKind::Look && value != 0 && value != 1)
            return Error{ErrorCode::PointNotMeasured, {found->name}};
        if (checkActs::pointValue(*m_state->database, check, found->name) == value) return Done{};
        Transaction transaction(*m_state->database);
        m_state->ledger.append(PointRecorded{check, found->name, value, moment.at}, {});
        transaction.commit();
        return Done{};
    });
}

Result<CheckAnswer> ClubChecks::answer(const std::string& check, CalendarDay today) const {
    return guarded([&]() -> Result<CheckAnswer> {
        const auto run = m_state->anyRun(check);
        if (!run) return run.error();
        if (auto answer = checkTables::signedAnswer(*m_state->database, check)) return std::move(*answer);
        return judge(m_state->heldCheck.inputOf(*run, today));
    });
}

Result<SignedCheck> ClubChecks::sign(const std::string& check, const std::string& by,
                                     const std::string& urgent, Moment moment, std::optional<int> missing) {
    return guarded([&]() -> Result<SignedCheck> {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto person = m_state->registerStore.person(by);
        if (!person) return unknownPerson(by);
        Transaction transaction(*m_state->database);
        const BoatCheckInput input = m_state->checkStore.inputOf(*run, moment.today);
        const CheckAnswer answer = judge(input);
        const bool incomplete = answer.outcome == CheckOutcome::Incomplete;
        const std::string given(withoutOuterBlanks(urgent));
        if (!given.empty())
            if (const Outcome good = checkReason(given); !good) return good.error();
        if (incomplete && answer.phase == Phase::Launch && given.empty())
            return Error{ErrorCode::KitIncomplete};
        if (answer.phase == Phase::Stocktake && input.seen.empty() && missing != missingIn(answer))
            return Error{ErrorCode::NothingOfClubRead};
        const std::string reason = incomplete && answer.phase == Phase::Launch ? given : std::string();
        m_state->ledger.append(
            CheckSigned{check, run->location.name, run->phase, moment.at, namesOf(check), reason, answer},
            person->name);
        for (const Finding& finding : answer.findings)
            if (finding.kind == FindingKind::NotReturned ||
                (answer.phase == Phase::Stocktake && finding.kind == FindingKind::Missing))
                m_state->ledger.append(stateGiven(finding.item.id, "missing", moment.today, {}, check),
                                       person->name);
        m_state->endUrgentOfWhole(moment.today);
        transaction.commit();
        return SignedCheck{check, person->name, moment.at, reason, answer};
    });
}

Result<OpenCheck> ClubChecks::openStocktake(const std::string& name, Moment moment) {
    return guarded([&]() -> Result<OpenCheck> {
        std::string place;
        std::string known;
        for (const Cells& cells : m_state->registerStore.all(SheetId::Places)) {
            if (foldName(cells[0]) == foldName(name)) place = cells[0];
            known += (known.empty() ? "" : ", ") + cells[0];
        }
        if (place.empty()) return noSuchPlace(name, known);
        return m_state->openOrResume(place, Phase::Stocktake, moment);
    });
}

} // namespace core

#include "core/club/club_checks.h"
#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/club/club_state.h"
#include "core/store/sign_off_tables.h"
#include "core/tag/reason.h"
#include "core/tag/tag_code.h"

#include "core/club/club_events.h"
#include "core/club/club_kit.h"

#include "core/club/club_register.h"

#include "core/base/plain_text.h"
#include "core/club/scanned_code.h"
#include "core/register/typed_rows.h"
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

/// What was marked missing, or seen in another check, since this check saw it is here again.
bool isHereAgain(const ClubState& state, const CheckRun& run, const std::string& id) {
    const auto item = state.registerStore.item(id);
    if (item && item->state == ItemState::Missing) return true;
    const auto newest = checkTables::newestSighting(*state.database, id);
    return newest && newest->check != run.check;
}

/// What was not seen and is now to be looked for.
bool goesMissing(const Finding& finding, Phase phase) {
    return finding.kind == FindingKind::NotReturned ||
           (phase == Phase::Stocktake && finding.kind == FindingKind::Missing);
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

/// What a tag means in that check, whether it was shown before or not.
Scanned meaningOf(const ClubState& state, const CheckRun& run, const TagCode& code, CalendarDay today) {
    using What = Scanned::What;
    const RegisterStore& store = state.registerStore;
    const auto as = [&](What what) { return Scanned{what, tagItself(code), {}, {}}; };
    switch (code.tagClass()) {
    case TagClass::Control: {
        const auto control = controlOf(code);
        return control ? Scanned{What::Control, tagItself(code), {}, control} : Scanned{};
    }
    case TagClass::Shelf:
        return as(What::Ignored);
    case TagClass::Boat: {
        const auto boat = store.boatOfTag(code.text());
        return as(boat && boat->name == run.location.name ? What::Ignored : What::Unread);
    }
    case TagClass::Person: {
        const auto person = store.personOfTag(code.text());
        if (!person) return as(What::UnknownTag);
        const auto names = checkActs::names(*state.database, run.check);
        if (std::find(names.begin(), names.end(), person->name) != names.end()) return as(What::Ignored);
        const bool mayBe = static_cast<bool>(state.mayTakePart(*person, run.location, run.phase, today));
        return {mayBe ? What::PersonNamed : What::Unread, tagItself(code), person->name, {}};
    }
    case TagClass::Kit:
        break;
    }
    const auto item = store.item(code.text());
    return item ? Scanned{What::NewItem, item->name(), item->kitType, {}} : as(What::UnknownTag);
}

} // namespace

Result<OpenCheck> ClubChecks::open(const std::string& name, Phase phase, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<OpenCheck> {
        const auto found = ClubRegister(*m_state).boat(name);
        if (!found) return found.error();
        const bool comesBack = phase == Phase::Return && m_state->checkStore.outOn(found->name);
        if (const Outcome here = stillHere(found->name, found->until, moment.today); !here && !comesBack)
            return here.error();
        return m_state->openOrResume(ledger, found->name, phase, moment);
    });
}

OpenCheck ClubState::openOrResume(Ledger& ledger, const std::string& where, Phase phase, Moment moment) {
    if (const auto unfinished = checkTables::unfinished(*database, where, phase)) {
        const bool isOfToday = unfinished->openedAt.localDay() == moment.today;
        if (isOfToday || isTouched(unfinished->check)) return openCheckOf(*unfinished, true);
        // Somebody looked at it another day and left: the new check is of today.
        ledger.append(CheckClosed{unfinished->check, {}, moment.at}, {});
    }
    const std::string check = newUuid7(moment.at);
    CheckOpened opened{check, where, phase, moment.at, {}};
    if (const auto held = ClubEvents(*this).held(moment.at); held && phase != Phase::Stocktake)
        opened.event = held->event;
    ledger.append(opened, {});
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
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const std::vector<std::string> before = namesOf(check);
        const auto isIn = [](const std::vector<std::string>& names, const std::string& name) {
            return std::find(names.begin(), names.end(), name) != names.end();
        };
        std::vector<std::string> names;
        for (const std::string& given : people) {
            const auto person = m_state->registerStore.person(given);
            if (!person) return unknownPerson(given);
            const Outcome may = m_state->mayTakePart(*person, run->location, run->phase, moment.today);
            if (!may && !isIn(before, person->name)) return may;
            if (!isIn(names, person->name)) names.push_back(person->name);
        }
        if (names != before) ledger.append(NamesGiven{check, names, moment.at}, {});
        return Done{};
    });
}

Result<Scanned> ClubChecks::scan(const std::string& check, const ScannedText& text, SeenBy seenBy,
                                 Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<Scanned> {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto code = scannedCode(text, *m_state->database, m_state->registerStore, moment.today.year());
        if (!code) return Scanned{.alike = m_state->tagsLike(text.text)};
        Scanned meant = meaningOf(*m_state, *run, *code, moment.today);
        if (meant.what == Scanned::What::PersonNamed) {
            auto names = namesOf(check);
            names.push_back(meant.name);
            ledger.append(NamesGiven{check, names, moment.at}, {});
        }
        if (meant.what != Scanned::What::NewItem && meant.what != Scanned::What::UnknownTag) return meant;
        const bool isItem = meant.what == Scanned::What::NewItem;
        const bool isAgain = stands(checkTables::sightings(*m_state->database, check), code->text());
        if (isAgain) meant.what = Scanned::What::SeenBefore;
        if (isAgain && !(isItem && isHereAgain(*m_state, *run, code->text()))) return meant;
        const bool isHeld = !isAgain && m_state->heldCheck.isCurrent(check);
        const bool isSeen = seenBy == SeenBy::Camera || seenBy == SeenBy::Picture;
        ledger.append(
            TagSeen{check, code->text(), moment.at, nameOf(seenBy), isSeen ? text.print : std::nullopt}, {});
        if (isItem) m_state->endUrgentOfWhole(ledger, moment.today);
        if (isHeld) m_state->heldCheck.add(*run, code->text());
        return meant;
    });
}

Outcome ClubChecks::recordPoint(const std::string& check, const std::string& point, double value,
                                Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto points = m_state->pointsOf(*run);
        const auto found = std::find_if(points.begin(), points.end(), [&](const BoatPoint& p) {
            return foldName(p.name) == foldName(point);
        });
        if (found == points.end()) return Error{codeOfUnknownPoint(run->phase), {point, run->location.name}};
        if (found->kind == PointKind::Look && value != 0 && value != 1)
            return Error{ErrorCode::PointNotMeasured, {found->name}};
        if (checkActs::pointValue(*m_state->database, check, found->name) == value) return Done{};
        ledger.append(PointRecorded{check, found->name, value, moment.at}, {});
        return Done{};
    });
}

Result<CheckAnswer> ClubChecks::answer(const std::string& check, CalendarDay today) const {
    return guarded([&]() -> Result<CheckAnswer> {
        const auto run = m_state->anyRun(check);
        if (!run) return run.error();
        if (auto answer = signOffTables::signedAnswer(*m_state->database, check)) return std::move(*answer);
        return judge(m_state->heldCheck.inputOf(*run, today));
    });
}

Result<SignedCheck> ClubChecks::sign(const std::string& check, const std::string& by,
                                     const std::string& urgent, Moment moment, std::optional<int> missing,
                                     const Pin* pin) {
    const auto write = [&](Ledger& ledger) -> Result<SignedCheck> {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto person = m_state->registerStore.person(by);
        if (!person) return unknownPerson(by);
        if (const Outcome may = m_state->mayTakePart(*person, run->location, run->phase, moment.today); !may)
            return may.error();
        if (ledger.prover().empty() && m_state->isPinAsked(*person, run->phase))
            return Error{ErrorCode::SignatureNeedsPin, {person->name}};
        const BoatCheckInput input = m_state->checkStore.inputOf(*run, moment.today);
        const CheckAnswer answer = judge(input);
        const bool incomplete = answer.outcome == CheckOutcome::Incomplete;
        const auto given =
            withoutOuterBlanks(urgent).empty() ? Result<std::string>(std::string()) : reasonFrom(urgent);
        if (!given) return given.error();
        if (incomplete && answer.phase == Phase::Launch && given->empty())
            return Error{ErrorCode::KitIncomplete};
        if (answer.phase == Phase::Stocktake && input.seen.empty() && missing != missingIn(answer))
            return Error{ErrorCode::NothingOfClubRead};
        const std::string reason = incomplete && answer.phase == Phase::Launch ? *given : std::string();
        ledger.append(
            CheckSigned{check, run->location.name, run->phase, moment.at, namesOf(check), reason, answer},
            person->name);
        for (const Finding& finding : answer.findings)
            if (goesMissing(finding, answer.phase))
                ledger.append(stateGiven(finding.item.id, "missing", moment.today, {}, check), person->name);
        m_state->endUrgentOfWhole(ledger, moment.today);
        return SignedCheck{check, person->name, moment.at, reason, answer};
    };
    return pin == nullptr ? m_state->write(Right::Anybody, write) : m_state->writeAs(by, *pin, write);
}

Result<OpenCheck> ClubChecks::openStocktake(const std::string& name, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<OpenCheck> {
        const auto place = placeHere(*m_state, name, moment.today);
        if (!place) return place.error();
        return m_state->openOrResume(ledger, *place, Phase::Stocktake, moment);
    });
}

} // namespace core

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/check/finding.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"

#include "core/club/club_register.h"

#include "core/answers/evidence.h"
#include "core/record/answer_json.h"
#include "core/store/fact_table.h"
#include "core/store/tag_tables.h"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <tuple>

namespace core {
namespace {

SignedCheck signedCheckOf(const SignOff& signOff) {
    return {signOff.check, signOff.by, Instant::parse(signOff.at).value_or(Instant::fromMillis(0)),
            signOff.urgent, answerFrom(nlohmann::json::parse(signOff.answer))};
}

bool saysOverdue(const Finding& finding) {
    const bool speaksOfDates =
        finding.kind == FindingKind::OutOfDate || finding.kind == FindingKind::ServiceOverdue;
    return speaksOfDates && finding.due && finding.due->state == DueState::Passed;
}

/// What was seen at the launch, as that check's own answer had it.
std::vector<AboardItem> aboardOf(Database& database, const CheckAnswer& answer, const std::string& check) {
    std::map<std::string, AboardItem> items;
    for (const Sighting& sighting : checkTables::sightings(database, check)) {
        AboardItem& item = items[sighting.code];
        if (item.code.empty()) item = {.code = sighting.code, .seenAt = Instant::parse(sighting.at)};
        if (item.seenBy.empty()) item.seenBy = sighting.seenBy;
    }
    for (const LineAnswer& line : answer.lines)
        for (const LineItem& seen : line.items) {
            AboardItem& item = items[seen.code];
            item.code = seen.code;
            item.kitType = seen.kitType;
            item.counted = item.counted || seen.counts;
            item.due = seen.due;
            if (!seen.wornBy.empty()) item.wornBy = seen.wornBy;
        }
    for (const Finding& finding : answer.findings) {
        const auto item = items.find(finding.code);
        if (item == items.end()) continue;
        if (item->second.kitType.empty()) item->second.kitType = finding.kitType;
        if (saysOverdue(finding)) {
            item->second.inDate = false;
            if (!item->second.passed || finding.due->isPassedStop()) item->second.passed = finding.due;
        }
        if (finding.kind == FindingKind::Undated && !item->second.passed) item->second.inDate = std::nullopt;
    }
    std::vector<AboardItem> aboard;
    for (auto& [code, item] : items) {
        item.tag = tagTables::tagOf(database, code);
        aboard.push_back(std::move(item));
    }
    std::stable_sort(aboard.begin(), aboard.end(), [](const AboardItem& a, const AboardItem& b) {
        return std::tie(a.kitType, a.code) < std::tie(b.kitType, b.code);
    });
    return aboard;
}

/// The last of that phase signed up to an instant; signatures are ordered by when the check was, then by when
/// it was recorded.
std::optional<SignOff> lastUntil(const std::vector<SignOff>& signOffs, Phase phase, Instant on) {
    std::optional<SignOff> last;
    for (const SignOff& each : signOffs)
        if (each.phase == nameOf(phase) && each.at <= on.iso() &&
            (!last || std::tie(last->at, last->stamp) < std::tie(each.at, each.stamp)))
            last = each;
    return last;
}

std::optional<SignOff> firstReturnAfter(const std::vector<SignOff>& signOffs, const SignOff& launch) {
    std::optional<SignOff> first;
    for (const SignOff& each : signOffs)
        if (each.phase == nameOf(Phase::Return) &&
            std::tie(launch.at, launch.stamp) < std::tie(each.at, each.stamp) &&
            (!first || std::tie(each.at, each.stamp) < std::tie(first->at, first->stamp)))
            first = each;
    return first;
}

} // namespace

Result<Evidence> ClubAnswers::evidence(const std::string& name, Instant on) const {
    return guarded([&]() -> Result<Evidence> {
        const auto found = ClubRegister(*m_state).boat(name);
        if (!found) return found.error();
        Database& database = *m_state->database;
        Evidence evidence{.boat = found->name, .on = on, .head = m_state->ledger.head()};
        const auto signOffs = checkTables::signOffsOf(database, found->name);
        const auto launch = lastUntil(signOffs, Phase::Launch, on);
        if (!launch) return evidence;
        evidence.launch = signedCheckOf(*launch);
        evidence.people = checkTables::names(database, launch->check);
        if (const auto fact = factTable::byStamp(database, launch->stamp)) {
            evidence.factHash = fact->hash;
            evidence.device = fact->device;
            evidence.seq = fact->seq;
        }
        const auto back = firstReturnAfter(signOffs, *launch);
        if (back) evidence.back = signedCheckOf(*back);
        evidence.out = !back || back->at > on.iso();
        if (evidence.out) evidence.aboard = aboardOf(database, evidence.launch->answer, launch->check);
        return evidence;
    });
}

} // namespace core

#include "core/base/error_code.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/register/cell_values.h"
#include "core/register/typed_rows.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <fmt/ranges.h>

// Rows of the register that are taken away: those that somebody made in error.

namespace core {
namespace {

using Words = std::vector<std::string>;

/// The first of them, as many as a sentence may hold.
std::string someOf(Words words) {
    constexpr std::size_t most = 6;
    if (words.size() > most) {
        words.resize(most);
        words.emplace_back("…");
    }
    return fmt::format("{}", fmt::join(words, ", "));
}

/// Service records that stand of a rule: an export of them without it would not come in again.
int recordsOf(const ClubState& state, const std::string& kitType, const std::string& part,
              const std::string& rule) {
    int count = 0;
    for (const ItemRecord& each : state.registerStore.allRecords())
        if (sameName(each.item.kitType, kitType))
            count += static_cast<int>(std::ranges::count_if(each.services, [&](const ServiceRecord& record) {
                return sameName(record.part, part) && sameName(record.rule, rule);
            }));
    return count;
}

Outcome ruleIsFree(const ClubState& state, const Cells& rule) {
    const int records = recordsOf(state, rule[0], rule[1], rule[2]);
    if (records == 0) return Done{};
    return Error{ErrorCode::RuleWithRecords, {rule[2], rule[0], std::to_string(records)}};
}

/// NotAllowed while any item is of that kit type, or of that size of it.
Outcome noItemIsOf(ClubState& state, SheetId sheet, const Cells& row) {
    const auto items = state.registerStore.allItems();
    const auto count = std::ranges::count_if(items, [&](const Item& item) {
        return sameName(item.kitType, row[0]) && (sheet == SheetId::KitTypes || sameName(item.size, row[1]));
    });
    if (count == 0) return Done{};
    return Error{ErrorCode::RowHasItems, {ClubRegister(state).nameOfRow(sheet, row), std::to_string(count)}};
}

bool takes(const ManifestLine& line, const std::string& kitType) {
    return std::ranges::any_of(line.substitutes,
                               [&](const std::string& each) { return sameName(each, kitType); });
}

/// Names of that sheet's rows that are of the kit type.
Words rowsOf(const ClubState& state, ClubRegister& register_, SheetId sheet, const std::string& kitType) {
    Words names;
    for (const Cells& row : state.registerStore.all(sheet))
        if (sameName(row.front(), kitType)) names.push_back(register_.nameOfRow(sheet, row));
    return names;
}

Outcome kitTypeIsFree(ClubState& state, const std::string& kitType) {
    ClubRegister register_(state);
    Words lines;
    for (const Cells& row : state.registerStore.all(SheetId::ManifestLines))
        if (const ManifestLine line = manifestLineFrom(row);
            line.quantity > 0 && (sameName(line.kitType, kitType) || takes(line, kitType)))
            lines.push_back(register_.nameOfRow(SheetId::ManifestLines, row));
    if (!lines.empty()) return Error{ErrorCode::KitTypeInManifests, {kitType, someOf(lines)}};
    Words rows = rowsOf(state, register_, SheetId::Sizes, kitType);
    for (std::string& rule : rowsOf(state, register_, SheetId::LifeRules, kitType))
        rows.push_back(std::move(rule));
    if (!rows.empty()) return Error{ErrorCode::KitTypeHasRows, {kitType, someOf(rows)}};
    Words words;
    for (const ToldWord& word : register_.toldWords())
        if (word.column == "kit_type" && sameName(word.means, kitType)) words.push_back(word.word);
    if (!words.empty()) return Error{ErrorCode::KitTypeMeant, {kitType, someOf(words)}};
    return Done{};
}

Outcome isFree(ClubState& state, SheetId sheet, const Cells& row) {
    if (sheet == SheetId::LifeRules) return ruleIsFree(state, row);
    if (sheet != SheetId::KitTypes && sheet != SheetId::Sizes) return Done{};
    if (const Outcome none = noItemIsOf(state, sheet, row); !none) return none;
    return sheet == SheetId::KitTypes ? kitTypeIsFree(state, row.front()) : Outcome(Done{});
}

RowWritten withoutRow(const Sheet& sheet, const Cells& row) {
    RowWritten gone =
        rowWritten({.sheet = sheet.id, .keyCells = Cells(row.begin(), row.begin() + sheet.keyColumns)});
    gone.isGone = true;
    return gone;
}

/// Lines that ask for none of anything, which nobody sees any more, still name what was asked for.
void dropFromEmptyLines(ClubState& state, Ledger& ledger, const std::string& kitType, const std::string& by,
                        Moment moment) {
    const Sheet& lines = sheet(SheetId::ManifestLines);
    for (const Cells& row : state.registerStore.all(lines.id)) {
        const ManifestLine line = manifestLineFrom(row);
        const bool isOfIt = sameName(line.kitType, kitType);
        if (!isOfIt && !takes(line, kitType)) continue;
        RowWritten written = withoutRow(lines, row);
        written.isGone = isOfIt;
        written.at = moment.at;
        Words others = line.substitutes;
        std::erase_if(others, [&](const std::string& each) { return sameName(each, kitType); });
        if (!isOfIt)
            written.set = {{lines.indexOf("substitutes"), fmt::format("{}", fmt::join(others, ";"))}};
        ledger.append(written, by);
    }
}

} // namespace

bool ClubRegister::mayRemove(SheetId id) {
    return sheet(id).losesRows && id != SheetId::Use;
}

Outcome ClubRegister::remove(SheetId id, const Cells& seen, const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        const Sheet& sheet = core::sheet(id);
        const auto row = mayRemove(id) ? m_state->registerStore.find(id, keyOf(sheet, seen)) : std::nullopt;
        const std::string name = nameOfRow(id, seen);
        if (!row) return Error{ErrorCode::NoSuchRow, {std::string(sheet.name()), name}};
        if (*row != seen) return Error{ErrorCode::RowChanged, {name}};
        if (const Outcome free = isFree(*m_state, id, *row); !free) return free;
        if (id == SheetId::KitTypes) dropFromEmptyLines(*m_state, ledger, row->front(), by, moment);
        RowWritten gone = withoutRow(sheet, *row);
        if (sheet.keepsOrder) gone.at = moment.at; // the manifests' record tells when
        ledger.append(gone, by);
        m_state->heldCheck.forget(); // it judges by what was there before
        m_state->endUrgentOfWhole(ledger, moment.today);
        return Done{};
    });
}

} // namespace core

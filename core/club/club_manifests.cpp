#include "core/club/club_state.h"

#include "core/exchange/csv_import.h"
#include "core/register/manifest_record.h"
#include "core/register/typed_rows.h"
#include "core/store/manifest_store.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace core {
namespace {

using CellTexts = std::vector<std::pair<std::string, std::string>>;

std::string textOf(const std::vector<std::string>& names) {
    return fmt::format("{}", fmt::join(names, ";"));
}

const char* columnOf(const ManifestOwner& owner) {
    return owner.kind == ManifestOwner::Kind::Boat ? "boat" : "boat_class";
}

/// The row's key and the cells that say something else than what stands there.
CellTexts cellsOf(const ManifestOwner& owner, const ManifestLine& line,
                  const std::optional<ManifestLine>& before) {
    CellTexts cells{{columnOf(owner), owner.name}, {"kit_type", line.kitType}};
    const auto add = [&](const char* column, const std::string& text, bool isNew) {
        if (isNew) cells.emplace_back(column, text);
    };
    add("quantity", std::to_string(line.quantity), !before || before->quantity != line.quantity);
    add("required", line.required ? "yes" : "no", !before || before->required != line.required);
    add("substitutes", textOf(line.substitutes), !before || before->substitutes != line.substitutes);
    add("note", line.note, !before || before->note != line.note);
    return cells;
}

std::string keyOfLine(const ManifestOwner& owner, const ManifestLine& line) {
    const bool isBoat = owner.kind == ManifestOwner::Kind::Boat;
    return keyOf(sheet(SheetId::ManifestLines),
                 {isBoat ? std::string() : owner.name, isBoat ? owner.name : std::string(), line.kitType});
}

bool isAskedStill(const Manifest& now, const ManifestLine& seen) {
    return std::any_of(now.lines.begin(), now.lines.end(),
                       [&](const AskedLine& asked) { return asked.line == seen; });
}

} // namespace

ManifestRecord Club::manifests() const {
    return manifestStore::read(*m_state->database);
}

Outcome Club::changeManifest(const ManifestOwner& owner, const ManifestLine& wanted, const std::string& by,
                             Moment moment, const ManifestLine* seen) {
    return guarded([&]() -> Outcome {
        ManifestLine line = wanted;
        if (line.quantity < 0)
            return Error{
                ErrorKind::BadInput, "a manifest asks for no less than nothing", {}, "write 0 or more"};
        if (owner.kind == ManifestOwner::Kind::BoatClass &&
            m_state->registerStore.where(SheetId::Boats, "boat_class", owner.name).empty())
            return notFound(fmt::format("there is no class of boat '{}' in this club", owner.name),
                            "name a class as it stands in boats.csv");
        const Sheet& lines = sheet(SheetId::ManifestLines);
        Transaction transaction(*m_state->database);
        if (seen != nullptr && !isAskedStill(manifestStore::read(*m_state->database).now(owner), *seen))
            return Error{ErrorKind::NotAllowed,
                         fmt::format("the line of {} was changed meanwhile", seen->kitType),
                         {},
                         "look at it again, then write it"};
        const auto stored = m_state->registerStore.find(lines.id, keyOfLine(owner, line));
        const auto before = stored ? std::optional(manifestLineFrom(*stored)) : std::nullopt;
        if (before && before->quantity == 0 && line.substitutes.empty())
            line.substitutes = before->substitutes;
        const auto plan = planSheet(lines, sheetOfRow(lines, cellsOf(owner, line, before)),
                                    m_state->registerStore, moment.today, [] { return std::string(); });
        if (!plan.rejected.empty())
            return Error{ErrorKind::BadInput, plan.rejected.front().reason, {}, "correct the line"};
        for (const RowChange& change : plan.changes) {
            auto body = bodyOf(change);
            body["at"] = moment.at.iso();
            m_state->ledger.append(std::string(lines.table), body, by);
        }
        transaction.commit();
        return Done{};
    });
}

} // namespace core

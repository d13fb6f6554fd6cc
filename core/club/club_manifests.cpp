#include "core/club/club_manifests.h"

#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/manifest_writer.h"
#include "core/exchange/csv_import.h"

#include "core/register/typed_rows.h"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace core {
namespace {

CellTexts keyOfLine(const ManifestLine& line) {
    return {{"kit_type", line.kitType}};
}

/// The cells that say something else than what stands there.
CellTexts cellsOfLine(const ManifestLine& line, const std::optional<ManifestLine>& before) {
    CellTexts cells;
    const auto add = [&](const char* column, const std::string& text, bool isNew) {
        if (isNew) cells.emplace_back(column, text);
    };
    add("quantity", std::to_string(line.quantity), !before || before->quantity != line.quantity);
    add("required", line.required ? "yes" : "no", !before || before->required != line.required);
    add("substitutes", fmt::format("{}", fmt::join(line.substitutes, ";")),
        !before || before->substitutes != line.substitutes);
    add("note", line.note, !before || before->note != line.note);
    return cells;
}

bool isAskedStill(const Manifest& now, const ManifestLine& seen) {
    return std::any_of(now.lines.begin(), now.lines.end(),
                       [&](const AskedLine& asked) { return asked.line == seen; });
}

Error lineChanged(const ManifestLine& seen) {
    return Error{ErrorCode::LineChanged, {seen.kitType}};
}

} // namespace

Result<ManifestRecord> ClubManifests::read() const {
    return guarded([&]() -> Result<ManifestRecord> {
        const ReadSnapshot asOfNow(*m_state->database);
        return m_state->registerStore.manifestRecord();
    });
}

Outcome ClubManifests::changeLine(const ManifestOwner& owner, const ManifestLine& wanted,
                                  const std::string& by, Moment moment, const ManifestLine* seen) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        ManifestLine line = wanted;
        if (line.quantity < 0) return Error{ErrorCode::QuantityNegative};
        ManifestWriter writer(*m_state, ledger, SheetId::ManifestLines, owner, by, moment);
        if (auto known = writer.checkOwner(); !known) return known;
        if (seen != nullptr && !isAskedStill(writer.now(), *seen)) return lineChanged(*seen);
        const auto stored = writer.find(keyOfLine(line));
        const auto before = stored ? std::optional(manifestLineFrom(*stored)) : std::nullopt;
        if (seen == nullptr && before && before->quantity == 0 && line.substitutes.empty())
            line.substitutes = before->substitutes;
        if (auto written = writer.write(keyOfLine(line), cellsOfLine(line, before)); !written) return written;
        return writer.done();
    });
}

std::vector<Error> ClubManifests::warningsOfLine(const ManifestOwner& owner, const ManifestLine& line,
                                                 CalendarDay today) const {
    const CellTexts row = manifestRow(owner, keyOfLine(line), cellsOfLine(line, {}));
    ImportPlan plan = planRows(sheet(SheetId::ManifestLines), {row}, m_state->registerStore, today);
    std::vector<Error> warnings;
    for (RejectedRow& each : plan.warnings)
        warnings.push_back(std::move(each.reason));
    return warnings;
}

Outcome ClubManifests::dropOwnLine(const ManifestOwner& owner, const ManifestLine& seen,
                                   const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        ManifestWriter writer(*m_state, ledger, SheetId::ManifestLines, owner, by, moment);
        const bool isOfClass = owner.kind == ManifestOwner::Kind::BoatClass;
        // What is asked of a boat is not to go unseen, with a line that was looked at as nobody's.
        if (isOfClass && writer.checkOwner()) return lineChanged(seen);
        if (!isOfClass && !writer.find(keyOfLine(seen)))
            return Error{ErrorCode::NoOwnLine, {owner.name, seen.kitType}};
        if (!isAskedStill(writer.now(), seen)) return lineChanged(seen);
        writer.drop(keyOfLine(seen));
        return writer.done();
    });
}

} // namespace core

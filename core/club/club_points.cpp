#include "core/club/club_manifests.h"

#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/manifest_writer.h"

#include "core/register/typed_rows.h"

#include <algorithm>
#include <fmt/format.h>

namespace core {
namespace {

CellTexts keyOfPoint(const PhasePoint& point) {
    return {{"phase", point.phase}, {"point", point.point.name}};
}

bool isSameKey(const PhasePoint& a, const PhasePoint& b) {
    return foldName(a.phase) == foldName(b.phase) && foldName(a.point.name) == foldName(b.point.name);
}

/// With a full stop and no exponent, whatever the machine's language; an import takes needless zeros off.
std::string limitText(const std::optional<double>& value) {
    return value ? fmt::format("{:.6f}", *value) : std::string();
}

/// The cells that say something else than what stands there.
CellTexts cellsOfPoint(const BoatPoint& point, const std::optional<BoatPoint>& before) {
    CellTexts cells;
    const auto add = [&](const char* column, const std::string& text, bool isNew) {
        if (isNew) cells.emplace_back(column, text);
    };
    add("kind", std::string(nameOf(point.kind)), !before || before->kind != point.kind);
    add("unit", point.unit, !before || before->unit != point.unit);
    add("low", limitText(point.limits.low), !before || before->limits.low != point.limits.low);
    add("high", limitText(point.limits.high), !before || before->limits.high != point.limits.high);
    add("required", point.required ? "yes" : "no", !before || before->required != point.required);
    add("note", point.note, !before || before->note != point.note);
    return cells;
}

const AskedPoint* findPoint(const Manifest& manifest, const PhasePoint& wanted) {
    const auto found =
        std::find_if(manifest.points.begin(), manifest.points.end(), [&](const AskedPoint& each) {
            return isSameKey({each.phase, each.point}, wanted);
        });
    return found == manifest.points.end() ? nullptr : &*found;
}

/// Why `seen` cannot be changed or dropped; nothing when it is asked still.
std::optional<Error> pointFault(const Manifest& now, const PhasePoint& seen) {
    const AskedPoint* asked = findPoint(now, seen);
    if (asked != nullptr && asked->point == seen.point) return std::nullopt;
    return Error{ErrorCode::PointChanged, {seen.point.name}};
}

Error takenName(const PhasePoint& point) {
    const bool isReturn = foldName(point.phase) == nameOf(Phase::Return);
    return {isReturn ? ErrorCode::PointTakenAtReturn : ErrorCode::PointTakenAtLaunch, {point.point.name}};
}

/// A point is known by its name: a boat whose own point replaces the class's would be asked both from then
/// on.
Outcome mayRename(ClubState& state, Ledger& ledger, const ManifestOwner& owner, const AskedPoint& old,
                  Moment moment) {
    const std::string& name = old.point.name;
    if (owner.kind == ManifestOwner::Kind::Boat) {
        if (old.isOwn && !old.ofClass) return Done{};
        return Error{ErrorCode::PointOfClass, {name}};
    }
    for (const Cells& boat : state.registerStore.where(SheetId::Boats, "boat_class", owner.name)) {
        const std::string boatName = boatFrom(boat).name;
        const ManifestWriter own(state, ledger, SheetId::Points, {ManifestOwner::Kind::Boat, boatName}, {},
                                 moment);
        if (own.find(keyOfPoint({old.phase, old.point})))
            return Error{ErrorCode::BoatHasOwnPoint, {boatName, name}};
    }
    return Done{};
}

} // namespace

Outcome ClubManifests::changePoint(const ManifestOwner& owner, const PhasePoint& wanted,
                                   const std::string& by, Moment moment, const PhasePoint* seen) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        ManifestWriter writer(*m_state, ledger, SheetId::Points, owner, by, moment);
        if (auto known = writer.checkOwner(); !known) return known;
        const Manifest now = writer.now();
        if (seen != nullptr)
            if (auto fault = pointFault(now, *seen)) return *fault;
        const bool isRenamed = seen != nullptr && !isSameKey(*seen, wanted);
        if ((seen == nullptr || isRenamed) && findPoint(now, wanted) != nullptr) return takenName(wanted);
        std::optional<int> place;
        if (isRenamed) {
            if (auto may = mayRename(*m_state, ledger, owner, *findPoint(now, *seen), moment); !may)
                return may;
            place = writer.placeOf(keyOfPoint(*seen));
            writer.drop(keyOfPoint(*seen));
        }
        const auto stored = writer.find(keyOfPoint(wanted));
        const auto before = stored ? std::optional(pointFrom(*stored).point) : std::nullopt;
        if (auto written = writer.write(keyOfPoint(wanted), cellsOfPoint(wanted.point, before), place);
            !written)
            return written;
        return writer.done();
    });
}

Outcome ClubManifests::dropPoint(const ManifestOwner& owner, const PhasePoint& seen, const std::string& by,
                                 Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        ManifestWriter writer(*m_state, ledger, SheetId::Points, owner, by, moment);
        if (auto fault = pointFault(writer.now(), seen)) return *fault;
        if (!writer.find(keyOfPoint(seen)))
            return Error{ErrorCode::NoOwnPoint, {owner.name, seen.point.name}};
        writer.drop(keyOfPoint(seen));
        return writer.done();
    });
}

} // namespace core

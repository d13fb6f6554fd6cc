#include "core/register/manifest.h"

#include "core/register/sheets.h"

#include <algorithm>
#include <tuple>

namespace core {
namespace {

bool isSame(const AskedLine& a, const AskedLine& b) {
    return foldName(a.line.kitType) == foldName(b.line.kitType);
}

bool isSame(const AskedPoint& a, const AskedPoint& b) {
    return a.phase == b.phase && foldName(a.point.name) == foldName(b.point.name);
}

bool isAsked(const AskedLine& line) {
    return line.line.quantity > 0;
}

bool isAsked(const AskedPoint&) {
    return true;
}

const ManifestLine& valueOf(const AskedLine& line) {
    return line.line;
}

const BoatPoint& valueOf(const AskedPoint& point) {
    return point.point;
}

/// The own row in the place of the class's.
template <class Asked>
void replace(Asked& ofClass, Asked own) {
    own.isOwn = true;
    if (!asksTheSame(valueOf(ofClass), valueOf(own)))
        own.difference = !isAsked(ofClass) ? Difference::Added
                         : isAsked(own)    ? Difference::Changed
                                           : Difference::TakenAway;
    if (isAsked(ofClass)) own.ofClass = valueOf(ofClass);
    ofClass = std::move(own);
}

template <class Asked>
std::vector<Asked> ownOver(std::vector<Asked> ofClass, const std::vector<Asked>& own) {
    for (const Asked& mine : own) {
        const auto same = std::find_if(ofClass.begin(), ofClass.end(),
                                       [&](const Asked& each) { return isSame(each, mine); });
        if (same != ofClass.end()) {
            replace(*same, mine);
            continue;
        }
        ofClass.push_back(mine);
        ofClass.back().difference = Difference::Added;
        ofClass.back().isOwn = true;
    }
    // Neither asks it: nothing to be seen, and no difference.
    std::erase_if(ofClass, [](const Asked& each) { return !isAsked(each) && !each.ofClass; });
    return ofClass;
}

template <class Asked>
const Asked* findIn(const std::vector<Asked>& rows, const Asked& wanted) {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Asked& each) { return isSame(each, wanted); });
    return found != rows.end() && isAsked(*found) ? &*found : nullptr;
}

ManifestChange change(const AskedLine* before, const AskedLine* after) {
    ManifestChange change;
    if (before) change.lineBefore = before->line;
    if (after) change.lineAfter = after->line;
    return change;
}

ManifestChange change(const AskedPoint* before, const AskedPoint* after) {
    ManifestChange change{.phase = (after ? after : before)->phase};
    if (before) change.pointBefore = before->point;
    if (after) change.pointAfter = after->point;
    return change;
}

template <class Asked>
void addChanges(const std::vector<Asked>& before, const std::vector<Asked>& after,
                std::vector<ManifestChange>& changes) {
    for (const Asked& now : after) {
        const Asked* then = findIn(before, now);
        if (isAsked(now) && (!then || !asksTheSame(valueOf(*then), valueOf(now))))
            changes.push_back(change(then, &now));
    }
    for (const Asked& then : before)
        if (isAsked(then) && !findIn(after, then)) changes.push_back(change(&then, nullptr));
}

} // namespace

std::vector<std::string> possibleSubstitutes(const std::vector<KitType>& kitTypes,
                                             const std::string& kitType) {
    const auto own = std::find_if(kitTypes.begin(), kitTypes.end(), [&](const KitType& each) {
        return foldName(each.name) == foldName(kitType);
    });
    std::vector<std::string> names;
    for (const KitType& each : kitTypes)
        if (own != kitTypes.end() && &each != &*own && each.worn == own->worn &&
            each.personal == own->personal)
            names.push_back(each.name);
    return names;
}

bool asksTheSame(const ManifestLine& a, const ManifestLine& b) {
    return std::tie(a.quantity, a.required, a.substitutes, a.note) ==
           std::tie(b.quantity, b.required, b.substitutes, b.note);
}

bool asksTheSame(const BoatPoint& a, const BoatPoint& b) {
    return std::tie(a.kind, a.unit, a.limits.low, a.limits.high, a.required, a.note) ==
           std::tie(b.kind, b.unit, b.limits.low, b.limits.high, b.required, b.note);
}

Manifest manifestOf(const Manifest& ofClass, const Manifest& own) {
    Manifest result{ofClass.boatClass, ownOver(ofClass.lines, own.lines),
                    ownOver(ofClass.points, own.points)};
    std::stable_partition(result.points.begin(), result.points.end(),
                          [](const AskedPoint& point) { return point.phase == "launch"; });
    return result;
}

std::vector<ManifestChange> changesBetween(const Manifest& before, const Manifest& after) {
    std::vector<ManifestChange> changes;
    addChanges(before.lines, after.lines, changes);
    addChanges(before.points, after.points, changes);
    return changes;
}

} // namespace core

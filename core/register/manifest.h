#pragma once

#include "core/register/boat.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// How what a boat's own row asks stands to its class's; of a class itself always None.
enum class Difference { None, Changed, Added, TakenAway };

struct AskedLine {
    ManifestLine line;
    Difference difference = Difference::None;
    std::optional<ManifestLine> ofClass; ///< what the class asks, where the boat has a row of its own
    bool isOwn = false;                  ///< the boat has a row of its own, even where it asks the same
};

struct AskedPoint {
    std::string phase; ///< "launch" or "return"
    BoatPoint point;
    Difference difference = Difference::None;
    std::optional<BoatPoint> ofClass;
    bool isOwn = false;
};

/// What is asked of a boat, in the order in which a check asks it. A line of the class that the boat takes
/// away stands in its place with quantity 0, marked; it asks nothing.
struct Manifest {
    std::string boatClass;
    std::vector<AskedLine> lines;
    std::vector<AskedPoint> points; ///< launch before return
};

/// A class's rows with a boat's own laid over them: an own row replaces the class's of the same kit type
/// (point of the same phase and name), further ones come last. Points of `ofClass` and `own` in any order of
/// phases. Of a class alone: `own` empty.
Manifest manifestOf(const Manifest& ofClass, const Manifest& own);

/// One thing that two manifests ask differently. Empty on a side: not asked there.
struct ManifestChange {
    std::string phase; ///< of a point; empty: it is a line
    std::optional<ManifestLine> lineBefore, lineAfter;
    std::optional<BoatPoint> pointBefore, pointAfter;
};

/// What is asked differently, lines before points. A change of a note alone counts.
std::vector<ManifestChange> changesBetween(const Manifest& before, const Manifest& after);

/// Kit types that may stand in for `kitType` on a line (design: rules 3): others that agree with it in worn
/// and personal, in the order given. Import refuses the rest.
std::vector<std::string> possibleSubstitutes(const std::vector<KitType>& kitTypes,
                                             const std::string& kitType);

bool asksTheSame(const ManifestLine& a, const ManifestLine& b);
bool asksTheSame(const BoatPoint& a, const BoatPoint& b);

} // namespace core

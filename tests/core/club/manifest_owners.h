#pragma once

#include "core/check/boat_check.h"
#include "core/register/manifest_record.h"

#include <string>
#include <tuple>
#include <vector>

namespace support {

// The owners of manifests in the small club, and what is asked of them.

inline const core::ManifestOwner inflatable{core::ManifestOwner::Kind::BoatClass, "inflatable"};
inline const core::ManifestOwner petrel{core::ManifestOwner::Kind::Boat, "Petrel"};
inline const core::ManifestOwner tern{core::ManifestOwner::Kind::Boat, "Tern"};

using Line = std::tuple<std::string, int, bool, std::vector<std::string>>;

/// What a manifest asks, as a check has it.
inline std::vector<Line> asked(const core::Manifest& manifest) {
    std::vector<Line> lines;
    for (const core::AskedLine& each : manifest.lines)
        if (each.line.quantity > 0)
            lines.emplace_back(each.line.kitType, each.line.quantity, each.line.required,
                               each.line.substitutes);
    return lines;
}

inline std::vector<Line> asked(const core::CheckAnswer& answer) {
    std::vector<Line> lines;
    for (const core::LineAnswer& each : answer.lines)
        lines.emplace_back(each.line.kitType, each.line.quantity, each.line.required, each.line.substitutes);
    return lines;
}

} // namespace support

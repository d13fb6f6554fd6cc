#pragma once

namespace core {

/// Who may do an act of the club (docs/rules.md, "Who may do what"). Reading and trying are anybody's.
enum class Right {
    Anybody,    ///< whoever stands there: what a crew does
    GearOfficer ///< once a gear officer has a PIN, whoever gave one of theirs
};

} // namespace core

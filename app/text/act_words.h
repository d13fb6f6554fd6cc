#pragma once

#include <QString>

#include <string>
#include <vector>

namespace core {
struct CheckAct;
struct Undone;
} // namespace core

namespace app {

/// What was done in a check, as it is named when it is taken back: "knife K80N SC1F X4", "damage of knife
/// K80N SC1F X4", "aboard: Ada Thorne".
QString actInWords(const core::CheckAct& act);

/// "Taken back: damage of knife K80N SC1F X4. Next: bailer K5ZP 6EZY VR."
QString undoneInWords(const core::Undone& undone);

/// With what the log entry of damage is closed that was taken back. `aboard`: the first of them did it.
QString closedByUndo(const std::vector<std::string>& aboard);

} // namespace app

#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/register/boat.h"

#include <QString>

#include <map>
#include <string>
#include <vector>

namespace app {

// The club's log in a person's words.

/// A log entry with what its item is; empty for a boat's.
struct LoggedEntry {
    core::LogEntry entry;
    std::string kitType;
};

QString summaryOf(const std::vector<LoggedEntry>& log); ///< "2 entries open, 1 of them stops a boat."
/// Open entries first, those that stop before remarks; then the closed ones with what was done.
std::vector<ListRow> linesOf(const std::vector<LoggedEntry>& log);
QString aboutInWords(const LoggedEntry& entry); ///< "Petrel", "tow line K7Q2 4RMX 1P"

} // namespace app

#pragma once

#include "app/gui/gear/exchange/exchange_run.h"
#include "app/gui/gear/exchange/stick_files.h"
#include "app/gui/widgets/list_row.h"

#include <QString>

#include <vector>

namespace core {
class CalendarDay;
}

namespace app {

// The page Exchange in words.

/// A line for each file; its key is the file's path.
std::vector<ListRow> rowsOf(const std::vector<FoundFile>& found, core::CalendarDay today);
/// "STICK": the medium by the name of its folder.
QString nameOfStick(const std::filesystem::path& stick);

/// What would come in, or came in: a sentence.
QString comingInWords(const ExchangePlan& plan);
QString goingInWords(const ExchangePlan& plan);
QString cameInSentence(const Exchanged& done);
/// What went there, or why not, and how to go on; empty: nothing was to go.
QString wentInWords(const Exchanged& done, const ExchangePlan& plan);

/// Why the files cannot be exchanged, and how to go on from here.
QString hindranceOf(const core::Error& error);
QString wayOnFrom(const core::Error& error);

/// What somebody must look at, each with where a press leads.
std::vector<ListRow> rowsOf(const std::vector<core::LookAt>& found);

} // namespace app

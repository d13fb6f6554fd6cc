#pragma once

#include "core/answers/history.h"

#include <QString>

namespace app {

/// A line of a history as a sentence: "launch check signed: kit complete". A kind of fact that this program
/// does not know is said by its name.
QString inWords(const core::HistoryLine& line);

} // namespace app

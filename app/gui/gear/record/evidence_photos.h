#pragma once

#include "app/gui/gear/record/evidence_printout.h"
#include "core/answers/evidence.h"
#include "core/base/calendar_day.h"

#include <vector>

namespace core {
class Club;
}

namespace app {

/// The photographs that belong to what was aboard: of the log entries about the boat or a thing aboard that
/// were open then, each with its entry, and of the things themselves, made until then. In the order in which
/// they were recorded; on the club's thread.
std::vector<EvidencePhoto> photosOf(const core::Club& club, const core::Evidence& evidence,
                                    core::CalendarDay today);

} // namespace app

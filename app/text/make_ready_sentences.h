#pragma once

#include "core/plan/make_ready/make_ready.h"

#include <QString>

namespace app {

// The make-ready plan in a person's words.

/// "Can be made complete.", "Left out, short of: knife (0 of 1)."
QString conditionInWords(const core::BoatPlan& boat);
QString inWords(const core::Location& at);
/// "2 of 3 boats can be made complete, with 5 moves."
QString answerInWords(const core::MakeReadyPlan& plan);
/// Whether there is no better plan, or what is known instead; what is not counted, and why.
QString goalsInWords(const core::MakeReadyPlan& plan);
/// "Bittern: complete", "Grebe: left out, short of 1 knife and 2 oars".
QString boatInWords(const core::BoatPlan& plan);
/// "K7Q2 4RMX 1P  paddle, in place of an oar".
QString moveInWords(const core::KitMove& move);
/// "From Shed to Bittern"; aboard or not is told where a boat and a place share the name.
QString tripInWords(const core::KitMove& move);
/// Whether there is a better plan, and by how much at the most.
QString proofInWords(const core::MakeReadyPlan& plan);

} // namespace app

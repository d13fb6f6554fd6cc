#pragma once

#include "core/plan/make_ready/make_ready.h"

#include <QString>

namespace app {

// The make-ready plan in a person's words.

/// "Bittern: complete", "Grebe: left out, short of 1 knife and 2 oars".
QString boatInWords(const core::BoatPlan& plan);
/// "K7Q2 4RMX 1P  paddle, in place of an oar".
QString moveInWords(const core::KitMove& move);
/// "From Shed to Bittern"; aboard or not is told where a boat and a place share the name.
QString tripInWords(const core::KitMove& move);
/// Whether there is a better plan, and by how much at the most.
QString proofInWords(const core::MakeReadyPlan& plan);

} // namespace app

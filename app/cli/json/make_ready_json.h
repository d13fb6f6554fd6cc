#pragma once

#include "core/plan/make_ready/make_ready.h"

#include <string>

namespace app {

/// A make-ready plan as a document of the command line (see json_out.h).
std::string makeReadyJson(const core::MakeReadyPlan& plan);

} // namespace app

#pragma once

#include "core/answers/set_up.h"

#include <QString>

#include <vector>

namespace app {

QString stepInWords(core::SetUpStep step);         ///< "kit of each boat"
QString stateInWords(const core::SetUpTick& tick); ///< how it stands, and why it is not done; a sentence
QString pressInWords(core::SetUpStep step);        ///< what its button does
/// "2 of 6 are done. Still to do: people, kit of each boat and tags."
QString setUpInWords(const std::vector<core::SetUpTick>& ticks);

} // namespace app

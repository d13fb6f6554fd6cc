#pragma once

#include <QStringList>

namespace core {
struct OutlookChange;
} // namespace core

namespace app {

/// What a change of the register does to boats and days, a sentence each: "Dabchick will have no knife.", "3
/// things fall due earlier, the first on 1 March 2027.". Empty: nothing.
QStringList effectsInWords(const core::OutlookChange& change);

} // namespace app

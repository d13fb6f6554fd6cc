#pragma once

#include <QString>

namespace app {

/// What is wanting of a sentence that has to be said: why a boat launches with short kit, what is damaged.
/// Empty: nothing. A tag's code is no sentence, and fewer than three letters are none either.
QString wantingOfReason(const QString& typed);

} // namespace app

#pragma once

#include "core/register/operation.h"

#include <QString>

namespace app {

/// The time of day that was typed, on the day of `day`, in the time zone of this machine; `6:31`, `0631` and
/// `06.31` are understood. Empty when it is none.
std::optional<core::Instant> timeOn(core::Instant day, const QString& typed);

/// A trip in one paragraph: "06:31 to 07:12 · aboard: A and B · engine 0.7 h · fuel: … · …".
QString tripInWords(const core::Operation& trip);

} // namespace app

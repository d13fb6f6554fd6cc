#pragma once

#include "tests/core/base/days.h"

namespace core {

/// The day on which the plans of these tests are asked for.
inline const CalendarDay today = day("2026-01-01");

} // namespace core

#pragma once

#include "app/gui/sheet/check_sheet.h"

namespace core {
struct SignedCheck;
}

namespace app {

struct CheckState;

/// The sheet of a check that is signed; `state` is how it stood before. The club's name and the record's head
/// are left open.
CheckSheet sheetOf(const core::SignedCheck& check, const CheckState& state);

} // namespace app

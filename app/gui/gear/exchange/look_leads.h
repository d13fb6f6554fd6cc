#pragma once

class QWidget;

namespace core {
struct LookAt;
}

namespace app {

struct GearTools;

/// Goes where that can be looked at: the item, the row of the register, or all that is recorded of the boat.
/// `asker`: on whose page it was pressed.
void lookAt(const core::LookAt& found, const GearTools& tools, QWidget& asker);

} // namespace app

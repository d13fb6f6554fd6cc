#pragma once

class QWidget;

namespace app {

/// Gives the fields of a page, in view or not, the sentence that a screen reader says besides their names:
/// what belongs into them. Fields that have one keep it.
void describeFields(const QWidget& page);

} // namespace app

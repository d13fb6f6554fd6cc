#pragma once

#include <QString>

namespace app {

// What the programs say where a decision is taken. Texts after common practice and the cautions of makers and
// authorities in general; a club's own rules prevail.

QString launchCaution();   ///< beside a launch check's outcome and its sign-off
QString scanCaution();     ///< beside anything that was read from tags
QString fitCaution();      ///< beside sizes and who wears what
QString pressureCaution(); ///< beside a computed chamber pressure
QString dueCaution();      ///< beside due days
QString tagCaution();      ///< beside a sheet of tags
QString writeOffCaution(); ///< where something is written off
QString whoPrevails();     ///< makers, local rules, the person in charge

} // namespace app

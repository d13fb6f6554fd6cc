#pragma once

#include <QString>
#include <QStringList>

namespace core {
struct BoatPoint;
struct CheckAnswer;
} // namespace core

namespace app {

// What the programs say where a decision is taken. Texts after common practice and the cautions of makers and
// authorities in general; a club's own rules prevail.

QString launchCaution();                        ///< beside a launch check's outcome and its sign-off
QString boardCaution();                         ///< beside the boats' conditions
QString scanCaution();                          ///< beside anything that was read from tags
QString fitCaution();                           ///< beside sizes and who wears what
QString pressureCaution();                      ///< beside a computed chamber pressure
QString jacketCaution();                        ///< where a boat is launched with its kit incomplete
QString engineCaution();                        ///< beside a timed point of an engine
bool isEngineRun(const core::BoatPoint& point); ///< timed, and named after an engine or motor
bool hasPressureAfloat(const core::CheckAnswer& answer);
/// All that belong to a check, as the command line and the sheet say them beneath it.
QStringList checkCautions(const core::CheckAnswer& answer);
QString makeReadyCaution(); ///< beside a make-ready plan
QString serviceCaution();   ///< where a service is recorded or something is released
QString rearmCaution();     ///< where a rearm is recorded
bool isRearm(const QString& rule);
QString toleranceCaution();  ///< where life rules are given
QString lastingCaution();    ///< beside a survival curve and its rules
QString dueCaution();        ///< beside due days
QString tagCaution();        ///< beside a sheet of tags
QString writeOffCaution();   ///< where something is written off
QString reinstatedCaution(); ///< where that is taken back
QString whoPrevails();       ///< makers, local rules, the person in charge

} // namespace app

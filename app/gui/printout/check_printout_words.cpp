#include "app/gui/printout/check_printout.h"

#include "app/gui/check/trip_words.h"
#include "app/gui/club/check_session.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct CheckPrintoutWordsText {
    Q_DECLARE_TR_FUNCTIONS(CheckPrintout)
};

/// A printout is read on another day: it names the day.
QString whenSigned(const core::SignedCheck& check) {
    const QString at = inWords(check.at, check.answer.today);
    if (check.at.localDay() != check.answer.today) return at;
    return CheckPrintoutWordsText::tr("%1, %2").arg(at, inWords(check.answer.today));
}

} // namespace

CheckPrintout printoutOf(const core::SignedCheck& check, const CheckState& state) {
    CheckPrintout printout;
    printout.boat = QString::fromStdString(check.answer.location.name);
    printout.phase = nameInWords(check.answer.phase);
    printout.at = whenSigned(check);
    printout.atIso = QString::fromStdString(check.at.iso());
    for (const std::string& name : state.names)
        printout.aboard << QString::fromStdString(name);
    printout.signedBy = QString::fromStdString(check.by);
    printout.urgent = QString::fromStdString(check.urgent);
    printout.outcome = outcomeOf(check.answer);
    printout.complete = check.answer.outcome == core::CheckOutcome::Complete;
    printout.rows = rowsOf(check.answer, state.context);
    for (const core::LogEntry& entry : check.answer.logOpen)
        printout.log << QString::fromStdString(entry.text);
    if (state.trip) printout.trip = tripInWords(*state.trip);
    printout.cautions = checkCautions(check.answer);
    return printout;
}

} // namespace app

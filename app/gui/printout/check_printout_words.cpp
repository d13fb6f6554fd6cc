#include "app/gui/printout/check_printout.h"

#include "app/gui/check/trip_words.h"
#include "app/gui/club/check_session.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
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
    printout.boat = text(check.answer.location.name);
    printout.phase = nameInWords(check.answer.phase);
    printout.at = whenSigned(check);
    printout.atIso = text(check.at.iso());
    for (const std::string& name : state.names)
        printout.aboard << text(name);
    printout.signedBy = text(check.by);
    printout.urgent = text(check.urgent);
    printout.outcome = outcomeOf(check.answer);
    printout.complete = check.answer.outcome == core::CheckOutcome::Complete;
    printout.rows = rowsOf(check.answer, state.context);
    for (const core::LogEntry& entry : check.answer.logOpen)
        printout.log << text(entry.text);
    if (state.trip) printout.trip = tripInWords(*state.trip);
    printout.cautions = checkCautions(check.answer);
    return printout;
}

} // namespace app

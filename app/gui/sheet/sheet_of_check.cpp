#include "app/gui/sheet/sheet_of_check.h"

#include "app/gui/check/trip_words.h"
#include "app/gui/club/check_session.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct SheetOfCheckText {
    Q_DECLARE_TR_FUNCTIONS(CheckSheet)
};

/// A sheet is read on another day: it names the day.
QString whenSigned(const core::SignedCheck& check) {
    const QString at = inWords(check.at, check.answer.today);
    if (check.at.localDay() != check.answer.today) return at;
    return SheetOfCheckText::tr("%1, %2").arg(at, inWords(check.answer.today));
}

} // namespace

CheckSheet sheetOf(const core::SignedCheck& check, const CheckState& state) {
    CheckSheet sheet;
    sheet.boat = QString::fromStdString(check.answer.location.name);
    sheet.phase = nameInWords(check.answer.phase);
    sheet.at = whenSigned(check);
    sheet.atIso = QString::fromStdString(check.at.iso());
    for (const std::string& name : state.names)
        sheet.aboard << QString::fromStdString(name);
    sheet.signedBy = QString::fromStdString(check.by);
    sheet.urgent = QString::fromStdString(check.urgent);
    sheet.outcome = outcomeOf(check.answer);
    sheet.complete = check.answer.outcome == core::CheckOutcome::Complete;
    sheet.rows = rowsOf(check.answer, state.context);
    for (const core::LogEntry& entry : check.answer.logOpen)
        sheet.log << QString::fromStdString(entry.text);
    if (state.trip) sheet.trip = tripInWords(*state.trip);
    sheet.cautions = {launchCaution(), scanCaution(), fitCaution(), whoPrevails()};
    return sheet;
}

} // namespace app

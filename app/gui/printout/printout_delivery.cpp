#include "app/gui/printout/printout_delivery.h"

#include "app/gui/club/club_thread.h"
#include "app/text/text.h"
#include "core/answers/evidence.h"
#include "core/club/club_answers.h"

#include <QPrinter>
#include <QWidget>

namespace app {
namespace {

/// The printout with what only the club file knows.
CheckPrintout completed(core::Club& club, CheckPrintout printout) {
    printout.club = text(club.name());
    // The head alone: a printout does not wait until a long record has been verified.
    const auto at = core::Instant::parse(printout.atIso.toStdString());
    if (!at) return printout;
    if (const auto evidence = club.answers().evidence(printout.boat.toStdString(), *at))
        printout.recordHead = text(evidence->head);
    return printout;
}

} // namespace

PrintoutDelivery::PrintoutDelivery(ClubThread& club, const Choosers& choosers, QWidget* window)
    : QObject(window)
    , m_club(club)
    , m_choosers(choosers)
    , m_window(window) {}

void PrintoutDelivery::print(const CheckPrintout& printout) {
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    if (!m_choosers.printer(m_window, *printer)) return;
    m_club.ask(
        this,
        [printout, printer](core::Club& club) { return paintPrintout(*printer, completed(club, printout)); },
        [this](bool isPainted) {
            emit done(isPainted ? tr("The sheet was sent to the printer.")
                                : tr("The printer did not take the sheet."));
        });
}

void PrintoutDelivery::save(const CheckPrintout& printout) {
    const QString proposed = QStringLiteral("%1 %2.pdf").arg(printout.boat, printout.atIso.left(10));
    const QString file = m_choosers.saveFile(m_window, proposed);
    if (file.isEmpty()) return;
    m_club.ask(
        this, [printout, file](core::Club& club) { return savePrintout(file, completed(club, printout)); },
        [this, file](bool isSaved) {
            emit done(isSaved ? tr("Saved: %1").arg(text(file))
                              : tr("The sheet could not be written to %1.").arg(text(file)));
        });
}

} // namespace app

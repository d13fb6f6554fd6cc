#include "app/gui/sheet/sheet_delivery.h"

#include "app/gui/club/club_thread.h"
#include "core/answers/evidence.h"
#include "core/club/club_answers.h"

#include <QPrinter>
#include <QWidget>

namespace app {
namespace {

/// The sheet with what only the club file knows.
CheckSheet completed(core::Club& club, CheckSheet sheet) {
    sheet.club = QString::fromStdString(club.name());
    // The head alone: a sheet does not wait until a long record has been verified.
    const auto at = core::Instant::parse(sheet.atIso.toStdString());
    if (!at) return sheet;
    if (const auto evidence = club.answers().evidence(sheet.boat.toStdString(), *at))
        sheet.recordHead = QString::fromStdString(evidence->head);
    return sheet;
}

} // namespace

SheetDelivery::SheetDelivery(ClubThread& club, const Choosers& choosers, QWidget* window)
    : QObject(window)
    , m_club(club)
    , m_choosers(choosers)
    , m_window(window) {}

void SheetDelivery::print(const CheckSheet& sheet) {
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    if (!m_choosers.printer(m_window, *printer)) return;
    m_club.ask(
        this, [sheet, printer](core::Club& club) { return paintSheet(*printer, completed(club, sheet)); },
        [this](bool isPainted) {
            emit done(isPainted ? tr("The sheet was sent to the printer.")
                                : tr("The printer did not take the sheet."));
        });
}

void SheetDelivery::save(const CheckSheet& sheet) {
    const QString proposed = QStringLiteral("%1 %2.pdf").arg(sheet.boat, sheet.atIso.left(10));
    const QString file = m_choosers.sheetFile(m_window, proposed);
    if (file.isEmpty()) return;
    m_club.ask(
        this, [sheet, file](core::Club& club) { return saveSheet(file, completed(club, sheet)); },
        [this, file](bool isSaved) {
            emit done(isSaved ? tr("Saved: %1").arg(file)
                              : tr("The sheet could not be written to %1.").arg(file));
        });
}

} // namespace app

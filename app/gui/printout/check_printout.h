#pragma once

#include "app/gui/check/check_row.h"

#include <QString>
#include <QStringList>

#include <vector>

class QPagedPaintDevice;

namespace core {
struct SignedCheck;
}

namespace app {

struct CheckState;

/// What the printout of a signed check says. People's names, never their measures.
struct CheckPrintout {
    QString club;
    QString boat;
    QString phase; ///< "launch check"
    QString at;    ///< in words
    QString atIso;
    QStringList aboard; ///< driver first
    QString signedBy;
    QString urgent; ///< reason; may be empty
    QString outcome;
    bool complete = false;
    std::vector<CheckRow> rows;
    QStringList log; ///< open entries of the boat
    QString trip;    ///< what the crew wrote of it; may be empty
    QStringList cautions;
    QString recordHead; ///< hash of the newest fact
};

/// Of a check that is signed; `state` is how it stood before. The club's name and the record's head are left
/// open.
CheckPrintout printoutOf(const core::SignedCheck& check, const CheckState& state);

/// Draws it on one page of A4, black on white, with the screen's marks and order; smaller type when there is
/// much to say. False when the device cannot be painted on. Any thread with an application object.
bool paintPrintout(QPagedPaintDevice& device, const CheckPrintout& printout);

/// The same as a PDF. False when the file cannot be written.
bool savePrintout(const QString& file, const CheckPrintout& printout);

} // namespace app

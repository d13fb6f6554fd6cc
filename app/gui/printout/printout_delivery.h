#pragma once

#include "app/gui/choosers.h"
#include "app/gui/printout/check_printout.h"

#include <QObject>

class QWidget;

namespace app {

class ClubThread;

/// Takes the printout of a signed check to a printer or into a PDF. What a person is asked is asked at once;
/// the drawing is done on the club's thread, so that the window does not wait for it. GUI thread.
class PrintoutDelivery : public QObject {
    Q_OBJECT

public:
    PrintoutDelivery(ClubThread& club, const Choosers& choosers, QWidget* window);

    void print(const CheckPrintout& printout);
    void save(const CheckPrintout& printout);

signals:
    void done(const QString& sentence); ///< what became of it

private:
    ClubThread& m_club;
    const Choosers& m_choosers;
    QWidget* m_window;
};

} // namespace app

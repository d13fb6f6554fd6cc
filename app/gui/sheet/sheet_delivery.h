#pragma once

#include "app/gui/choosers.h"
#include "app/gui/sheet/check_sheet.h"

#include <QObject>

class QWidget;

namespace app {

class ClubThread;

/// Takes the sheet of a signed check to a printer or into a PDF. What a person is asked is asked at once; the
/// drawing is done on the club's thread, so that the window does not wait for it. GUI thread.
class SheetDelivery : public QObject {
    Q_OBJECT

public:
    SheetDelivery(ClubThread& club, const Choosers& choosers, QWidget* window);

    void print(const CheckSheet& sheet);
    void save(const CheckSheet& sheet);

signals:
    void done(const QString& sentence); ///< what became of the sheet

private:
    ClubThread& m_club;
    const Choosers& m_choosers;
    QWidget* m_window;
};

} // namespace app

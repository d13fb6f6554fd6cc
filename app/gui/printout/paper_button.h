#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QPushButton>

#include "app/gui/club/club_thread.h"
#include "app/gui/printout/paper_delivery.h"
#include "core/base/calendar_day.h"

#include <QStringList>

#include <functional>

class QMenu;

namespace app {

/// One button for all that can be done with a list or a sheet: a menu to print, save or copy it. GUI thread.
class PaperButton : public QPushButton {
    Q_OBJECT

public:
    /// Reads a list anew on the club's thread.
    using ListRead = std::function<core::Result<ListTable>(core::Club&, core::CalendarDay today)>;
    /// Makes a list of what is shown, on the GUI thread; club and day are filled in.
    using ListShown = std::function<ListTable()>;

    PaperButton(ClubThread& club, Choosers choosers, TimeSource time, QWidget* parent);

    void offerList(const ListRead& read);
    void offerShown(const ListShown& shown);
    /// What `instead` gives at the press is read; what is shown, where it gives nothing.
    void offerShown(const ListShown& shown, const std::function<ListRead()>& instead);
    /// The paper check list and the wall card of that boat, an empty name: of none just now.
    void offerCheckList(const std::function<QString()>& boat);
    /// The same for each of several boats, each in a menu of its own.
    void offerCheckLists(const std::function<QStringList()>& boats);
    QMenu& choices() { return *m_menu; }

signals:
    void done(const core::Result<QString>& sentence); ///< what became of what was chosen

private:
    using Prepare = std::function<PaperDelivery::ReadList()>; ///< at the press
    void addList(const Prepare& prepare);
    PaperDelivery::ReadList prepared(const ListRead& read) const;
    PaperDelivery::ReadList prepared(const ListShown& shown) const;
    void addCheckLists(QMenu& menu, const std::function<QString()>& boat);
    void showMenu();

    PaperDelivery* m_delivery;
    TimeSource m_time;
    QMenu* m_menu;
};

/// Check list and wall card of a boat as they are printed and saved.
PaperDelivery::ReadPaper checkListPaper(const QString& boat, core::CalendarDay today);
PaperDelivery::ReadPaper wallCardPaper(const QString& boat, core::CalendarDay today);

} // namespace app

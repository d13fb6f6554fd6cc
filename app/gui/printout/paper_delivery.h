#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>

#include "app/gui/choosers.h"
#include "app/paper/lists/list_table.h"
#include "core/base/result.h"

#include <QString>

#include <functional>

class QPagedPaintDevice;
class QWidget;

namespace core {
class Club;
}

namespace app {

class ClubThread;

/// Something on paper, ready to be drawn on a thread with an application object.
struct Printable {
    QString name; ///< proposed for its file, without an ending
    std::function<bool(QPagedPaintDevice&)> paint;
};

/// Takes lists and sheets to a printer, into a file or onto the clipboard. They are read and drawn on the
/// club's thread; what a person is asked is asked in between. GUI thread.
class PaperDelivery : public QObject {
    Q_OBJECT

public:
    using ReadPaper = std::function<core::Result<Printable>(core::Club&)>;
    using ReadList = std::function<core::Result<ListTable>(core::Club&)>;

    /// `window`: over which the system's dialogs stand.
    PaperDelivery(ClubThread& club, Choosers choosers, QWidget* window);

    void print(const ReadPaper& read);
    void savePdf(const ReadPaper& read);
    void saveCsv(const ReadList& read);
    void copy(const ReadList& read); ///< as text for a message

    static ReadPaper paperOf(const ReadList& read);

signals:
    void done(const core::Result<QString>& sentence); ///< what became of it

private:
    /// Reads; then `then` with what was read, or the error is told.
    template <class Value, class Then>
    void take(const std::function<core::Result<Value>(core::Club&)>& read, Then then);
    /// Runs `write` on the club's thread, which gives an Outcome, and tells of it.
    template <class Write>
    void deliver(Write write, const QString& sentence);
    void save(const QString& proposed, const std::function<core::Outcome(const QString&)>& write);

    ClubThread& m_club;
    Choosers m_choosers;
    QWidget* m_window;
};

} // namespace app

#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>
#include <QString>
#include <QThread>

#include "app/gui/choosers.h"
#include "app/gui/club/club_thread.h"
#include "core/base/result.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

class QWidget;

namespace core {
class Pin;
}

namespace app {

/// Backups of the open club file, restoring one, and a copy into a folder after each signed check. Copies are
/// made on a thread of their own, each by its own reader of the file: nobody waits for them, least of all who
/// signs. The destructor lets a copy that was begun finish. GUI thread.
class ClubCopies : public QObject {
    Q_OBJECT

public:
    /// `window`: over which the system's dialogs stand.
    ClubCopies(ClubThread& club, Choosers choosers, TimeSource time, QWidget* window);
    ~ClubCopies() override;

    using GiveBy = std::function<void(const QString& person, std::shared_ptr<core::Pin>)>;

    void backUp();       ///< asks where to
    void restore();      ///< asks from where and where to; needs no open club
    void chooseFolder(); ///< asks for the folder of the copies after signed checks
    void endCopies();
    bool isCopying() const; ///< after each signed check of the open club

    /// What the board should say of the open club's copies on that day; empty: nothing. `began`: the club.
    QString reminder(std::optional<core::Instant> began, core::CalendarDay today) const;

signals:
    void said(const QString& sentence, bool toLookAt); ///< what became of what was asked for
    void restored(const QString& file);                ///< to be opened
    void changed();                                    ///< what `reminder` and `isCopying` say
    /// A backup is restored when one of these gear officers, who are in it, gives a PIN; `likely`: who was
    /// tried already, and `why` it was refused.
    void pinWanted(const QStringList& officers, const QString& likely, const core::Error& why,
                   const GiveBy& give);

private:
    void copyAfterCheck();
    void restoreBy(const QString& from, const QString& to, const QString& person,
                   const std::shared_ptr<core::Pin>& pin);
    /// Runs `job` on the copies' thread, then `then` with its outcome here.
    template <class Job, class Then>
    void run(Job job, Then then);
    bool isOpen();

    ClubThread& m_club;
    Choosers m_choosers;
    TimeSource m_time;
    QWidget* m_window;
    QThread m_thread;
    QObject* m_worker; ///< lives on m_thread
    std::filesystem::path m_failedFor;
    QString m_failed; ///< why the copy after a check of that file failed; until one succeeds
};

} // namespace app

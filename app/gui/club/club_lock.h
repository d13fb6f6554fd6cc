#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>
#include <QString>

#include "core/base/result.h"

#include <QTimer>

#include <functional>
#include <memory>

namespace core {
class Pin;
}

namespace app {

class ClubThread;

/// By whose PIN a gear officer's acts are open in this window's club, if by anybody's; core closes them ten
/// minutes after the last of them. GUI thread.
class ClubLock : public QObject {
    Q_OBJECT

public:
    explicit ClubLock(ClubThread& club, QObject* parent = nullptr);

    const QString& person() const { return m_person; } ///< empty: locked, or nothing needs unlocking
    /// `then` is given core's answer; dropped when `asker` is gone by then.
    void unlock(QObject* asker, const QString& person, std::shared_ptr<core::Pin> pin,
                std::function<void(const core::Outcome&)> then);
    void lock();
    void refresh(); ///< reads it anew: another club was opened, or a PIN was set

signals:
    void changed();

private:
    void take(const QString& person, qint64 millisLeft);

    ClubThread& m_club;
    QString m_person;
    QTimer m_end; ///< looks again when it should be over: each act puts it off
};

} // namespace app

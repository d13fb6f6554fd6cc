#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QFrame>
#include <QPointer>

#include "core/base/result.h"

#include <QDeadlineTimer>
#include <QTimer>

#include <functional>
#include <map>
#include <memory>

class QLabel;
class QLineEdit;
class QPushButton;

namespace core {
class Pin;
}

namespace app {

class ChoiceBox;
class ClubLock;
class ClubThread;
class SaidLabel;

/// Over the foot of the page, which keeps its size: asks for a gear officer's PIN when something that was
/// pressed needs it, and goes on with that; likewise for a signer's where the club asks for that. Nothing
/// else is held up by it. After wrong PINs it counts the seconds down that core makes whoever tries wait.
class UnlockStrip : public QFrame {
    Q_OBJECT

public:
    UnlockStrip(ClubThread& club, ClubLock& lock, QWidget& over);

    /// `goOn` is run once it is unlocked, `giveUp` when whoever stands there leaves it; neither when `asker`
    /// is gone by then. `likely`: whose PIN it may be.
    void ask(QObject* asker, const QString& likely, std::function<void()> goOn, std::function<void()> giveUp);
    /// The PIN of whoever is to sign; `why`: core's error. `sign` is given what was typed.
    using SignWith = std::function<void(std::shared_ptr<core::Pin>)>;
    void askSigner(QObject* asker, const QString& person, const core::Error& why, SignWith sign);
    /// The PIN of one of these gear officers, who are in a backup that is to be restored; `likely`: whose it
    /// may be. `give` is given whose and what was typed.
    using GiveBy = std::function<void(const QString& person, std::shared_ptr<core::Pin>)>;
    void askForBackup(QObject* asker, const QStringList& officers, const QString& likely,
                      const core::Error& why, GiveBy give);
    void leave(); ///< nobody gives a PIN

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void place();
    void fill(const QStringList& officers, const QString& likely);
    void unlock();
    void take(const QString& person, const core::Outcome& unlocked);
    void begin(QObject* asker, const QString& what, const QString& does);
    void sayWhy(const QString& person, const core::Error& why);
    void adapt();
    void close(const std::function<void()>& then);

    ClubThread& m_club;
    ClubLock& m_lock;
    QPointer<QObject> m_asker;
    std::function<void()> m_goOn;
    std::function<void()> m_giveUp;
    GiveBy m_give;                             ///< empty: it is asked for to unlock
    std::map<QString, QDeadlineTimer> m_waits; ///< by person
    QTimer m_second;
    bool m_isAsking = false; ///< core looks at a PIN
    QLabel* m_what;
    ChoiceBox* m_who;
    QLineEdit* m_pin;
    QPushButton* m_unlock;
    QPushButton* m_leave;
    SaidLabel* m_said;
};

} // namespace app

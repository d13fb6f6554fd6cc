#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>

#include "app/gui/camera/key_run.h"
#include "core/club/club_checks.h"

#include <QTimer>

#include <functional>
#include <memory>
#include <vector>

class QKeyEvent;

namespace app {

/// Tells a hand-held scanner from a person at the keyboard, for both press keys. A scan is a burst: at least
/// six characters, each within 60 ms of the one before, ended by Return, Enter or Tab as soon; or a text
/// typed at any speed that is exactly a tag code, ended so. It is no text of whatever has the keyboard: that
/// keeps what it held, and the scan is told by signal. A field that asks for a code (`askForCode`) takes it
/// instead, and is sent Return.
///
/// Text fields get their keys at once and are put back when they turn out to be a scan; boxes, lists and
/// buttons, where a letter does something, get theirs when no other follows. GUI thread.
class HandScanner : public QObject {
    Q_OBJECT

public:
    using Clock = std::function<qint64()>; ///< milliseconds, never falling

    /// Sees the keys of `window`, its menus and its dialogs.
    explicit HandScanner(QWidget& window);
    ~HandScanner() override;

    /// Sees each key before every filter of the application that was installed until now.
    void comeFirst();
    /// The time of keys of which the window system tells none.
    void setClock(Clock clock) { m_clock = std::move(clock); }

signals:
    void scanned(const QString& text,
                 core::SeenBy seenBy); ///< Scanner, or Typed when it came at a person's speed

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool isOurs(const QWidget* widget) const;
    KeyTime timeOf(const QKeyEvent& event) const;
    bool takeKey(QKeyEvent& event, QWidget& receiver);
    bool takeEnd(KeyTime at);
    void deliver(const KeyRun& scan, core::SeenBy seenBy);
    void giveBack(); ///< the keys that were kept waiting
    void forget();

    QWidget& m_window;
    Clock m_clock;
    KeyRun m_run;   ///< at whatever speed
    KeyRun m_burst; ///< the end of it that came at a scanner's
    KeyTime m_last; ///< of the last key
    bool m_hasJustScanned = false;
    bool m_isSending = false; ///< keys of our own
    std::vector<std::unique_ptr<QKeyEvent>> m_waiting;
    QTimer m_wait;
};

} // namespace app

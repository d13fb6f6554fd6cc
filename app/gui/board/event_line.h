#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/club/club_thread.h"
#include "core/club/club_events.h"

#include <QStringList>

#include <functional>
#include <optional>

class QLabel;
class QPushButton;

namespace app {

class ChoiceBox;

/// What the board says of today's event.
struct TodaysEvent {
    std::optional<core::HeldEvent> held;
    QStringList names; ///< of those before, newest first
    core::CalendarDay today = core::CalendarDay::fromNumber(1);
};

/// Reads it; on the club's thread.
TodaysEvent readTodaysEvent(const core::Club& club, core::Moment now);

/// One line: the event that each check is of that is opened today, to begin and to end.
class EventLine : public QWidget {
    Q_OBJECT

public:
    explicit EventLine(QWidget* parent = nullptr);

    void setEvent(const TodaysEvent& event);

signals:
    void beginPressed(const QString& event);
    void endPressed();

private:
    void begin();

    QLabel* m_words;
    ChoiceBox* m_name;
    QPushButton* m_begin;
    QPushButton* m_end;
};

/// Begins and ends events as the line is pressed, in the open club; `say`: why not.
void keepTodaysEvent(EventLine& line, ClubThread& club, TimeSource time,
                     std::function<void(const QString& sentence)> say);

} // namespace app

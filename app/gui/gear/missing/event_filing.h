#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "core/club/club_events.h"

#include <QStringList>

#include <vector>

class QPushButton;

namespace app {

class ChoiceBox;

/// Files one of the checks that are shown under another event.
class EventFiling : public QWidget {
    Q_OBJECT

public:
    explicit EventFiling(QWidget* parent = nullptr);

    /// Hidden while there is none. `events`: the names to choose from.
    void setChecks(const std::vector<core::FiledCheck>& checks, const QStringList& events,
                   core::CalendarDay today);

signals:
    void filePressed(const QString& check, const QString& event);

private:
    void adapt();

    ChoiceBox* m_check;
    ChoiceBox* m_event;
    QPushButton* m_file;
};

} // namespace app

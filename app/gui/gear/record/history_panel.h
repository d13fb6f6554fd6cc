#pragma once

#include "app/gui/club/club_thread.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace app {

class RowList;
class ClubThread;
class RowListModel;

/// Everything recorded about a boat, a person or an item, in words, newest first.
class HistoryPanel : public QWidget {
    Q_OBJECT

public:
    HistoryPanel(ClubThread& club, TimeSource time, QWidget* parent = nullptr);

    void refresh(); ///< the names to choose from
    void tell(const QString& subject);

signals:
    void told();

private:
    void build();

    ClubThread& m_club;
    TimeSource m_time;
    QComboBox* m_names;
    QLineEdit* m_code;
    QLabel* m_answer;
    RowListModel* m_lines;
    RowList* m_list;
};

} // namespace app

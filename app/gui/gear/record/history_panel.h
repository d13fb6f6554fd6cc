#pragma once

#include "app/gui/check/check_session.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace app {

class CheckListView;
class ClubThread;
class PlainListModel;

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
    PlainListModel* m_lines;
    CheckListView* m_list;
};

} // namespace app

#pragma once

#include "core/base/result.h"
#include "core/record/verification.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace app {

class RowList;
class ClubThread;
class RowListModel;

/// Looks through the whole record, on the club's thread: whether anything was altered behind the program's
/// back.
class VerifyPanel : public QWidget {
    Q_OBJECT

public:
    explicit VerifyPanel(ClubThread& club, QWidget* parent = nullptr);

    void verify();

signals:
    void verified();

private:
    void take(const core::Result<core::Verification>& verification);

    ClubThread& m_club;
    QPushButton* m_button;
    QProgressBar* m_progress;
    QLabel* m_answer;
    QLabel* m_head;
    RowListModel* m_lines;
    RowList* m_list;
};

} // namespace app

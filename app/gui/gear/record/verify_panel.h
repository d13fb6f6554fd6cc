#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/base/result.h"
#include "core/record/verification.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace app {

class RowList;
class RowListModel;

/// Looks through the whole record, on the club's thread: whether anything was altered behind the program's
/// back.
class VerifyPanel : public GearPart {
    Q_OBJECT

public:
    explicit VerifyPanel(GearTools tools, QWidget* parent = nullptr);

    void verify();

private:
    void take(const core::Result<core::Verification>& verification);

    QPushButton* m_button;
    QProgressBar* m_progress;
    QLabel* m_answer;
    QLabel* m_head;
    RowListModel* m_lines;
    RowList* m_list;
};

} // namespace app

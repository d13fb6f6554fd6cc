#pragma once

#include "app/gui/gear/ready/move_list.h"
#include "app/gui/widgets/gear_page.h"
#include "core/base/result.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;

namespace app {

class CameraPanel;
class PartStack;
class RowList;
class RowListModel;

/// Which boats can be made complete with what is here, and what to carry where; ticked off by showing each
/// tag, typing it or pressing its line.
class ReadyPage : public GearPage {
    Q_OBJECT

public:
    explicit ReadyPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override; ///< the places to choose from
    bool takeScan(const QString& text, core::SeenBy how) override;
    void makePlan();
    const MoveList& moves() const { return m_moves; }
    /// A code as a scanner or camera gives it.
    void takeCode(const QString& text);

signals:
    void planned();                      ///< a plan is shown, or why there is none
    void codeTaken(const QString& text); ///< and what came of it is shown

protected:
    void hideEvent(QHideEvent* event) override;

private:
    void build();
    void connectParts();
    ListTable shownList() const;
    std::function<core::Result<ListTable>(core::Club&, core::CalendarDay)> listToMake() const;
    void take(const core::Result<core::MakeReadyPlan>& plan);
    void tick(const core::ItemName& item);
    void showMoves();
    void showCamera(bool camera);

    MoveList m_moves;
    QComboBox* m_places;
    QPushButton* m_planButton;
    QProgressBar* m_progress;
    QLabel* m_answer;
    QLabel* m_goals;
    RowListModel* m_boats;
    RowList* m_boatList;
    CameraPanel* m_camera;
    PartStack* m_left;
    QPushButton* m_cameraButton;
    RowListModel* m_lines;
    RowList* m_list;
    QLineEdit* m_code;
};

} // namespace app

#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/register/sheets.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

/// The last day of a boat, a person or a place, after which it is in no list to choose from any more. What is
/// recorded of it stays.
class EndPanel : public GearPart {
    Q_OBJECT

public:
    explicit EndPanel(GearTools tools, QWidget* parent);

    /// Whether rows of that sheet have a last day.
    static bool isFor(core::SheetId sheet);
    void ask(core::SheetId sheet, const core::Cells& row);

signals:
    void kept();                         ///< it stays
    void ended(const QString& sentence); ///< its last day is written

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void adapt();
    void end();

    core::Named m_named = core::Named::Boat;
    std::string m_name;
    QLabel* m_question;
    QLineEdit* m_day;
    QLabel* m_understood;
    QPushButton* m_keep;
    QPushButton* m_end;
};

} // namespace app

#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/register/sheets.h"

#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;
class QTimer;

namespace app {

class ChoiceBox;

/// Another name for what a row is about: a boat or its class, a person, a place, a kit type, a size; all that
/// is and will be recorded under the old name is about it. Or for the club itself.
class RenamePanel : public GearPart {
    Q_OBJECT

public:
    explicit RenamePanel(GearTools tools, QWidget* parent);

    /// Whether a row of that sheet has a name that can change.
    static bool isFor(core::SheetId sheet);
    void ask(core::SheetId sheet, const core::Cells& row);
    void askClub(const QString& name);
    bool isOfClub() const { return !m_whats.empty() && !m_whats.front().named; }

signals:
    void kept();                           ///< nothing shall be renamed
    void renamed(const QString& sentence); ///< it is

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct What {
        std::optional<core::Named> named; ///< none: the club
        std::string name;
        std::string of; ///< kit type of a size
    };

    void build();
    void showPanel();
    void showName();
    void adapt();
    void look();
    void rename();
    const What& what() const;

    std::vector<What> m_whats;
    ChoiceBox* m_what;
    QLabel* m_about;
    QLabel* m_warnings; ///< what may not be meant so
    QLineEdit* m_name;
    QPushButton* m_keep;
    QPushButton* m_rename;
    QTimer* m_wait;
};

} // namespace app

#pragma once

#include "app/gui/gear/manifests/manifest_panel.h"
#include "core/register/kit_type.h"

#include <vector>

class QCheckBox;
class QLineEdit;
class QMenu;
class QSpinBox;
class QTimer;

namespace app {

class ChoiceBox;

/// One line of a manifest as it is asked now: its number, whether it is required, what may stand in, its
/// note; and what may not be meant so, once something else stands there. It is written as an import would
/// write it, under the name of whoever is at work.
class ManifestLinePanel : public ManifestPanel {
    Q_OBJECT

public:
    explicit ManifestLinePanel(GearTools tools, QWidget* parent = nullptr);

    void setKitTypes(std::vector<core::KitType> kitTypes) { m_kitTypes = std::move(kitTypes); }
    /// `stillAskedOf`: boats of the class that ask it by a line of their own. `hasBoat`: else it is a class
    /// that no boat has, and the line can only be removed.
    void edit(const core::ManifestOwner& owner, const core::AskedLine& line, const QStringList& stillAskedOf,
              bool hasBoat = true);
    void beginNew(const core::ManifestOwner& owner, const QStringList& kitTypes); ///< not in the manifest yet
    /// Whether it shows that line as it is: what was typed meanwhile need not be lost.
    bool isOpenOn(const core::ManifestOwner& owner, const core::AskedLine& line) const;
    void setFocusOnNumber();

private:
    void build();
    void fill();
    void adapt();
    void chooseSubstitutes();
    void toggleSubstitute(const std::string& kitType, bool isSubstitute);
    std::string kitType() const;
    core::ManifestLine wanted() const; ///< as it stands in the fields
    void lookForWarnings(bool isWritable);
    void askForWarnings();
    void changeLine(const core::ManifestLine& line, const QString& sentence);
    void writeRow() override;
    void takeAway() override;
    void makeAsClass() override;
    void dropOwn(const QString& sentence);
    QString takenAwayInWords() const;

    std::vector<core::KitType> m_kitTypes;
    core::ManifestLine m_line;
    bool m_isOwn = false;
    bool m_isOwnAlone = false;         ///< a boat's, of a kit type that its class does not ask
    std::vector<std::string> m_chosen; ///< substitutes
    ChoiceBox* m_kitType;
    QSpinBox* m_number;
    QCheckBox* m_required;
    QLabel* m_substitutes;
    QPushButton* m_changeSubstitutes;
    QMenu* m_menu;
    QLineEdit* m_note;
    QTimer* m_wait;     ///< after the last letter, before it is asked what may not be meant so
    int m_question = 0; ///< counts what was asked so; the newest alone is answered
    int m_answered = 0; ///< the question whose answer is shown
};

} // namespace app

#pragma once

#include "app/gui/gear/manifests/manifest_panel.h"

#include <optional>

class QCheckBox;
class QLineEdit;

namespace app {

class ChoiceBox;

/// One point of a manifest as it is asked now: its name and check, whether it is looked at, measured or
/// timed, its limits, whether it is required, its note. Written as a line is.
class ManifestPointPanel : public ManifestPanel {
    Q_OBJECT

public:
    explicit ManifestPointPanel(GearTools tools, QWidget* parent = nullptr);

    /// `stillAskedOf`: boats of the class that ask it by a point of their own. `hasBoat`: as of a line.
    void edit(const core::ManifestOwner& owner, const core::AskedPoint& point,
              const QStringList& stillAskedOf, bool hasBoat = true);
    void beginNew(const core::ManifestOwner& owner);
    bool isOpenOn(const core::ManifestOwner& owner, const core::AskedPoint& point) const;
    void setFocusOnFirst();

private:
    void build();
    QLayout* buildLimits();
    void connectParts();
    void fill();
    void adapt();
    core::PointKind kind() const;
    bool isReadable() const; ///< its limits are numbers, or empty
    core::PhasePoint wanted() const;
    static QString aboutOf(const core::AskedPoint& asked, const QString& boat);
    void writeRow() override;
    void takeAway() override;
    void makeAsClass() override;

    core::PhasePoint m_point; ///< as it was looked at
    bool m_isOwn = false;
    QWidget* m_nameRow;
    QLineEdit* m_name;
    ChoiceBox* m_phase;
    ChoiceBox* m_kind;
    QCheckBox* m_required;
    QWidget* m_limits;
    QLineEdit* m_low;
    QLineEdit* m_high;
    QLineEdit* m_unit;
    QLabel* m_seconds;
    QLabel* m_caution;
    QLineEdit* m_note;
};

} // namespace app

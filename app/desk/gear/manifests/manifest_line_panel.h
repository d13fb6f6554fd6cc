#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/desk/gear/office/gear_pages.h"
#include "core/register/manifest_record.h"

#include <optional>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace app {

class ChoiceBox;
class SaidLabel;

/// One line of a manifest as it is asked now: its number, whether it is required, its note. It is written as
/// an import would write it, under the name of whoever is at work.
class ManifestLinePanel : public QWidget {
    Q_OBJECT

public:
    explicit ManifestLinePanel(GearTools tools, QWidget* parent = nullptr);

    void edit(const core::ManifestOwner& owner, const core::AskedLine& line);
    void beginNew(const core::ManifestOwner& owner, const QStringList& kitTypes); ///< not in the manifest yet
    bool isNew() const { return m_isNew; }
    /// Whether it shows that line as it is: what was typed meanwhile need not be lost.
    bool isOpenOn(const core::ManifestOwner& owner, const core::ManifestLine& line) const;
    void setFocusOnNumber();

signals:
    void changed(const QString& sentence); ///< the manifest has, and what became of it
    void refused(const core::Error& error);
    void officerWanted(); ///< nobody is named who could stand by a change

private:
    void build();
    void show(const core::ManifestOwner& owner, const core::ManifestLine& line, bool isNew);
    void write(int quantity);
    void adapt();

    GearTools m_tools;
    core::ManifestOwner m_owner;
    core::ManifestLine m_line;
    bool m_isNew = false;
    QLabel* m_heading;
    QLabel* m_about;
    ChoiceBox* m_kitType;
    QSpinBox* m_number;
    QCheckBox* m_required;
    QLineEdit* m_note;
    QPushButton* m_takeAway;
    QPushButton* m_write;
};

} // namespace app

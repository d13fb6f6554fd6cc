#pragma once

#include "app/gui/widgets/gear_page.h"

#include <memory>
#include <optional>
#include <string>

class QLabel;
class QLineEdit;
class QPushButton;

namespace core {
class Pin;
}

namespace app {

/// A person's PIN: given, changed or taken away. It says plainly what a PIN does and what it does not.
class PinPanel : public GearPart {
    Q_OBJECT

public:
    explicit PinPanel(GearTools tools, QWidget* parent);

    void ask(const std::string& person);

signals:
    void kept();                           ///< nothing shall be changed
    void changed(const QString& sentence); ///< it is

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void take(bool isSet, bool isOfficer);
    void set();
    void clear();
    void adapt();
    /// Of what is typed there; an error is said. Empty where nothing is typed.
    std::optional<std::shared_ptr<core::Pin>> typedIn(QLineEdit& edit);

    std::string m_person;
    QLabel* m_heading;
    QLabel* m_now; ///< whether there is one
    QLineEdit* m_own;
    QLineEdit* m_pin;
    QLineEdit* m_again;
    QPushButton* m_keep;
    QPushButton* m_clear;
    QPushButton* m_set;
};

} // namespace app

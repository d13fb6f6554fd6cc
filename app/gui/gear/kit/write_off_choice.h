#pragma once

#include <QWidget>

class QPushButton;

namespace app {

class ChoiceBox;

/// Writes something off: first why, then the button, which waits for the reason.
class WriteOffChoice : public QWidget {
    Q_OBJECT

public:
    /// `prefix` of the object names of its parts.
    WriteOffChoice(const QByteArray& prefix, QWidget* parent);

    void clear(); ///< no reason is chosen, as at first

signals:
    void writeOffPressed(const QString& why); ///< the reason as the register has it

private:
    ChoiceBox* m_why;
    QPushButton* m_button;
};

} // namespace app

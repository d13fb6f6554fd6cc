#pragma once

#include "app/gui/widgets/second_press.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace app {

class ChoiceBox;

/// "why?" (data: empty) and the reasons, each with the register's word for it.
void offerReasons(ChoiceBox& box);

/// Writes something off: first why, then the button, which waits for the reason and asks once more, saying
/// what to do with the thing.
class WriteOffChoice : public QWidget {
    Q_OBJECT

public:
    /// `prefix` of the object names of its parts.
    WriteOffChoice(const QByteArray& prefix, QWidget* parent);

    void clear(); ///< no reason is chosen, as at first

signals:
    void writeOffPressed(const QString& why); ///< the reason as the register has it
    void asked(bool onceMore);                ///< its question is in view, or no more

private:
    void build(const QByteArray& prefix);
    void press();
    void keep();
    void adapt();

    SecondPress m_second;
    QLabel* m_question;
    ChoiceBox* m_why;
    QPushButton* m_button;
    QPushButton* m_keep;
};

} // namespace app

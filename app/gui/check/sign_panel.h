#pragma once

#include <QStringList>
#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace core {
struct CheckAnswer;
}

namespace app {

/// Who stands by the check: the cautions, the person, for a launch with short kit the reason, and the
/// signature.
class SignPanel : public QWidget {
    Q_OBJECT

public:
    explicit SignPanel(QWidget* parent = nullptr);

    /// `aboard` come first; the driver is proposed.
    void begin(const core::CheckAnswer& answer, const QStringList& aboard, const QStringList& all);
    void setAnswer(const core::CheckAnswer& answer);
    /// Somebody of the club signs instead of who was proposed. False: nobody is called that.
    bool nameSigner(const QString& person);
    /// Presses the signature, if it can be given now. False: something is still wanted.
    bool press();

signals:
    void signPressed(const QString& by, const QString& urgent);
    void backPressed();

private:
    void adapt();

    bool m_needsReason = false;
    QLabel* m_heading;
    QLabel* m_caution;
    QComboBox* m_by;
    QLabel* m_reasonLabel;
    QLineEdit* m_reason;
    QPushButton* m_sign;
};

} // namespace app

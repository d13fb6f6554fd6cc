#pragma once

#include <QLabel>
#include <QWidget>

class QPushButton;

namespace core {
struct CheckAnswer;
}

namespace app {

/// The outcome in one sentence, at the foot at all times, and the ways to end the check.
class OutcomeFoot : public QWidget {
    Q_OBJECT

public:
    explicit OutcomeFoot(QWidget* parent = nullptr);

    void setAnswer(const core::CheckAnswer& answer);
    void setTouched(bool isTouched); ///< something stands recorded in the check
    void showButtons(bool shown);    ///< hidden while the signing is under way

signals:
    void signPressed();
    void saveForLaterPressed();
    void letGoPressed();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_sentence;
    QPushButton* m_sign;
    QPushButton* m_later;
    QPushButton* m_letGo;
};

} // namespace app

#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace app {

/// After the signature: what was signed, and its printout.
class SignedPanel : public QWidget {
    Q_OBJECT

public:
    explicit SignedPanel(QWidget* parent = nullptr);

    void begin(const QString& sentence, const QString& urgent);
    void say(const QString& sentence); ///< what became of the printout

signals:
    void printPressed();
    void savePressed();
    void donePressed();

private:
    QLabel* m_sentence;
    QLabel* m_urgent;
    QLabel* m_said;
    QPushButton* m_done;
};

} // namespace app

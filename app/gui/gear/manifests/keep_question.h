#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace app {

/// Asks in the page, where the thing stands, whether it is to be taken away. The keyboard goes to "Keep",
/// and Escape keeps.
class KeepQuestion : public QWidget {
    Q_OBJECT

public:
    /// `prefix` of the names of its label and buttons.
    explicit KeepQuestion(const QByteArray& prefix, QWidget* parent = nullptr);

    void ask(const QString& question);
    void close() { hide(); } ///< without an answer

signals:
    void kept();      ///< nothing is taken away
    void takenAway(); ///< it shall be

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLabel* m_question;
    QPushButton* m_keep;
    QPushButton* m_takeAway;
};

} // namespace app

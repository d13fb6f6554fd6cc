#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class Drafts;

/// Something that is done for a reason: the question, a sentence, and the button, which waits for the
/// sentence. Return in the sentence goes to the button and does not press it.
class ReasonForm : public QWidget {
    Q_OBJECT

public:
    /// `prefix` of the object names of its parts; `does`: the button.
    ReasonForm(const QByteArray& prefix, const QString& question, const QString& does, QWidget* parent);

    /// Empties it, or takes up what was half written there; an empty place keeps nothing.
    void begin(const QString& drafts = {});
    void takeKeyboard();

signals:
    void pressed(const QString& reason);

private:
    void adapt();

    QLineEdit* m_reason;
    Drafts* m_drafts;
    QLabel* m_wanting; ///< what is wanting of the sentence
    QPushButton* m_button;
};

} // namespace app

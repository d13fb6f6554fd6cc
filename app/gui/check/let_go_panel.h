#pragma once

#include <QWidget>

class QLabel;

namespace app {

class ReasonForm;
struct CheckState;

/// Closes a check without a signature, with the reason why; it was opened by mistake, or nobody goes.
class LetGoPanel : public QWidget {
    Q_OBJECT

public:
    explicit LetGoPanel(QWidget* parent = nullptr);

    /// `drafts`: where the reason is kept while it is half written.
    void begin(const CheckState& state, const QString& drafts);

signals:
    void closePressed(const QString& reason);
    void backPressed();

private:
    QLabel* m_newest;
    ReasonForm* m_reason;
};

} // namespace app

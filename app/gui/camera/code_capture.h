#pragma once

#include <QObject>

class QKeyEvent;
class QLineEdit;
class QWidget;

namespace app {

/// Lets a code be typed by hand without choosing a field first: what is typed anywhere in the page's window
/// goes to `codeEdit`, and Enter sends it. Text fields keep their keys. What a hand-held scanner types never
/// comes here, see HandScanner.
class CodeCapture : public QObject {
    Q_OBJECT

public:
    /// Works while `page` is visible in the active window.
    CodeCapture(QWidget& page, QLineEdit& codeEdit);

signals:
    void codeTyped(const QString& text); ///< as it was typed or came from a scanner, ended by Enter

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool takeKey(QKeyEvent& event);
    bool takeEdit(QKeyEvent& event);
    void send();

    QWidget& m_page;
    QLineEdit& m_codeEdit;
};

} // namespace app

#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

/// Before a club file is open: what to do first.
class WelcomePage : public QWidget {
    Q_OBJECT

public:
    explicit WelcomePage(QWidget* parent = nullptr);

    void say(const QString& sentence); ///< why a file could not be opened

signals:
    void openPressed();
    void newPressed(const QString& clubName);

private:
    QLabel* m_said;
    QLineEdit* m_name;
    QPushButton* m_new;
};

} // namespace app

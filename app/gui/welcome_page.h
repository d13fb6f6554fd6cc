#pragma once

#include "app/gui/camera/scan_taker.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

/// Before a club file is open: what to do first.
class WelcomePage : public QWidget, public ScanTaker {
    Q_OBJECT

public:
    explicit WelcomePage(QWidget* parent = nullptr);

    void say(const QString& sentence); ///< why a file could not be opened
    void sayOfScan(const QString& sentence) override { say(sentence); }

signals:
    void openPressed();
    void newPressed(const QString& clubName);

private:
    QLabel* m_said;
    QLineEdit* m_name;
    QPushButton* m_new;
};

} // namespace app

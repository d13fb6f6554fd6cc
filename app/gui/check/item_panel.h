#pragma once

#include "app/gui/check/check_row.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

/// One item of the check: what is said of it, and what can be done: withdraw it as damaged, take its sighting
/// back.
class ItemPanel : public QWidget {
    Q_OBJECT

public:
    explicit ItemPanel(QWidget* parent = nullptr);

    void begin(const CheckRow& row, bool toWithdraw);

signals:
    void withdrawPressed(const QString& code, const QString& text);
    void takeBackPressed(const QString& code);
    void backPressed();

private:
    QString m_code;
    QLabel* m_name;
    QLabel* m_codeLabel;
    QLabel* m_remark;
    QLineEdit* m_damage;
    QPushButton* m_withdraw;
    QPushButton* m_takeBack;
};

} // namespace app

#pragma once

#include "app/gui/check/check_row.h"

#include <QStringList>
#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class Drafts;

/// One item of the check: what is said of it, and what can be done: withdraw it as damaged, take its sighting
/// back.
class ItemPanel : public QWidget {
    Q_OBJECT

public:
    explicit ItemPanel(QWidget* parent = nullptr);

    /// `drafts`: where the sentence is kept while it is half written.
    void begin(const CheckRow& row, bool toWithdraw, const QString& drafts);

    /// What its rules wait for; of another item than the one that is shown: nothing happens.
    void setEvents(const QString& code, const QStringList& events);

signals:
    void withdrawPressed(const QString& code, const QString& text);
    void happenedPressed(const QString& code, const QString& event);
    void takeBackPressed(const QString& code);
    void backPressed();

private:
    void adapt();
    void clearEvents();

    QString m_code;
    QLabel* m_name;
    QLabel* m_codeLabel;
    QLabel* m_remark;
    QLineEdit* m_damage;
    Drafts* m_drafts;
    QLabel* m_wanting; ///< what is wanting of the sentence
    QPushButton* m_withdraw;
    QWidget* m_happened; ///< a button for each event
    QPushButton* m_takeBack;
};

} // namespace app

#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QList>
#include <QWidget>

#include "core/register/operation.h"

#include <utility>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class Drafts;

/// What a crew writes of its trip: times, engine hours, launches, fuel, incidents. What is not known stays
/// empty.
class TripPanel : public QWidget {
    Q_OBJECT

public:
    explicit TripPanel(QWidget* parent = nullptr);

    /// `proposed` has what is known already; its days are the days of the times that are typed. `drafts`:
    /// where what is half written is kept.
    void begin(const core::Operation& proposed, core::Instant now, const QString& drafts);

    void setPairs(int pairs); ///< of short fields, from the first, that stand beside each other

signals:
    void writePressed(const core::Operation& trip);
    void backPressed();

private:
    QLineEdit* addField(const QString& name, const QString& words, const QString& hint);
    void write();
    void complain(QLineEdit& field, const QString& sentence);

    core::Operation m_proposed;
    core::Instant m_now;
    Drafts* m_drafts;
    QGridLayout* m_form;
    QList<std::pair<QLabel*, QLineEdit*>> m_fields; ///< in their order, each with its word
    QLabel* m_people;
    QLineEdit* m_left;
    QLineEdit* m_back;
    QLineEdit* m_hours;
    QLineEdit* m_launches;
    QLineEdit* m_fuel;
    QLineEdit* m_incidents;
    QLabel* m_said;
    QPushButton* m_write;
};

} // namespace app

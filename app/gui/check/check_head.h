#pragma once

#include "app/gui/club/check_state.h"

#include <QWidget>

class QLabel;

namespace app {

class PeopleBar;

/// The head of the check page: the boat, which check it is and since when, who is aboard.
class CheckHead : public QWidget {
    Q_OBJECT

public:
    explicit CheckHead(QWidget* parent = nullptr);

    void begin(const QString& boat, core::Phase phase);
    void setState(const CheckState& state);
    void openDriver();              ///< puts the keyboard on the driver's box
    void setNamesOpen(bool isOpen); ///< whether people can be chosen still

signals:
    void namesChosen(const QStringList& aboard);

private:
    QLabel* m_boat;
    QLabel* m_phase;
    QLabel* m_begun; ///< when, of one that was begun before
    PeopleBar* m_people;
};

} // namespace app

#pragma once

#include <QMenu>

namespace app {

/// What is done with the club file, and the way to the boats and out.
class ClubMenu : public QMenu {
    Q_OBJECT

public:
    explicit ClubMenu(QWidget* parent = nullptr);

signals:
    void openPressed();
    void newPressed();
    void importPressed();
    void spreadsheetPressed();
    void boatsPressed();
    void quitPressed();
};

} // namespace app

#pragma once

#include <QMenu>

namespace app {

/// What is done with the club file, and the way to the boats and out.
class ClubMenu : public QMenu {
    Q_OBJECT

public:
    explicit ClubMenu(QWidget* parent = nullptr);

    /// Whether copies go to a folder after each signed check, and so can be ended.
    void setCopying(bool isCopying);

signals:
    void openPressed();
    void newPressed();
    void importPressed();
    void exchangePressed();
    void backUpPressed();
    void restorePressed();
    void copyFolderPressed();
    void noCopiesPressed();
    void spreadsheetPressed();
    void boatsPressed();
    void quitPressed();

private:
    QAction* m_noCopies;
};

} // namespace app

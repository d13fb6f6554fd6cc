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
    /// Whether a gear officer's acts are unlocked, and so can be locked.
    void setUnlocked(bool isUnlocked);

signals:
    void openPressed();
    void newPressed();
    void importPressed();
    void namePressed();
    void exchangePressed();
    void lockPressed();
    void backUpPressed();
    void restorePressed();
    void copyFolderPressed();
    void noCopiesPressed();
    void spreadsheetPressed();
    void boatsPressed();
    void quitPressed();

private:
    QAction* m_noCopies;
    QAction* m_lock;
};

} // namespace app

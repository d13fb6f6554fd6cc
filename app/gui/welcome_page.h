#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/camera/scan_taker.h"
#include "app/gui/choosers.h"
#include "app/gui/club/new_club.h"
#include "core/base/result.h"

class QLabel;
class QPushButton;

namespace app {

class NewClubForm;

/// Before a club file is open: open one, or start a new one.
class WelcomePage : public QWidget, public ScanTaker {
    Q_OBJECT

public:
    explicit WelcomePage(Choosers choosers, QWidget* parent = nullptr);

    void say(const QString& sentence); ///< why a file could not be opened
    void sayOfScan(const QString& sentence) override { say(sentence); }
    /// What became of the new club: made, or why not, beside what it is about.
    void takeMade(const NewClub& wanted, const core::Result<core::ImportPlan>& plan);
    /// The club that is open and stays so until another is; empty: none.
    void setOpenClub(const QString& club);
    void beginNew(); ///< the keyboard goes to the new club's name

signals:
    void backPressed(); ///< to the club that is open
    void openPressed();
    void newPressed(const NewClub& wanted);

private:
    void adapt();

    QLabel* m_title;
    QLabel* m_said;
    QPushButton* m_back;
    QPushButton* m_open;
    NewClubForm* m_new;
};

} // namespace app

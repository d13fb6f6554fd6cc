#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/choosers.h"
#include "app/gui/club/new_club.h"
#include "core/base/error.h"

class QButtonGroup;
class QGridLayout;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QRadioButton;

namespace app {

/// What somebody says of a new club file: its name, where it goes, what it begins with. Each thing that is
/// wrong is said beside what it is about.
class NewClubForm : public QWidget {
    Q_OBJECT

public:
    explicit NewClubForm(Choosers choosers, QWidget* parent = nullptr);

    bool isBegun() const; ///< a name was given
    NewClub wanted() const;
    void sayOfFile(const core::Error& error); ///< why the file could not be made
    void sayOfRegister(const QString& words); ///< which rows of the folder were refused
    void setMaking(bool isMaking);            ///< while the file is made nothing can be pressed
    void clear();                             ///< for the next club
    void arrangeFor(int width);               ///< of the page

signals:
    void changed();
    void startPressed();

private:
    void build();
    QLayout* buildName();
    QLayout* buildChoices();
    QLayout* buildFolder();
    void connectParts();
    void addChoice(const QString& words, NewClub::Begins begins, const char* name,
                   const QString& starter = {});
    void suggest();
    void chooseFile();
    void chooseFolder();
    void adapt();
    bool isWhole(); ///< says what is missing

    struct Choice {
        QRadioButton* button = nullptr;
        NewClub::Begins begins = NewClub::Begins::Empty;
        QString starter;
        QString about;
    };
    const Choice& chosen() const;

    Choosers m_choosers;
    std::vector<Choice> m_choices;
    QGridLayout* m_grid = nullptr; ///< of the choices
    QLineEdit* m_name;
    QLineEdit* m_file;
    QPushButton* m_chooseFile;
    QLabel* m_fileSaid;
    QLabel* m_about;
    QWidget* m_folderRow;
    QLineEdit* m_folder;
    QPushButton* m_chooseFolder;
    QLabel* m_registerSaid;
    QPushButton* m_start;
    bool m_isSuggested = true; ///< the file follows the name: nobody chose another
    bool m_isMaking = false;
};

} // namespace app

#pragma once

#include <QString>
#include <QStringList>

#include <functional>

class QPrinter;
class QWidget;

namespace app {

/// Every question that a dialog of the system asks, and what it says of sticks, in one place, so that a test
/// can answer. Empty: nothing chosen.
struct Choosers {
    std::function<QString(QWidget*)> openClub;
    std::function<QString(QWidget*)> openCopy;
    std::function<QString(QWidget*)> copyFolder;
    std::function<QString(QWidget*)> otherClub;
    /// The folders at which removable media are mounted. On any thread: a medium may be slow to answer.
    std::function<QStringList()> sticks;
    std::function<QString(QWidget*)> newClub;
    std::function<QString(QWidget*)> importFolder;
    std::function<QString(QWidget*)> spreadsheet;
    std::function<QString(QWidget*)> exportFolder;
    std::function<QStringList(QWidget*)> pictures;
    std::function<QString(QWidget*)> pictureFolder;
    std::function<QString(QWidget*, const QString& proposed)> saveFile;
    std::function<bool(QWidget*, QPrinter&)> printer;
};

/// Where to write a file, by `saveFile`; empty when nobody is asked or nothing was chosen.
QString fileToSave(const Choosers& choosers, QWidget* window, const QString& proposed);

/// The system's own dialogs.
Choosers systemChoosers();

} // namespace app

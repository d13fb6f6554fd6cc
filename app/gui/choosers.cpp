#include "app/gui/choosers.h"

#include "app/gui/club/new_club.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QPrintDialog>
#include <QStorageInfo>

namespace app {
namespace {

struct ChoosersText {
    Q_DECLARE_TR_FUNCTIONS(Choosers)
};

QString clubFiles() {
    return ChoosersText::tr("Club files (*.tholepin);;All files (*)");
}

/// What the dialog offers for a file to be saved, by the name proposed.
QString filesLike(const QString& proposed) {
    if (proposed.endsWith(QLatin1String(".csv"))) return ChoosersText::tr("CSV (*.csv)");
    if (proposed.endsWith(QLatin1String(".tholepin"))) return clubFiles();
    if (proposed.endsWith(QLatin1String(".ics"))) return ChoosersText::tr("Calendar (*.ics)");
    return ChoosersText::tr("PDF (*.pdf)");
}

/// Where desktops mount what is put in, and people what they share (Filesystem Hierarchy Standard 3.0, /media
/// and /mnt; /run/media of udisks2).
QStringList mountedSticks() {
    QStringList roots;
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes()) {
        const QString root = volume.rootPath();
        const bool isStick = root.startsWith(QLatin1String("/media/")) ||
                             root.startsWith(QLatin1String("/mnt")) ||
                             root.startsWith(QLatin1String("/run/media/"));
        if (isStick && volume.isValid() && volume.isReady()) roots << root;
    }
    return roots;
}

QString newClub(QWidget* parent) {
    QString file = QFileDialog::getSaveFileName(parent, ChoosersText::tr("Start a new club file"),
                                                documentsFolder(), clubFiles());
    if (!file.isEmpty() && !file.contains('.')) file += QStringLiteral(".tholepin");
    return file;
}

} // namespace

QString fileToSave(const Choosers& choosers, QWidget* window, const QString& proposed) {
    return choosers.saveFile ? choosers.saveFile(window, proposed) : QString();
}

Choosers systemChoosers() {
    Choosers choosers;
    choosers.openClub = [](QWidget* parent) {
        return QFileDialog::getOpenFileName(parent, ChoosersText::tr("Open a club file"), documentsFolder(),
                                            clubFiles());
    };
    choosers.openCopy = [](QWidget* parent) {
        return QFileDialog::getOpenFileName(parent, ChoosersText::tr("A backup to restore from"),
                                            documentsFolder(), clubFiles());
    };
    choosers.copyFolder = [](QWidget* parent) {
        return QFileDialog::getExistingDirectory(
            parent, ChoosersText::tr("A folder for a copy after each signed check"), documentsFolder());
    };
    choosers.otherClub = [](QWidget* parent) {
        return QFileDialog::getOpenFileName(parent, ChoosersText::tr("The club file of another machine"),
                                            documentsFolder(), clubFiles());
    };
    choosers.sticks = mountedSticks;
    choosers.newClub = newClub;
    choosers.importFolder = [](QWidget* parent) {
        return QFileDialog::getExistingDirectory(parent, ChoosersText::tr("A folder of CSV files to import"),
                                                 documentsFolder());
    };
    choosers.spreadsheet = [](QWidget* parent) {
        return QFileDialog::getOpenFileName(
            parent, ChoosersText::tr("A spreadsheet to import"), documentsFolder(),
            ChoosersText::tr("Spreadsheets (*.xlsx *.ods *.csv *.tsv *.txt);;All files (*)"));
    };
    choosers.exportFolder = [](QWidget* parent) {
        return QFileDialog::getExistingDirectory(
            parent, ChoosersText::tr("A folder to write the register's CSV files to"), documentsFolder());
    };
    choosers.pictures = [](QWidget* parent) {
        return QFileDialog::getOpenFileNames(parent, ChoosersText::tr("A video or pictures to read"),
                                             documentsFolder());
    };
    choosers.pictureFolder = [](QWidget* parent) {
        return QFileDialog::getExistingDirectory(parent, ChoosersText::tr("A folder of pictures to read"),
                                                 documentsFolder());
    };
    choosers.saveFile = [](QWidget* parent, const QString& proposed) {
        return QFileDialog::getSaveFileName(parent, ChoosersText::tr("Save as a file"),
                                            documentsFolder() + '/' + proposed, filesLike(proposed));
    };
    choosers.printer = [](QWidget* parent, QPrinter& printer) {
        return QPrintDialog(&printer, parent).exec() == QDialog::Accepted;
    };
    return choosers;
}

} // namespace app

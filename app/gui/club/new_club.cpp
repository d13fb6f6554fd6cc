#include "app/gui/club/new_club.h"

#include "app/starters/starters.h"
#include "core/base/error_code.h"
#include "core/club/club.h"
#include "core/exchange/csv_import.h"

#include <QDir>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace app {
namespace {

core::Result<core::ImportPlan> makeFromStarter(const NewClub& wanted, core::CalendarDay today) {
    const QTemporaryDir folder;
    if (!writeStarter(wanted.starter, folder.path()))
        return core::Error{
            core::ErrorCode::FileNotMade, {folder.errorString().toStdString()}, wanted.starter.toStdString()};
    return core::Club::createFrom(wanted.file.toStdString(), wanted.name.toStdString(),
                                  folder.path().toStdString(), today);
}

} // namespace

core::Result<core::ImportPlan> makeClub(const NewClub& wanted, core::CalendarDay today) {
    const std::string file = wanted.file.toStdString(), name = wanted.name.toStdString();
    if (wanted.begins == NewClub::Begins::Starter) return makeFromStarter(wanted, today);
    if (wanted.begins == NewClub::Begins::Folder)
        return core::Club::createFrom(file, name, wanted.folder.toStdString(), today);
    const auto made = core::Club::create(file, name);
    if (!made) return made.error();
    return core::ImportPlan{};
}

QString suggestedFile(const QString& clubName) {
    // What no file system of a common machine takes in a name becomes a blank.
    static const QRegularExpression impossible(QStringLiteral(R"([\x00-\x1f\x7f/\\:*?"<>|]+)"));
    QString name = QString(clubName).replace(impossible, QStringLiteral(" ")).simplified();
    while (name.startsWith(u'.'))
        name.remove(0, 1);
    if (name.isEmpty()) return {};
    return QDir(documentsFolder()).filePath(name.left(80) + QStringLiteral(".tholepin"));
}

QString documentsFolder() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QDir(folder).exists() ? folder : QDir::homePath();
}

} // namespace app

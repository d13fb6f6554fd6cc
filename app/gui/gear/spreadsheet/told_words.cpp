#include "app/gui/gear/spreadsheet/told_words.h"

#include "app/gui/widgets/drafts.h"

#include <QSettings>
#include <QStringList>

namespace app {
namespace {

QString placeOf(const QString& clubFile, core::SheetId sheet) {
    const std::string_view name = core::sheet(sheet).name();
    return settingsOf(QStringLiteral("spreadsheet-words"), clubFile) + QLatin1Char('/') +
           QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

} // namespace

ToldWords toldWords(const QString& clubFile, core::SheetId sheet) {
    // Three texts each: a word may hold what a key of the settings may not.
    const QStringList kept = QSettings().value(placeOf(clubFile, sheet)).toStringList();
    ToldWords words;
    for (qsizetype i = 0; i + 2 < kept.size(); i += 3)
        words[{kept[i].toStdString(), kept[i + 1].toStdString()}] = kept[i + 2].toStdString();
    return words;
}

void keepTold(const QString& clubFile, core::SheetId sheet, const ToldWords& words) {
    QStringList kept;
    for (const auto& [where, ours] : words)
        kept << QString::fromStdString(where.first) << QString::fromStdString(where.second)
             << QString::fromStdString(ours);
    QSettings().setValue(placeOf(clubFile, sheet), kept);
}

} // namespace app

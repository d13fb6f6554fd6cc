#include "app/gui/help/help_places.h"

#include <QFile>
#include <QStringList>

namespace app {
namespace {

struct PageHelp {
    const char* page;
    const char* document;
    const char* heading;
    const char* german; ///< heading in hilfe.md
};

constexpr PageHelp places[] = {
    {"welcome", "first-hour.md", "", "Anfangen"},
    {"board", "crew.md", "", "Die Boote"},
    {"launch", "crew.md", "1. Before: the launch check", "Auslaufprüfung"},
    {"return", "crew.md", "2. After: the return check", "Rückkehrprüfung"},
    {"missing", "gear-officer.md", "Missing", "Fehlt"},
    {"events", "gear-officer.md", "Events", "Einsätze"},
    {"kit", "gear-officer.md", "Kit", "Ausrüstung"},
    {"bench", "gear-officer.md", "Bench", "Werkbank"},
    {"stocktake", "gear-officer.md", "Stocktake", "Inventur"},
    {"log", "gear-officer.md", "Log", "Logbuch"},
    {"ready", "gear-officer.md", "Make ready", "Klarmachen"},
    {"due", "season.md", "What falls due", "Fällig"},
    {"replace", "season.md", "What to buy, and by which day", "Ersatz"},
    {"tags", "gear-officer.md", "Tags", "Etiketten"},
    {"manifests", "gear-officer.md", "Manifests", "Packlisten"},
    {"register", "gear-officer.md", "Register", "Verzeichnis"},
    {"record", "season.md", "What can be shown afterwards", "Protokoll"},
    {"setup", "gear-officer.md", "Set up", "Aufbau"},
    {"spreadsheet", "gear-officer.md", "Import", "Einlesen"},
    {"exchange", "machines.md", "Exchanging", "Austausch"},
};

} // namespace

HelpPlace helpOf(const QString& page, const QString& language) {
    const bool isGerman = language == "de";
    for (const PageHelp& place : places)
        if (page == QLatin1String(place.page))
            return isGerman ? HelpPlace{"hilfe.md", QString::fromUtf8(place.german)}
                            : HelpPlace{place.document, place.heading};
    return {isGerman ? "hilfe.md" : "gear-officer.md", {}};
}

QString helpDocument(const QString& name) {
    QFile file(":/help/" + name);
    if (!file.open(QIODevice::ReadOnly)) return {};
    QStringList lines = QString::fromUtf8(file.readAll()).split('\n');
    lines.removeIf([](const QString& line) { return line.startsWith("![") || line.startsWith("<div"); });
    return lines.join('\n');
}

QString slugOf(const QString& heading) {
    QString slug;
    for (const QChar letter : heading.toLower())
        if (letter.isLetterOrNumber() || letter == '-')
            slug += letter;
        else if (letter == ' ')
            slug += '-';
    return slug;
}

} // namespace app

#include "app/starters/starters.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <algorithm>

static void loadStarters() {
    Q_INIT_RESOURCE(starters); // of a static library, which nothing else loads
}

namespace app {
namespace {

class StarterWords {
    Q_DECLARE_TR_FUNCTIONS(StarterWords)
};

} // namespace

std::vector<Starter> starters() {
    return {{QStringLiteral("inflatable"), StarterWords::tr("an inflatable rescue boat with two aboard"),
             StarterWords::tr(
                 "Rescue tube, paddles, tow line, knife, whistles, life jackets and radio, and the points "
                 "of its hull, chambers and engine.")},
            {QStringLiteral("rowing"), StarterWords::tr("a rowing or paddled rescue boat"),
             StarterWords::tr(
                 "Oars, rescue tube, lines, knife, whistles, life jackets, radio, bailer and first-aid "
                 "kit, and the points of its hull.")},
            {QStringLiteral("cabin-launch"), StarterWords::tr("a launch with cabin and engine"),
             StarterWords::tr(
                 "Lifebuoy, lines, anchor, flares, extinguisher, life jackets, radio and more, and the "
                 "points of its hull, cabin and engine.")}};
}

bool writeStarter(const QString& name, const QString& folder) {
    loadStarters();
    const auto all = starters();
    if (std::none_of(all.begin(), all.end(), [&](const Starter& each) { return each.name == name; }))
        return false;
    const QDir from(QStringLiteral(":/starters/") + name);
    const QStringList files = from.entryList({QStringLiteral("*.csv")});
    return !files.empty() && std::all_of(files.begin(), files.end(), [&](const QString& file) {
        return QFile::copy(from.filePath(file), QDir(folder).filePath(file));
    });
}

} // namespace app

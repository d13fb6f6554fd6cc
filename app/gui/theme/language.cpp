#include "app/gui/theme/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QSettings>
#include <QTranslator>

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct Spoken {
    QString code = QStringLiteral("en");
    std::unique_ptr<QTranslator> ours;
    std::unique_ptr<QTranslator> ofQt; ///< the buttons of the system's dialogs
};

Spoken& spoken() {
    static Spoken one;
    return one;
}

bool isKnown(const QString& code) {
    const auto& all = allLanguages();
    return std::any_of(all.begin(), all.end(), [&](const Language& each) { return each.code == code; });
}

/// Null when there is none of that name.
std::unique_ptr<QTranslator> install(const QString& file, const QString& folder) {
    auto translator = std::make_unique<QTranslator>();
    if (!translator->load(file, folder)) return nullptr;
    QCoreApplication::installTranslator(translator.get());
    return translator;
}

} // namespace

const std::vector<Language>& allLanguages() {
    static const std::vector<Language> all{{"en", "English"}, {"de", "Deutsch"}};
    return all;
}

QString wantedLanguage() {
    const QString chosen = QSettings().value("look/language").toString();
    if (isKnown(chosen)) return chosen;
    const QString machines = QLocale::system().name().section('_', 0, 0);
    return isKnown(machines) ? machines : QStringLiteral("en");
}

void speak(const QString& code) {
    Spoken& now = spoken();
    now.ours.reset(); // a translator that goes is taken out
    now.ofQt.reset();
    now.code = isKnown(code) ? code : QStringLiteral("en");
    if (now.code == "en") return;
    now.ofQt = install("qtbase_" + now.code, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    now.ours = install("tholepin_" + now.code, ":/translations");
}

QString spokenLanguage() {
    return spoken().code;
}

} // namespace app

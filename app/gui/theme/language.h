#pragma once

#include <QString>

#include <vector>

namespace app {

/// A language that the window speaks: its code ("en", "de"), and its own name for itself.
struct Language {
    QString code;
    QString name;
};

/// English, as the sources have it, then the translations of app/translations.
const std::vector<Language>& allLanguages();

/// What was chosen last, else what the machine speaks, else English.
QString wantedLanguage();

/// From now on everything that is said anew is said in that language; English for an unknown code. What is on
/// the screen already stays as it is. Needs an application object; GUI thread.
void speak(const QString& code);
QString spokenLanguage();

} // namespace app

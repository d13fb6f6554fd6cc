#include "app/gui/menus/view_menu.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/language.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/sounds.h"

#include <QActionGroup>
#include <QSettings>

namespace app {
namespace {

QString themeInWords(const QString& name) {
    if (name == "sun") return ViewMenu::tr("&Sunlight");
    return name == "dark" ? ViewMenu::tr("&Dark") : ViewMenu::tr("&Light");
}

} // namespace

ViewMenu::ViewMenu(Sounds& sounds, QWidget* parent)
    : QMenu(tr("&View"), parent)
    , m_sounds(sounds)
    , m_themes(new QActionGroup(this)) {
    addThemes();
    addMotion();
    addSeparator();
    addVolume();
    addSeparator();
    addLanguages();
    addSeparator();
    addAction(tr("&Full screen"), this, &ViewMenu::fullScreenPressed)->setShortcut(QKeySequence("F11"));
}

void ViewMenu::addThemes() {
    int number = 1;
    for (const Palette& palette : allPalettes()) {
        QAction* theme = addAction(themeInWords(palette.name), this,
                                   [this, name = palette.name] { emit themeChosen(name); });
        theme->setShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(number++)));
        theme->setCheckable(true);
        theme->setObjectName("theme " + palette.name);
        m_themes->addAction(theme);
    }
    markTheme(currentPalette().name);
}

void ViewMenu::markTheme(const QString& name) {
    for (QAction* theme : m_themes->actions())
        theme->setChecked(theme->objectName() == "theme " + name);
}

void ViewMenu::addMotion() {
    QAction* calm = addAction(tr("Reduce &motion"));
    calm->setObjectName("reduceMotion");
    calm->setShortcut(QKeySequence("Ctrl+4"));
    calm->setCheckable(true);
    calm->setChecked(isMotionReduced());
    connect(calm, &QAction::toggled, this, [](bool reduced) { reduceMotion(reduced); });
}

void ViewMenu::addVolume() {
    const auto louderBy = [this](int percent) {
        m_sounds.setVolume(m_sounds.volume() + percent);
        m_sounds.play(Sound::NewAndFine);
        QSettings().setValue("sound/volume", m_sounds.volume());
    };
    addAction(tr("&Louder"), this, [louderBy] { louderBy(20); })->setShortcut(QKeySequence("Ctrl++"));
    addAction(tr("&Quieter, then off"), this, [louderBy] {
        louderBy(-20);
    })->setShortcut(QKeySequence("Ctrl+-"));
}

/// A language is named in itself, so that whoever speaks it finds it.
void ViewMenu::addLanguages() {
    for (const Language& language : allLanguages()) {
        QAction* action =
            addAction(language.name, this, [this, code = language.code] { emit languageChosen(code); });
        action->setObjectName("language " + language.code);
        action->setShortcut(QKeySequence("Ctrl+Shift+" + language.name.left(1)));
        action->setCheckable(true);
        action->setChecked(language.code == spokenLanguage());
    }
}

} // namespace app

#pragma once

#include <QMenu>

#include <functional>

class QActionGroup;

namespace app {

class Sounds;

/// How the window looks, sounds and speaks: theme, motion, volume, language, the whole screen. Each with a
/// shortcut, and kept for the next time.
class ViewMenu : public QMenu {
    Q_OBJECT

public:
    explicit ViewMenu(Sounds& sounds, QWidget* parent = nullptr);

    void markTheme(const QString& name); ///< the theme that is worn now

signals:
    void themeChosen(const QString& name);    ///< of one of `allPalettes`
    void languageChosen(const QString& code); ///< "en", "de"
    void fullScreenPressed();                 ///< into the whole screen, or out of it

private:
    void addThemes();
    void addMotion();
    void addVolume();
    void addLanguages();

    Sounds& m_sounds;
    QActionGroup* m_themes;
};

} // namespace app

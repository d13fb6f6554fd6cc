#include "app/gui/main_window.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/language.h"
#include "app/gui/theme/palette.h"
#include "app/gui/window_pictures.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QSettings>

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setApplicationName("tholepin");
    QApplication::setOrganizationName("tholepin");
    QApplication::setApplicationVersion(THOLEPIN_VERSION);

    // Before the options are described, and so before they can be asked for.
    app::speak(app::wantedLanguage());
    QCommandLineParser parser;
    parser.setApplicationDescription(QApplication::translate(
        "main", "The kit of a club's rescue boats: launch checks, return checks, the shed board."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption theme("theme", QApplication::translate("main", "sun, light or dark"), "name");
    const QCommandLineOption language("language", QApplication::translate("main", "en or de, this time only"),
                                      "code");
    const QCommandLineOption noCamera("no-camera", QApplication::translate("main", "do not start a camera"));
    const QCommandLineOption screenshots(
        "screenshots", QApplication::translate("main", "write pictures of the window to a folder and end"),
        "folder");
    parser.addOptions({theme, language, noCamera, screenshots});
    parser.addPositionalArgument("FILE", QApplication::translate("main", "the club file"), "[FILE]");
    parser.process(application);

    if (parser.isSet(language)) app::speak(parser.value(language));
    app::reduceMotion(app::isMotionReduced());
    const QSettings settings;
    app::dress(application,
               app::paletteOf(parser.isSet(theme) ? parser.value(theme)
                                                  : settings.value("look/theme", "light").toString()));
    app::MainWindow window;
    window.setCameraWanted(!parser.isSet(noCamera));
    if (parser.isSet(screenshots))
        return app::takeWindowPictures(window, parser.value(screenshots),
                                       parser.positionalArguments().value(0))
                   ? 0
                   : 3;
    // Without a file named, the club that was open last; never a new one unasked.
    const QString file = parser.positionalArguments().value(0, settings.value("club/file").toString());
    if (!file.isEmpty() && (!parser.positionalArguments().isEmpty() || QFileInfo::exists(file)))
        window.openClub(file.toStdString());
    window.show();
    return QApplication::exec();
}

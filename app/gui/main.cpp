#include "app/gui/main_window.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/language.h"
#include "app/gui/theme/palette.h"
#include "app/gui/window_pictures.h"
#include "app/manual/program_text.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QFileInfo>
#include <QIcon>
#include <QSettings>

#include <algorithm>
#include <cstdio>
#include <string_view>

namespace {

void nameProgram() {
    QCoreApplication::setApplicationName("tholepin");
    QCoreApplication::setOrganizationName("tholepin");
    QCoreApplication::setApplicationVersion(app::versionText());
}

/// Needs an application object, and the language that is spoken.
void describe(QCommandLineParser& parser) {
    const app::ProgramText& text = app::windowText();
    const auto told = [](const std::string& does) { return QApplication::translate("main", does.c_str()); };
    parser.setApplicationDescription(told(text.does));
    parser.addHelpOption();
    parser.addVersionOption();
    for (const app::TakenText& taken : text.taken) {
        const QString name = QString::fromStdString(taken.name);
        if (!taken.isOption())
            parser.addPositionalArgument(name, told(taken.does), '[' + name + ']');
        else if (name != "--help" && name != "--version")
            parser.addOption({name.mid(2), told(taken.does), QString::fromStdString(taken.value)});
    }
}

/// What it takes, or its version, is told without a display, too.
bool asksForWords(int argc, char** argv) {
    return std::any_of(argv + 1, argv + argc, [](const char* given) {
        const std::string_view word(given);
        return word == "--help" || word == "-h" || word == "--version" || word == "-v";
    });
}

int tellWords(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    app::speak(app::wantedLanguage());
    QCommandLineParser parser;
    describe(parser);
    parser.process(application); // ends the program
    return 0;
}

/// What is wrong with the line, and what may have been meant; 2, as the command line has it.
int refuse(const QCommandLineParser& parser) {
    std::vector<std::string> options;
    for (const app::TakenText& taken : app::windowText().taken)
        if (taken.isOption()) options.push_back(taken.name);
    const QStringList unknown = parser.unknownOptionNames();
    const std::string given = unknown.isEmpty() ? std::string() : "--" + unknown.front().toStdString();
    const std::string likely = app::joined(app::meant(given, options), " or ");
    std::fprintf(stderr, "tholepin: %s%s\n", qPrintable(parser.errorText()),
                 likely.empty() ? "" : (" (" + likely + "?)").c_str());
    return 2;
}

} // namespace

int main(int argc, char** argv) {
    nameProgram();
    if (asksForWords(argc, argv)) return tellWords(argc, argv);
    QApplication application(argc, argv);
    QApplication::setDesktopFileName(THOLEPIN_ID);
    QIcon icon(":/icons/tholepin-256.png");
    icon.addFile(":/icons/tholepin-48.png");
    QApplication::setWindowIcon(icon);

    // Before the options are described, and so before they can be asked for.
    app::speak(app::wantedLanguage());
    QCommandLineParser parser;
    describe(parser);
    if (!parser.parse(QApplication::arguments())) return refuse(parser);

    if (parser.isSet("language")) app::speak(parser.value("language"));
    app::reduceMotion(app::isMotionReduced());
    const QSettings settings;
    app::dress(application,
               app::paletteOf(parser.isSet("theme") ? parser.value("theme")
                                                    : settings.value("look/theme", "light").toString()));
    app::MainWindow window;
    window.setCameraWanted(!parser.isSet("no-camera"));
    const QString file = parser.positionalArguments().value(0);
    if (parser.isSet("screenshots"))
        return app::takeWindowPictures(window, parser.value("screenshots"), file) ? 0 : 3;
    // Without a file named, the club that was open last; never a new one unasked.
    const QString last = settings.value("club/file").toString();
    if (!file.isEmpty())
        window.openClub(file.toStdString());
    else if (QFileInfo::exists(last))
        window.openClub(last.toStdString());
    window.show();
    return QApplication::exec();
}

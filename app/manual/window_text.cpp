#include "app/manual/program_text.h"

#include <QtGlobal>

namespace app {

const ProgramText& windowText() {
    static const ProgramText text{
        "tholepin",
        QT_TRANSLATE_NOOP("main",
                          "The kit of a club's rescue boats: launch checks, return checks, the shed board."),
        "Opens the club file that is named, else the one that was open last. F1 shows the help of the page "
        "that is shown, in the window.",
        {{"--theme", "NAME", QT_TRANSLATE_NOOP("main", "sun, light or dark"), {"sun", "light", "dark"}},
         {"--language", "CODE", QT_TRANSLATE_NOOP("main", "en or de, this time only"), {"en", "de"}},
         {"--no-camera", {}, QT_TRANSLATE_NOOP("main", "do not start a camera")},
         {.name = "--screenshots",
          .value = "FOLDER",
          .does = QT_TRANSLATE_NOOP("main", "write pictures of the window to a folder and end"),
          .isPath = true},
         {"--help", {}, "say what it takes, and end"},
         {"--version", {}, "say its version, and end"},
         {.name = "FILE", .value = {}, .does = QT_TRANSLATE_NOOP("main", "the club file"), .isPath = true}},
        {}};
    return text;
}

} // namespace app

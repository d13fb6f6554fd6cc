#include "app/gui/theme/marks.h"

#include "app/gui/theme/palette.h"

#include <QColor>
#include <QCoreApplication>
#include <QString>

namespace app {
namespace {

struct MarksText {
    Q_DECLARE_TR_FUNCTIONS(Marks)
};

} // namespace

QString wordOf(Mark mark) {
    switch (mark) {
    case Mark::StillToFind:
        return MarksText::tr("still to find");
    case Mark::Look:
        return MarksText::tr("look");
    case Mark::Found:
        return MarksText::tr("found");
    case Mark::NotAsked:
        break;
    }
    return MarksText::tr("not asked here");
}

QColor toneOf(Mark mark, const Palette& palette) {
    switch (mark) {
    case Mark::StillToFind:
        return palette.ink;
    case Mark::Look:
        return palette.look;
    case Mark::Found:
        return palette.found;
    case Mark::NotAsked:
        break;
    }
    return palette.quiet;
}

} // namespace app

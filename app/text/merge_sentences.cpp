#include "app/text/merge_sentences.h"

#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct MergeText {
    Q_DECLARE_TR_FUNCTIONS(Merge)
};

QString columnOf(const core::LookAt& found) {
    const core::Sheet* sheet = core::sheetOfName(found.sheet);
    return sheet ? columnInWords(sheet->id, found.text) : text(found.text);
}

QString pinInWords(const core::LookAt& found) {
    if (found.isOpen)
        return MergeText::tr("The PIN of %1 counts here no more, and no other gear officer has one: "
                             "everything is open on this machine until a PIN is set here")
            .arg(text(found.name));
    return found.isPinSet
               ? MergeText::tr("A PIN of %1 came in and opens a gear officer's acts here now: ask who set it")
                     .arg(text(found.name))
               : MergeText::tr("The PIN of %1 counts here no more: ask who took it away")
                     .arg(text(found.name));
}

} // namespace

QString cameInWords(const core::CameIn& cameIn) {
    if (cameIn.facts == 0) return MergeText::tr("Nothing new");
    QString words = MergeText::tr("%1 from %2")
                        .arg(counted(cameIn.facts, QT_TRANSLATE_N_NOOP("Words", "%n fact"),
                                     QT_TRANSLATE_N_NOOP("Words", "%n facts")),
                             counted(cameIn.machines, QT_TRANSLATE_N_NOOP("Words", "%n machine"),
                                     QT_TRANSLATE_N_NOOP("Words", "%n machines")));
    QStringList parts;
    const auto tell = [&](int count, const char* one, const char* many) {
        if (count > 0) parts << counted(count, one, many);
    };
    tell(cameIn.checks, QT_TRANSLATE_N_NOOP("Words", "%n check"), QT_TRANSLATE_N_NOOP("Words", "%n checks"));
    tell(cameIn.sightings, QT_TRANSLATE_N_NOOP("Words", "%n sighting"),
         QT_TRANSLATE_N_NOOP("Words", "%n sightings"));
    tell(cameIn.changes, QT_TRANSLATE_N_NOOP("Words", "%n change of the register"),
         QT_TRANSLATE_N_NOOP("Words", "%n changes of the register"));
    tell(cameIn.leftOut, QT_TRANSLATE_N_NOOP("Words", "%n left out that stands here already"),
         QT_TRANSLATE_N_NOOP("Words", "%n left out that stand here already"));
    if (parts.isEmpty()) return words;
    return words + QStringLiteral(": ") + parts.join(QStringLiteral(", "));
}

QString lookAtInWords(const core::LookAt& found) {
    const auto tag = [](const core::ItemName& item) { return codeInWords(item.tag); };
    switch (found.kind) {
    case core::LookAt::Kind::SeenOnTwoBoats:
        return MergeText::tr("%1 was seen on %2 and on %3 within twelve hours: look where it is")
            .arg(tag(found.item), text(found.name), text(found.otherName));
    case core::LookAt::Kind::SerialTwice:
        return MergeText::tr(
                   "%1 and %2 have the same serial %3: they may be one thing that was registered twice")
            .arg(tag(found.item), tag(found.otherItem), text(found.text));
    case core::LookAt::Kind::LikeNames:
        return MergeText::tr("%1 and %2 may be two names for the same: rename one, or leave both")
            .arg(text(found.name), text(found.otherName));
    case core::LookAt::Kind::CellChangedTwice:
        return MergeText::tr("%1 of %2 was changed on two machines within an hour: the newer one holds")
            .arg(columnOf(found), text(found.name));
    case core::LookAt::Kind::OutTwice:
        return MergeText::tr("%1 was launched twice without a return between, by two machines")
            .arg(text(found.name));
    case core::LookAt::Kind::SignedTwice:
        return MergeText::tr("A check of %1 was signed on two machines: the first signature holds")
            .arg(text(found.name));
    case core::LookAt::Kind::RenamedTwice:
        return MergeText::tr("One thing was renamed on two machines, to %1 and to %2: it is called %1 now")
            .arg(text(found.name), text(found.otherName));
    case core::LookAt::Kind::CameBack:
        return MergeText::tr(
                   "%1 was taken out of the register on one machine and is used on another: it is there "
                   "again")
            .arg(text(found.name));
    case core::LookAt::Kind::PinsChanged:
        return pinInWords(found);
    }
    return {};
}

} // namespace app

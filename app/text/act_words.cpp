#include "app/text/act_words.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_checks.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ActWordsText {
    Q_DECLARE_TR_FUNCTIONS(ActWords)
};

QString itemInWords(const core::CheckAct& act) {
    const QString code = codeInWords(act.item.tag);
    return act.name.empty() ? code : QStringLiteral("%1 %2").arg(text(act.name), code);
}

} // namespace

QString actInWords(const core::CheckAct& act) {
    switch (act.kind) {
    case core::ActKind::Sighting:
        return itemInWords(act);
    case core::ActKind::Damage:
        return ActWordsText::tr("damage of %1").arg(itemInWords(act));
    case core::ActKind::Names:
        return act.people.empty() ? ActWordsText::tr("that nobody is aboard")
                                  : ActWordsText::tr("aboard: %1").arg(listed(act.people));
    case core::ActKind::Point:
        return act.value ? ActWordsText::tr("%1 at point “%2”").arg(numberInWords(*act.value), text(act.name))
                         : ActWordsText::tr("point “%1”").arg(text(act.name));
    case core::ActKind::Event:
        return ActWordsText::tr("event “%1”").arg(text(act.name));
    case core::ActKind::Trip:
        break;
    }
    return ActWordsText::tr("what was written of the trip");
}

QString undoneInWords(const core::Undone& undone) {
    const QString taken = ActWordsText::tr("Taken back: %1.").arg(actInWords(undone.act));
    return undone.next ? ActWordsText::tr("%1 Next: %2.").arg(taken, actInWords(*undone.next))
                       : ActWordsText::tr("%1 Nothing is left to take back.").arg(taken);
}

QString closedByUndo(const std::vector<std::string>& aboard) {
    return aboard.empty() ? ActWordsText::tr("taken back in the check")
                          : ActWordsText::tr("taken back by %1").arg(text(aboard.front()));
}

} // namespace app

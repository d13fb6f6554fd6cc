#include "app/text/outlook_sentences.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/answers/outlook.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace app {
namespace {

struct OutlookText {
    Q_DECLARE_TR_FUNCTIONS(Outlook)
};

QString kitSentence(const core::KitAtHomeChange& change) {
    const QString boat = text(change.boat), kit = text(change.kitType);
    if (!change.after) return OutlookText::tr("%1 will not be asked for its %2 any more.").arg(boat, kit);
    const core::KitAtHome& after = *change.after;
    if (after.there >= after.wanted)
        return OutlookText::tr("%1 will have all it needs of: %2.").arg(boat, kit);
    if (after.there == 0) return OutlookText::tr("%1 will have no %2.").arg(boat, kit);
    return OutlookText::tr("%1 will have %2 of the %3 it needs of: %4.")
        .arg(boat)
        .arg(after.there)
        .arg(after.wanted)
        .arg(kit);
}

/// The first reason that was none before.
QString newReason(const core::ConditionChange& change) {
    QStringList before;
    if (change.before)
        for (const core::NotReadyReason& reason : change.before->reasons)
            before << reasonOf(reason);
    for (const core::NotReadyReason& reason : change.after->reasons)
        if (const QString words = reasonOf(reason); !before.contains(words)) return words;
    return {};
}

QString boatSentence(const core::ConditionChange& change) {
    using Kind = core::BoatCondition::Kind;
    const QString boat = text(change.boat);
    if (!change.after) return OutlookText::tr("%1 will not be on the board any more.").arg(boat);
    if (!change.before) return OutlookText::tr("%1 will be on the board.").arg(boat);
    if (change.after->kind == Kind::KitReady) return OutlookText::tr("%1 will be kit ready.").arg(boat);
    const QString reason = newReason(change);
    if (change.before->kind == Kind::KitReady)
        return OutlookText::tr("%1 will not be kit ready any more. %2").arg(boat, reason).trimmed();
    return reason.isEmpty() ? OutlookText::tr("%1 will have fewer reasons not to be kit ready.").arg(boat)
                            : OutlookText::tr("%1: %2").arg(boat, reason);
}

/// Days that move one way: of how many things, and the earliest that comes of it.
struct Moved {
    std::set<std::string> items;
    std::optional<core::CalendarDay> first;

    void add(const core::DueChange& change, const std::optional<core::RuleDue>& due) {
        items.insert(change.item.id);
        if (due && due->due && (!first || *due->due < *first)) first = due->due;
    }
    int count() const { return static_cast<int>(items.size()); }
};

struct AllMoved {
    Moved earlier, later, added, gone, undated;
};

AllMoved movedBy(const std::vector<core::DueChange>& changes) {
    AllMoved moved;
    for (const core::DueChange& change : changes) {
        const auto dayOf = [](const std::optional<core::RuleDue>& due) {
            return due ? due->due : std::optional<core::CalendarDay>();
        };
        const auto before = dayOf(change.before), after = dayOf(change.after);
        if (change.after && change.after->state == core::DueState::Undated)
            moved.undated.add(change, change.after);
        else if (before && after && *before != *after)
            (*after < *before ? moved.earlier : moved.later).add(change, change.after);
        else if (!before && after)
            moved.added.add(change, change.after);
        else if (before && !after)
            moved.gone.add(change, change.before);
    }
    return moved;
}

/// The two forms of a sentence of things that move, with the first day behind where there is one.
void addMoved(QStringList& sentences, const Moved& moved, const char* one, const char* many) {
    if (moved.items.empty()) return;
    const QString things =
        QCoreApplication::translate("Outlook", moved.count() == 1 ? one : many, nullptr, moved.count());
    sentences << (moved.first ? OutlookText::tr("%1, the first on %2.").arg(things, inWords(*moved.first))
                              : OutlookText::tr("%1.").arg(things));
}

} // namespace

QStringList effectsInWords(const core::OutlookChange& change) {
    QStringList sentences;
    for (const core::KitAtHomeChange& each : change.kit)
        sentences << kitSentence(each);
    for (const core::ConditionChange& each : change.boats)
        sentences << boatSentence(each);
    AllMoved moved = movedBy(change.due);
    addMoved(sentences, moved.earlier, QT_TRANSLATE_N_NOOP("Outlook", "%n thing falls due earlier"),
             QT_TRANSLATE_N_NOOP("Outlook", "%n things fall due earlier"));
    addMoved(sentences, moved.later, QT_TRANSLATE_N_NOOP("Outlook", "%n thing falls due later"),
             QT_TRANSLATE_N_NOOP("Outlook", "%n things fall due later"));
    addMoved(sentences, moved.added, QT_TRANSLATE_N_NOOP("Outlook", "%n thing gets a day to fall due"),
             QT_TRANSLATE_N_NOOP("Outlook", "%n things get a day to fall due"));
    moved.gone.first.reset(); // a day that is no more says nothing
    addMoved(sentences, moved.gone, QT_TRANSLATE_N_NOOP("Outlook", "%n thing falls due no more"),
             QT_TRANSLATE_N_NOOP("Outlook", "%n things fall due no more"));
    addMoved(sentences, moved.undated,
             QT_TRANSLATE_N_NOOP("Outlook", "%n thing has no date that the rule counts from"),
             QT_TRANSLATE_N_NOOP("Outlook", "%n things have no date that the rule counts from"));
    return sentences;
}

} // namespace app

#include "app/text/make_ready_sentences.h"
#include "app/text/text.h"

#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct MakeReadyText {
    Q_DECLARE_TR_FUNCTIONS(MakeReady)
};

QString readyText(const char* english) {
    return QCoreApplication::translate("MakeReady", english);
}

QString shortLineInWords(const core::ShortLine& line) {
    return MakeReadyText::tr("%1 (%2 of %3)").arg(text(line.kitType)).arg(line.have).arg(line.wanted);
}

QString listedShort(const std::vector<core::ShortLine>& lines) {
    QStringList words;
    for (const core::ShortLine& line : lines)
        words << shortLineInWords(line);
    return listed(words);
}

QString otherInWords(const core::BoatPlan& boat) {
    return boat.unfilledOther.empty()
               ? QString()
               : MakeReadyText::tr("Not required, and short: %1.").arg(listedShort(boat.unfilledOther));
}

} // namespace

QString conditionInWords(const core::BoatPlan& boat) {
    if (boat.asksNothing)
        return MakeReadyText::tr(
            "Nothing is asked of it, so no check of it is complete: write its manifest.");
    const QString other = otherInWords(boat);
    if (boat.complete)
        return other.isEmpty() ? MakeReadyText::tr("Can be made complete.")
                               : MakeReadyText::tr("Can be made complete. %1").arg(other);
    const QString words = MakeReadyText::tr("Left out, short of: %1.").arg(listedShort(boat.shortLines));
    return other.isEmpty() ? words : words + QLatin1Char(' ') + other;
}

QString inWords(const core::Location& at) {
    if (at.isBoat()) return MakeReadyText::tr("aboard %1").arg(text(at.name));
    return at.name.empty() ? MakeReadyText::tr("place not known") : text(at.name);
}

QString answerInWords(const core::MakeReadyPlan& plan) {
    const auto complete =
        static_cast<int>(std::count_if(plan.boats.begin(), plan.boats.end(), [](const core::BoatPlan& boat) {
            return boat.complete && !boat.asksNothing;
        }));
    const auto moves = static_cast<int>(plan.moves.size());
    if (plan.boats.empty()) return MakeReadyText::tr("No boat is in to be made ready.");
    const QString boats =
        plan.boats.size() == 1
            ? MakeReadyText::tr("%1 of 1 boat can be made complete").arg(complete)
            : MakeReadyText::tr("%1 of %2 boats can be made complete").arg(complete).arg(plan.boats.size());
    if (moves == 0) return MakeReadyText::tr("%1; nothing has to be moved.").arg(boats);
    return MakeReadyText::tr("%1, with %2.")
        .arg(boats, counted(moves, QT_TRANSLATE_N_NOOP("Words", "%n move"),
                            QT_TRANSLATE_N_NOOP("Words", "%n moves")));
}

QString goalsInWords(const core::MakeReadyPlan& plan) {
    QStringList words;
    if (plan.proven())
        words << MakeReadyText::tr(
            "Best possible: no other plan makes more, or more important, boats complete.");
    else if (plan.exactGoals == 1)
        words << MakeReadyText::tr(
                     "No other plan makes more, or more important, boats complete. Of the lines that are "
                     "not required it fills %1; no plan fills more than %2.")
                     .arg(plan.goals.otherLines)
                     .arg(plan.boundOtherLines);
    else
        words << MakeReadyText::tr(
                     "The time ran out. The boats' priorities add up to %1; no plan reaches more than %2.")
                     .arg(numberInWords(plan.goals.priorityWeight), numberInWords(plan.boundPriorityWeight));
    if (!plan.boatsOut.empty())
        words << MakeReadyText::tr("Out, and not planned: %1.").arg(listed(plan.boatsOut));
    if (!plan.notPlaced.empty())
        words << counted(
            static_cast<int>(plan.notPlaced.size()),
            QT_TRANSLATE_N_NOOP("Words", "%n sound item is left out: nobody knows where it is."),
            QT_TRANSLATE_N_NOOP("Words", "%n sound items are left out: nobody knows where they are."));
    return words.join(QLatin1Char(' '));
}

QString boatInWords(const core::BoatPlan& plan) {
    const QString boat = text(plan.boat);
    if (plan.asksNothing)
        return readyText("▲ %1: nothing is asked of it, so no check of it is complete: write its manifest")
            .arg(boat);
    if (!plan.complete) {
        const QString words = readyText("▲ %1: left out, short of %2, also with all that is left over")
                                  .arg(boat, listedShort(plan.shortLines));
        return plan.unfilledOther.empty()
                   ? words
                   : words + readyText("; not required, and short: %1").arg(listedShort(plan.unfilledOther));
    }
    if (plan.unfilledOther.empty()) return readyText("✓ %1: complete").arg(boat);
    return readyText("✓ %1: complete, but for what is not required: %2")
        .arg(boat, listedShort(plan.unfilledOther));
}

QString moveInWords(const core::KitMove& move) {
    const QString item = readyText("%1  %2").arg(codeInWords(move.item.tag), text(move.kitType));
    if (move.forKitType == move.kitType) return item;
    return readyText("%1, in place of: %2").arg(item, text(move.forKitType));
}

QString tripInWords(const core::KitMove& move) {
    const char* english = move.from.isBoat() ? QT_TRANSLATE_NOOP("MakeReady", "From the boat %1 to %2:")
                                             : QT_TRANSLATE_NOOP("MakeReady", "From %1 to %2:");
    return readyText(english).arg(text(move.from.name), text(move.to));
}

QString proofInWords(const core::MakeReadyPlan& plan) {
    if (plan.proven())
        return readyText(
            "No other plan completes boats of more priority, nor fills more of their other lines.");
    if (plan.exactGoals == 1)
        return readyText(
                   "No other plan completes boats of more priority. Time ran out before it was known whether "
                   "one fills more of their other lines: %1 are filled, and no plan fills more than %2.")
            .arg(plan.goals.otherLines)
            .arg(plan.boundOtherLines);
    return readyText(
               "Time ran out before it was known whether a plan completes boats of more priority: this one "
               "reaches %1, and none reaches more than %2. Give it more seconds.")
        .arg(numberInWords(plan.goals.priorityWeight), numberInWords(plan.boundPriorityWeight));
}

} // namespace app

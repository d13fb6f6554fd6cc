#include "app/text/make_ready_sentences.h"
#include "app/text/text.h"

#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

QString readyText(const char* english) {
    return QCoreApplication::translate("MakeReady", english);
}

QString shortLineInWords(const core::ShortLine& line) {
    return readyText("%1 (%2 of %3)").arg(text(line.kitType)).arg(line.have).arg(line.wanted);
}

QString listedShort(const std::vector<core::ShortLine>& lines) {
    QStringList words;
    for (const core::ShortLine& line : lines)
        words << shortLineInWords(line);
    return listed(words);
}

} // namespace

QString boatInWords(const core::BoatPlan& plan) {
    const QString boat = text(plan.boat);
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

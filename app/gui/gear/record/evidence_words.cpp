#include "app/gui/gear/record/evidence_printout.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct EvidenceWordsText {
    Q_DECLARE_TR_FUNCTIONS(EvidencePrintout)
};

QString signedInWords(const core::SignedCheck& check, core::CalendarDay today) {
    return EvidenceWordsText::tr("signed by %1, %2: %3")
        .arg(text(check.by), inWords(check.at, today), outcomeOf(check.answer));
}

QString answerOf(const core::Evidence& evidence, core::CalendarDay today) {
    const QString boat = text(evidence.boat);
    const QString on = inWords(evidence.on, today);
    if (!evidence.launch)
        return EvidenceWordsText::tr(
                   "No launch check of %1 was signed until %2: the record does not say what was aboard.")
            .arg(boat, on);
    if (!evidence.out)
        return EvidenceWordsText::tr("%1 was in at %2: nothing was out with it.").arg(boat, on);
    return EvidenceWordsText::tr("%1 was out at %2, with %3 aboard.")
        .arg(boat, on,
             counted(static_cast<int>(evidence.aboard.size()), QT_TRANSLATE_N_NOOP("Words", "%n item"),
                     QT_TRANSLATE_N_NOOP("Words", "%n items")));
}

QStringList moreOf(const core::Evidence& evidence, core::CalendarDay today) {
    QStringList lines;
    if (evidence.on.localDay() > today)
        lines << EvidenceWordsText::tr("That is still to come: this is what the record says up to now.");
    if (!evidence.launch) return lines;
    if (!evidence.people.empty())
        lines << EvidenceWordsText::tr("People aboard: %1.").arg(listed(evidence.people));
    lines << EvidenceWordsText::tr("Launch check %1.").arg(signedInWords(*evidence.launch, today));
    if (!evidence.launch->urgent.empty())
        lines << EvidenceWordsText::tr("Launched urgently: %1.").arg(text(evidence.launch->urgent));
    lines << (evidence.back
                  ? EvidenceWordsText::tr("Return check %1.").arg(signedInWords(*evidence.back, today))
                  : EvidenceWordsText::tr("No return check has been signed since."));
    for (const auto& [then, now] : evidence.calledNow)
        lines << EvidenceWordsText::tr("%1 is called %2 now.").arg(text(then), text(now));
    return lines;
}

QString dateInWords(const core::AboardItem& item) {
    if (!item.inDate)
        return item.isUndated ? EvidenceWordsText::tr("undated by the rules of that day")
                              : EvidenceWordsText::tr("that check does not say whether it was in date");
    if (item.passed)
        return EvidenceWordsText::tr("out of date by the rules of that day: %1")
            .arg(passedInWords(*item.passed));
    if (!*item.inDate) return EvidenceWordsText::tr("out of date by the rules of that day");
    const QString due = item.due ? inWords(*item.due) : QString();
    return due.isEmpty() ? EvidenceWordsText::tr("nothing on it runs out")
                         : EvidenceWordsText::tr("in date until %1").arg(due);
}

QString meansOf(const std::string& seenBy) {
    if (seenBy == "camera") return EvidenceWordsText::tr("by the camera");
    if (seenBy == "picture") return EvidenceWordsText::tr("in a picture");
    return seenBy == "scanner" ? EvidenceWordsText::tr("by a hand-held scanner")
                               : EvidenceWordsText::tr("typed");
}

ListRow rowOf(const core::AboardItem& item, core::CalendarDay today) {
    QStringList parts{item.counted ? EvidenceWordsText::tr("counted for the manifest")
                                   : EvidenceWordsText::tr("counted for no line"),
                      dateInWords(item)};
    if (!item.wornBy.empty()) parts << EvidenceWordsText::tr("worn by %1").arg(text(item.wornBy));
    if (item.seenAt)
        parts << EvidenceWordsText::tr("seen %1 %2").arg(inWords(*item.seenAt, today), meansOf(item.seenBy));
    if (item.item.tag != item.item.id)
        parts << EvidenceWordsText::tr("its tag is now %1").arg(codeInWords(item.item.tag));
    const bool isInDate = item.inDate.value_or(false);
    const Mark mark = !isInDate ? Mark::Look : item.counted ? Mark::Found : Mark::NotAsked;
    const QString name = item.kitType.empty() ? EvidenceWordsText::tr("a tag that the register did not know")
                                              : text(item.kitType);
    // The code is the one that the signed check names.
    return plainRow(text(item.item.id), mark, mark == Mark::Look ? EvidenceWordsText::tr("look") : QString(),
                    name, withCapital(parts.join(EvidenceWordsText::tr(", "))) + QLatin1Char('.'),
                    {item.item.id, item.item.id});
}

} // namespace

EvidencePrintout evidencePrintoutOf(const core::Evidence& evidence, const QString& club,
                                    core::CalendarDay today) {
    EvidencePrintout printout{club,
                              text(evidence.boat),
                              inWords(evidence.on, today),
                              answerOf(evidence, today),
                              moreOf(evidence, today),
                              {},
                              {},
                              evidence.launch.has_value()};
    for (const core::AboardItem& item : evidence.aboard)
        printout.rows.push_back(rowOf(item, today));
    if (evidence.launch)
        printout.proof << EvidenceWordsText::tr("The signature is number %1 of machine %2: %3")
                              .arg(evidence.seq)
                              .arg(text(evidence.machine), text(evidence.factHash));
    printout.proof << EvidenceWordsText::tr("The record's newest hash: %1").arg(text(evidence.head));
    return printout;
}

} // namespace app

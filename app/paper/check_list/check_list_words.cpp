#include "app/paper/check_list/check_list_words.h"

#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct CheckListWordsText {
    Q_DECLARE_TR_FUNCTIONS(CheckList)
};

QString withRequired(const QString& words, bool isRequired) {
    return isRequired ? words : CheckListWordsText::tr("%1, not required").arg(words);
}

/// What a value is written in, where no range says it.
QString unitOf(const core::BoatPoint& point) {
    return point.kind == core::PointKind::Timed ? CheckListWordsText::tr("min") : text(point.unit);
}

} // namespace

QString pointInWords(const core::BoatPoint& point) {
    QString words = text(point.name);
    if (point.kind != core::PointKind::Look) {
        const QString range = rangeInWords(point, WithUnit::Yes);
        const QString asked = range.isEmpty() ? unitOf(point) : range;
        if (!asked.isEmpty()) words = CheckListWordsText::tr("%1, %2").arg(words, asked);
    }
    return withRequired(words, point.required);
}

QString lineInWords(const CheckList::Line& line) {
    const core::ManifestLine& asked = line.line;
    QString words = text(asked.kitType);
    if (asked.quantity > 1) words = CheckListWordsText::tr("%1 × %2").arg(asked.quantity).arg(words);
    if (line.isWorn) words = CheckListWordsText::tr("%1, one for each on board").arg(words);
    for (const std::string& substitute : asked.substitutes)
        words = CheckListWordsText::tr("%1, or %2").arg(words, text(substitute));
    return withRequired(words, asked.required);
}

} // namespace app

#include "app/gui/gear/spreadsheet/sheet_words.h"

#include "app/text/errors.h"
#include "app/text/outlook_sentences.h"
#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

using core::SheetId;

struct SheetWordsText {
    Q_DECLARE_TR_FUNCTIONS(Spreadsheet)
};

/// The rows of a sheet, as the beginning of a sentence.
QString manyInWords(SheetId sheet) {
    switch (sheet) {
    case SheetId::ManifestLines:
        return SheetWordsText::tr("Lines of boats' lists");
    case SheetId::Points:
        return SheetWordsText::tr("Points of checks");
    case SheetId::Services:
        return SheetWordsText::tr("Services");
    case SheetId::Happenings:
        return SheetWordsText::tr("Happenings");
    case SheetId::Use:
        return SheetWordsText::tr("Hours and launches");
    case SheetId::Log:
        return SheetWordsText::tr("Entries of the log");
    default:
        return withCapital(rowsInWords(sheet));
    }
}

} // namespace

QString rowKindInWords(SheetId sheet) {
    switch (sheet) {
    case SheetId::Places:
        return SheetWordsText::tr("a place");
    case SheetId::KitTypes:
        return SheetWordsText::tr("a kit type");
    case SheetId::Sizes:
        return SheetWordsText::tr("a size of a kit type");
    case SheetId::LifeRules:
        return SheetWordsText::tr("a rule of a kit type");
    case SheetId::Boats:
        return SheetWordsText::tr("a boat");
    case SheetId::ManifestLines:
        return SheetWordsText::tr("a line of a boat's list");
    case SheetId::Points:
        return SheetWordsText::tr("a point of a check");
    case SheetId::People:
        return SheetWordsText::tr("a person");
    case SheetId::Items:
        return SheetWordsText::tr("a piece of kit");
    case SheetId::Parts:
        return SheetWordsText::tr("a part of a thing");
    case SheetId::Services:
        return SheetWordsText::tr("a service that was done");
    case SheetId::Happenings:
        return SheetWordsText::tr("something that happened to a thing");
    case SheetId::Use:
        return SheetWordsText::tr("hours or launches of a thing");
    case SheetId::Log:
        return SheetWordsText::tr("an entry of the log");
    }
    return {};
}

QString meaningInWords(SheetId sheet, const std::string& meaning) {
    if (meaning.empty()) return SheetWordsText::tr("leave out");
    if (sheet == SheetId::Items && meaning == core::homeMeaning) return SheetWordsText::tr("boat or place");
    if (sheet == SheetId::Items && meaning == core::quantityMeaning)
        return SheetWordsText::tr("how many of it");
    if (core::isBySerial(core::sheet(sheet)) && meaning == core::serialMeaning)
        return SheetWordsText::tr("serial of the thing");
    const QString word = columnInWords(sheet, meaning), unit = unitOf(sheet, meaning);
    return unit.isEmpty() ? word : SheetWordsText::tr("%1 (%2)").arg(word, unit);
}

QString planInWords(const core::ImportPlan& plan) {
    QStringList sentences;
    for (const auto& [file, rows] : plan.accepted) {
        const core::Sheet* sheet = core::sheetOfFile(file);
        if (!sheet || rows == 0) continue;
        const auto isOfIt = [&](const core::RowChange& change) { return change.sheet == sheet->id; };
        const auto touched =
            static_cast<int>(std::count_if(plan.changes.begin(), plan.changes.end(), isOfIt));
        const auto fresh = static_cast<int>(
            std::count_if(plan.changes.begin(), plan.changes.end(),
                          [&](const core::RowChange& change) { return isOfIt(change) && change.isNew; }));
        QStringList parts;
        if (fresh > 0) parts << SheetWordsText::tr("%1 new").arg(fresh);
        if (touched > fresh) parts << SheetWordsText::tr("%1 changed").arg(touched - fresh);
        if (rows > touched) parts << SheetWordsText::tr("%1 as they are").arg(rows - touched);
        sentences << SheetWordsText::tr("%1: %2.").arg(manyInWords(sheet->id),
                                                       parts.join(SheetWordsText::tr(", ")));
    }
    return sentences.join(' ');
}

QString wordsAppliedInWords(SheetId sheet, const std::vector<core::WordApplied>& applied) {
    QStringList words;
    for (const core::WordApplied& each : applied) {
        const core::Column& column = core::sheet(sheet).column(each.column);
        words << SheetWordsText::tr("“%1” → %2, %3")
                     .arg(text(each.word),
                          each.means.empty() ? SheetWordsText::tr("nothing")
                                             : choiceInWords(column, each.means),
                          counted(each.rows, QT_TRANSLATE_N_NOOP("Words", "%n row"),
                                  QT_TRANSLATE_N_NOOP("Words", "%n rows")));
    }
    return words.isEmpty() ? QString()
                           : SheetWordsText::tr("Your words: %1.").arg(words.join(SheetWordsText::tr("; ")));
}

QString refusalInWords(SheetId sheet, const core::Error& reason) {
    if (reason.code == core::ErrorCode::NameToBeMade) {
        const core::Sheet* other = core::sheetOfName(reason.arguments[2]);
        return SheetWordsText::tr("the club has no %1 “%2”: correct it, or tick “%3” so that it is made")
            .arg(meaningInWords(sheet, reason.arguments[0]), text(reason.arguments[1]),
                 other ? rowsInWords(other->id) : QString());
    }
    if (reason.code == core::ErrorCode::HomeUnknown)
        return SheetWordsText::tr(
                   "no boat and no place is called “%1”: correct it, register the boat first, or tick “%2” "
                   "so that it is made as a place")
            .arg(text(reason.arguments[0]), rowsInWords(SheetId::Places));
    return rejectionInWords(reason);
}

QString warnedRowsInWords(const std::vector<core::RejectedRow>& warnings, std::size_t first, int most) {
    const int count = static_cast<int>(warnings.size());
    const int told = count > most + 1 ? most : count; // "and 1 more" would take no less room than that one
    QStringList lines;
    for (int at = 0; at < told; ++at) {
        const core::RejectedRow& each = warnings[(first + static_cast<std::size_t>(at)) % warnings.size()];
        lines << SheetWordsText::tr("Row %1: %2").arg(each.row).arg(warningsInLines({each.reason}, 1));
    }
    if (told < count) lines << SheetWordsText::tr("and %1 more, each in its row above").arg(count - told);
    return lines.join('\n');
}

QString hindranceInWords(SheetId sheet, const core::Error& error) {
    switch (error.code) {
    case core::ErrorCode::DayAmbiguous:
        return SheetWordsText::tr(
                   "Days such as %1 may be two: say above which comes first, the day or the month.")
            .arg(text(error.arguments[0]));
    case core::ErrorCode::TableWithoutHeadings:
        return SheetWordsText::tr("No heading is known yet: say above each column what it means.");
    case core::ErrorCode::TableWithoutColumn:
        return SheetWordsText::tr("Say above which column is this: %1.")
            .arg(meaningInWords(sheet, error.arguments[0]));
    default:
        return errorSentence(error);
    }
}

} // namespace app

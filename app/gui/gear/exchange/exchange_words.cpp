#include "app/gui/gear/exchange/exchange_words.h"

#include "app/text/errors.h"
#include "app/text/merge_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ExchangeText {
    Q_DECLARE_TR_FUNCTIONS(Exchange)
};

QString writtenInWords(const FoundFile& found, core::CalendarDay today) {
    const QString stick = nameOfStick(found.stick);
    return found.written
               ? ExchangeText::tr("on %1, last written %2").arg(stick, inWords(*found.written, today))
               : ExchangeText::tr("on %1").arg(stick);
}

ListRow rowOf(const FoundFile& found, core::CalendarDay today) {
    const QString key = QString::fromStdString(found.file.string());
    const QString name = text(found.file.filename().string());
    const QString stick = nameOfStick(found.stick);
    ListRow row;
    switch (found.kind) {
    case FoundFile::Kind::OfThisClub:
        row =
            plainRow(key, Mark::Found, ExchangeText::tr("of this club"), name, writtenInWords(found, today));
        break;
    case FoundFile::Kind::OfAnotherClub:
        return plainRow(key, Mark::NotAsked, ExchangeText::tr("not of this club"), name,
                        ExchangeText::tr("on %1, of another club").arg(stick));
    case FoundFile::Kind::NoClubFile:
        return plainRow(key, Mark::NotAsked, ExchangeText::tr("not of this club"), name,
                        ExchangeText::tr("on %1, no club file").arg(stick));
    case FoundFile::Kind::Unreadable:
        return plainRow(key, Mark::Look, ExchangeText::tr("look"), name,
                        ExchangeText::tr("on %1: %2").arg(stick, errorInWords(*found.error)));
    case FoundFile::Kind::NoneYet:
        row = plainRow(key, Mark::StillToFind, ExchangeText::tr("nothing of this club"), stick,
                       ExchangeText::tr("no file of this club yet: take a copy along"));
        break;
    }
    row.isPressable = true;
    return row;
}

} // namespace

QString nameOfStick(const std::filesystem::path& stick) {
    return text(stick.filename().string());
}

std::vector<ListRow> rowsOf(const std::vector<FoundFile>& found, core::CalendarDay today) {
    std::vector<ListRow> rows;
    for (const FoundFile& each : found)
        rows.push_back(rowOf(each, today));
    return rows;
}

QString comingInWords(const ExchangePlan& plan) {
    return plan.cameIn.facts == 0 ? ExchangeText::tr("Nothing new would come in.")
                                  : ExchangeText::tr("Would come in: %1.").arg(cameInWords(plan.cameIn));
}

QString goingInWords(const ExchangePlan& plan) {
    if (plan.isAsNewMachine)
        return ExchangeText::tr("Nothing goes there: the other file is done with afterwards.");
    if (plan.isReadOnly)
        return ExchangeText::tr("Nothing goes there: that file, or its folder, cannot be written to.");
    return plan.goes == 0
               ? ExchangeText::tr("Nothing new would go there.")
               : counted(plan.goes,
                         QT_TRANSLATE_N_NOOP("Words", "%n fact that is recorded here would go there."),
                         QT_TRANSLATE_N_NOOP("Words", "%n facts that are recorded here would go there."));
}

QString cameInSentence(const Exchanged& done) {
    return done.cameIn.facts == 0 ? ExchangeText::tr("Nothing new came in.")
                                  : ExchangeText::tr("Came in: %1.").arg(cameInWords(done.cameIn));
}

QString wentInWords(const Exchanged& done, const ExchangePlan& plan) {
    if (plan.isAsNewMachine)
        return ExchangeText::tr(
            "The other file is done with: put it away, and take a new copy along for that machine.");
    if (!done.went) return goingInWords(plan);
    if (!*done.went)
        return ExchangeText::tr("But nothing went there: %1. Exchange again when that is mended.")
            .arg(errorLine(done.went->error()));
    const core::CameIn& went = **done.went;
    return went.facts == 0 ? ExchangeText::tr("Nothing new went there.")
                           : ExchangeText::tr("Went there: %1.").arg(cameInWords(went));
}

QString hindranceOf(const core::Error& error) {
    return withCapital(errorInWords(error)) + QLatin1Char('.');
}

QString wayOnFrom(const core::Error& error) {
    if (error.code == core::ErrorCode::RecordForked)
        return ExchangeText::tr(
            "Go on with the file that you trust, and put the other one away; or take what the "
            "other one holds in as that of a machine of its own.");
    const QString mend = mendInWords(error);
    return mend.isEmpty() ? QString() : withCapital(mend) + QLatin1Char('.');
}

std::vector<ListRow> rowsOf(const std::vector<core::LookAt>& found) {
    std::vector<ListRow> rows;
    for (const core::LookAt& each : found) {
        ListRow row = plainRow(QString::number(rows.size()), Mark::Look, ExchangeText::tr("look"),
                               withCapital(lookAtInWords(each)));
        row.isPressable = true;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace app

#include "app/gui/club/import_run.h"

#include "app/gui/club/club_thread.h"
#include "app/text/cautions.h"
#include "app/text/errors.h"
#include "app/text/outlook_sentences.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"
#include "core/exchange/csv_import.h"

#include <QStringList>

#include <algorithm>

namespace app {
namespace {

/// A line each of the first rows, and how many more there are.
template <class InWords>
QString firstOf(const std::vector<core::RejectedRow>& rows, std::size_t most, InWords inWords) {
    QStringList lines;
    for (std::size_t i = 0; i < std::min(most, rows.size()); ++i)
        lines << inWords(rows[i]);
    if (rows.size() > most) lines << ImportRun::tr("and %1 more").arg(rows.size() - most);
    return lines.join('\n');
}

QString sentenceOf(const core::Result<core::ImportPlan>& plan) {
    if (!plan) return errorSentence(plan.error());
    if (!plan->rejected.empty()) return rejectedInWords(*plan);
    int rows = 0;
    bool hasRules = false;
    for (const auto& [file, count] : plan->accepted) {
        rows += count;
        hasRules = hasRules || (file == "life_rules.csv" && count > 0);
    }
    const QString imported = counted(rows, QT_TRANSLATE_N_NOOP("Words", "Imported: %n row."),
                                     QT_TRANSLATE_N_NOOP("Words", "Imported: %n rows."));
    const QString told = hasRules ? imported + QLatin1Char(' ') + toleranceCaution() : imported;
    return plan->warnings.empty() ? told : told + '\n' + warnedInWords(*plan);
}

} // namespace

QString rejectedInWords(const core::ImportPlan& plan) {
    return ImportRun::tr("Nothing was imported. Mend these rows and import again:") + '\n' +
           firstOf(plan.rejected, 8, [](const core::RejectedRow& row) {
               return ImportRun::tr("%1, row %2 %3: %4")
                   .arg(text(row.file), QString::number(row.row), text(row.column),
                        rejectionInWords(row.reason));
           });
}

QString warnedInWords(const core::ImportPlan& plan) {
    return firstOf(plan.warnings, 4, [](const core::RejectedRow& row) {
        return ImportRun::tr("%1, row %2: %3")
            .arg(text(row.file), QString::number(row.row), warningsInLines({row.reason}, 1));
    });
}

ImportRun::ImportRun(ClubThread& club, QObject* parent)
    : QObject(parent)
    , m_club(club) {}

void ImportRun::start(const QString& folder, core::CalendarDay today) {
    const auto tell = [this](int done, int of) {
        QMetaObject::invokeMethod(this, [this, done, of] { emit progressed(of ? 100 * done / of : 100); });
    };
    m_club.ask(
        this,
        [folder = folder.toStdString(), today, tell](core::Club& club) {
            return club.register_().importCsv(folder, today, false, tell);
        },
        [this, folder](const core::Result<core::ImportPlan>& plan) {
            if (!plan && plan.error().code == core::ErrorCode::PinNeeded) emit pinNeeded(folder);
            emit finished(sentenceOf(plan));
        });
}

} // namespace app

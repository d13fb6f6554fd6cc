#include "app/gui/club/import_run.h"

#include "app/gui/club/club_thread.h"
#include "app/text/cautions.h"
#include "app/text/errors.h"
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
    return hasRules ? imported + QLatin1Char(' ') + toleranceCaution() : imported;
}

} // namespace

QString rejectedInWords(const core::ImportPlan& plan) {
    constexpr std::size_t shown = 8;
    QStringList lines{ImportRun::tr("Nothing was imported. Mend these rows and import again:")};
    for (std::size_t i = 0; i < std::min(shown, plan.rejected.size()); ++i) {
        const core::RejectedRow& row = plan.rejected[i];
        lines << ImportRun::tr("%1, row %2 %3: %4")
                     .arg(text(row.file), QString::number(row.row), text(row.column),
                          rejectionInWords(row.reason));
    }
    if (plan.rejected.size() > shown) lines << ImportRun::tr("and %1 more").arg(plan.rejected.size() - shown);
    return lines.join('\n');
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

#include "app/cli/commands/reports.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_register.h"

#include <algorithm>

namespace app {
namespace {

/// `items.csv:7:made`, or `Kit!E7` in a spreadsheet.
QString placeOf(const core::RejectedRow& row) {
    return text(row.cell.empty() ? placeIn(row.file, row.row, row.column) : row.file + '!' + row.cell);
}

int reportRejected(const core::ImportPlan& plan) {
    for (const core::RejectedRow& row : plan.rejected)
        note(QStringLiteral("%1: %2").arg(placeOf(row), rejectionInWords(row.reason)));
    return ExitBadInput;
}

void sayLayout(const core::TableLayout& layout) {
    std::vector<QStringList> table;
    for (const core::TableColumn& column : layout.columns)
        table.push_back({text(column.heading),
                         column.meaning.empty() ? QStringLiteral("left out") : text(column.meaning)});
    sayLine(QStringLiteral("Sheet %1, headings in row %2:").arg(text(layout.table)).arg(layout.headingRow));
    sayText(tableOf({QStringLiteral("heading"), QStringLiteral("column")}, table));
}

/// `helm → driver, 3 rows`.
void sayWords(const std::vector<core::WordApplied>& words) {
    for (const core::WordApplied& each : words)
        sayLine(QStringLiteral("%1: %2 → %3, %4")
                    .arg(text(each.column), text(each.word),
                         each.means.empty() ? QStringLiteral("nothing") : text(each.means),
                         counted(each.rows, "%n row", "%n rows")));
}

bool givesRules(const core::ImportPlan& plan) {
    return std::any_of(plan.accepted.begin(), plan.accepted.end(),
                       [](const auto& file) { return file.first == "life_rules.csv" && file.second > 0; });
}

void reportAccepted(const core::ImportPlan& plan, bool dryRun) {
    int rows = 0;
    std::vector<QStringList> table;
    for (const auto& [file, count] : plan.accepted) {
        rows += count;
        table.push_back({text(file), QString::number(count)});
    }
    const QString counts = counted(rows, "%n row", "%n rows");
    sayLine(dryRun ? QStringLiteral("%1 could be imported; nothing was changed.").arg(counts)
                   : QStringLiteral("%1 imported.").arg(counts));
    sayText(tableOf({QStringLiteral("file"), QStringLiteral("rows")}, table));
    if (givesRules(plan)) sayLine(toleranceCaution());
}

/// What a plan says to a person beside its JSON; the exit code.
int reportPlan(const core::ImportPlan& plan, bool json, bool dryRun) {
    if (!plan.rejected.empty()) return reportRejected(plan);
    if (json) return ExitFine;
    for (const core::RejectedRow& row : plan.warnings)
        noteWarning(placeOf(row), row.reason);
    reportAccepted(plan, dryRun);
    return ExitFine;
}

} // namespace

void noteWarning(const QString& about, const core::Error& what) {
    note(QStringLiteral("warning: %1: %2").arg(about, rejectionInWords(what)));
}

core::Result<core::ImportPlan> importWithProgress(core::Club& club, const std::string& folder,
                                                  core::CalendarDay today, bool dryRun) {
    Progress progress(QStringLiteral("import"));
    return club.register_().importCsv(folder, today, dryRun,
                                      [&](int done, int of) { progress.show(done, of); });
}

int reportImport(const core::ImportPlan& plan, bool json, bool dryRun) {
    if (json) say(importJson(plan));
    return reportPlan(plan, json, dryRun);
}

core::Result<core::ClubSheetPlan> importSheetWithProgress(core::Club& club, const core::Workbook& workbook,
                                                          const core::ClubSheetChoices& choices,
                                                          core::CalendarDay today, bool dryRun) {
    Progress progress(QStringLiteral("import"));
    return club.register_().importClubSheet(workbook, choices, today, dryRun,
                                            [&](int done, int of) { progress.show(done, of); });
}

int reportClubSheet(const core::ClubSheetPlan& read, bool json, bool dryRun) {
    if (json) {
        say(clubSheetJson(read));
    } else {
        sayLayout(read.layout);
        sayWords(read.words);
    }
    return reportPlan(read.plan, json, dryRun);
}

} // namespace app

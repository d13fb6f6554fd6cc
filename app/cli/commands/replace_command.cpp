#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_plans.h"

#include "app/cli/json/plan_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/order_sheet.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/plan_sentences.h"
#include "app/text/words.h"
#include "core/plan/replacement/replacement_plan.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct ReplaceOptions : CommonOptions {
    core::ReplacementQuestion question;
    std::string out;
};

enum class Sheet { None, Pdf, Csv, Calendar };

std::optional<Sheet> sheetOf(const std::string& out) {
    std::string end = std::filesystem::path(out).extension().string();
    std::transform(end.begin(), end.end(), end.begin(), [](unsigned char c) { return std::tolower(c); });
    if (out.empty()) return Sheet::None;
    if (end == ".pdf") return Sheet::Pdf;
    if (end == ".csv") return Sheet::Csv;
    return end == ".ics" ? std::optional(Sheet::Calendar) : std::nullopt;
}

core::Outcome write(Sheet sheet, const ReplaceOptions& options, const core::Club& club,
                    const core::ReplacementPlan& plan, core::Instant at) {
    if (sheet == Sheet::None) return core::Done{};
    if (sheet == Sheet::Csv) return writeWholeFile(options.out, QByteArray::fromStdString(orderCsv(plan)));
    if (sheet == Sheet::Calendar)
        return writeWholeFile(options.out, QByteArray::fromStdString(orderCalendar(club.name(), plan, at)));
    const Painting painting;
    const auto sheets = writeOrderSheet(options.out, club.name(), plan);
    if (!sheets) return sheets.error();
    return core::Done{};
}

QStringList rowOf(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    const QString mark = !row.runsShort() ? QStringLiteral("✓")
                         : row.late       ? QStringLiteral("▲")
                                          : QStringLiteral("◯");
    return {mark,
            kitInWords(row),
            QString::number(row.wanted),
            QString::number(row.stock),
            orderInWords(row, plan),
            row.runsShort() ? quantityInWords(row) : QString(),
            row.runsShort() && row.cost ? moneyInWords(*row.cost) : QString(),
            shortInWords(row, plan.today),
            chancesInWords(row, plan),
            QString::number(row.sparesAdvised)};
}

void sayPlan(const core::ReplacementPlan& plan) {
    const auto shortRows = static_cast<int>(std::count_if(
        plan.rows.begin(), plan.rows.end(), [](const core::ReplacementRow& row) { return row.runsShort(); }));
    if (plan.rows.empty()) {
        sayLine(QStringLiteral("No boat asks for any kit yet: give the boats their manifests first."));
        return;
    }
    if (shortRows == 0)
        sayLine(QStringLiteral("Nothing runs short until %1.").arg(inWords(plan.end)));
    else
        sayLine(QStringLiteral("%1 to order.").arg(counted(shortRows, "%n kind of kit", "%n kinds of kit")));
    sayLine(questionInWords(plan));
    std::vector<QStringList> table;
    for (const core::ReplacementRow& row : plan.rows)
        table.push_back(rowOf(row, plan));
    sayText(tableOf({QString(), "kit", "wanted", "in stock", "when", "what", "cost", "why", "how likely",
                     "spares for losses"},
                    table));
    for (const core::BudgetYear& year : plan.budget)
        sayLine(QStringLiteral("Orders of %1").arg(budgetInWords(year)));
    sayLine(reckoningInWords(plan));
    sayLine(planCaution());
    sayLine(whoPrevails());
}

int replace(const ReplaceOptions& options) {
    const auto sheet = sheetOf(options.out);
    if (!sheet)
        return failWith("'" + options.out + "' is no kind of sheet that can be written", "--out",
                        "let its name end with .pdf, .csv or .ics");
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto plan = club.plans().replacement(options.question, moment.today);
        if (!plan) return fail(plan.error());
        const core::Outcome written = write(*sheet, options, club, *plan, moment.at);
        if (!written) return fail(written.error());
        if (options.json)
            say(replacementJson(*plan));
        else
            sayPlan(*plan);
        return static_cast<int>(plan->runsShort() ? ExitNeedsSomebody : ExitFine);
    });
}

} // namespace

void addReplace(CommandLine& line) {
    auto options = std::make_shared<ReplaceOptions>();
    core::ReplacementQuestion& question = options->question;
    Command command = line.add("replace", "what runs short when, and what to order by which day",
                               [options] { return replace(*options); });
    takeCommon(command, *options);
    command.more("How many will be lost is reckoned from the club's record and what was believed before it.");
    command.needsSomebody("something runs short");
    command.number("--months", question.months, 1, 1200, "how far ahead, in months");
    command.number("--confidence", question.confidence, 0, 1, "that nothing runs short, like 0.95");
    command.number("--cover", question.coverMonths, 0, 1200,
                   "how long an order must last from the day that kit would run short, in months");
    command.number("--margin", question.marginDays, 0, 3650,
                   "how long before the last possible day to order, in days");
    command.number("--prior-losses", question.prior.losses, 0, 1e6,
                   "losses believed before the club's record speaks …");
    command.number("--prior-years", question.prior.itemYears, 0, 1e9, "… in so many item-years");
    command.text("--out", options->out, "also an order sheet (.pdf or .csv) or the order-by days (.ics)",
                 Need::NotEmpty);
}

} // namespace app

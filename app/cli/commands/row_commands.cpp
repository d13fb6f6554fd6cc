#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "app/cli/commands/reports.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"
#include "core/register/sheets.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/json_out.h"
#include "app/cli/json/rows_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/errors.h"
#include "app/text/outlook_sentences.h"
#include "app/text/text.h"

#include <algorithm>
#include <functional>
#include <memory>

namespace app {
namespace {

struct RowOptions : CommonOptions {
    std::string sheet;
    std::string row;
    std::vector<std::string> cells; ///< COLUMN=VALUE
    std::vector<std::string> codes; ///< of `move`
    std::string boat, place, person;
    bool dryRun = false;
};

/// COLUMN=VALUE each; empty when one of them is not, or a column is given twice, which is told.
std::optional<core::CellTexts> cellsOf(const std::vector<std::string>& given) {
    core::CellTexts cells;
    for (const std::string& each : given) {
        const auto equals = each.find('=');
        const std::string column = each.substr(0, equals);
        const bool isTwice =
            std::any_of(cells.begin(), cells.end(), [&](const auto& cell) { return cell.first == column; });
        if (equals == std::string::npos || column.empty() || isTwice) {
            failWith(isTwice ? "the column is given twice" : "this is no cell", each,
                     "give each cell once, as COLUMN=VALUE");
            return std::nullopt;
        }
        const std::string value = each.substr(equals + 1);
        cells.emplace_back(column, value == "-" ? std::string() : value);
    }
    return cells;
}

/// By its file's name; null when there is none, which is told.
const core::Sheet* sheetNamed(const std::string& name) {
    const core::Sheet* sheet = core::sheetOfName(name);
    if (sheet) return sheet;
    std::string names;
    for (const core::Sheet& each : core::allSheets())
        names += (names.empty() ? "" : ", ") + std::string(each.name());
    failWith("the register has no such file", name, "give one of " + names);
    return nullptr;
}

core::CellTexts keyTextsOf(const core::Sheet& sheet, const core::Cells& row) {
    core::CellTexts key;
    for (std::size_t i = 0; i < static_cast<std::size_t>(sheet.keyColumns); ++i)
        key.emplace_back(sheet.columns[i].name, row[i]);
    return key;
}

/// Each rejected cell on a line of its own, named as the person gave it.
int refuse(const core::EditPlan& plan, const RowOptions& options) {
    for (const core::RejectedRow& each : plan.rejected) {
        const auto nth = static_cast<std::size_t>(each.row - 1);
        const std::string what = nth < options.codes.size() ? options.codes[nth] : options.row;
        const QString place = text(options.sheet + (what.empty() ? "" : " " + what) +
                                   (each.column.empty() ? "" : ": " + each.column));
        note(place + QStringLiteral(": ") + rejectionInWords(each.reason));
    }
    return ExitBadInput;
}

/// The rows that the edit is about: those that it names, and new ones as they are called now.
std::vector<std::string> namesOf(const core::Club& club, const core::RegisterEdit& edit,
                                 const core::EditPlan& plan) {
    std::vector<std::string> names;
    for (const core::RowEdit& row : edit.rows) {
        core::Cells key;
        for (const auto& [column, text] : row.key)
            key.push_back(text);
        if (key.empty() && !plan.changes.empty()) key = plan.changes.front().keyCells;
        names.push_back(club.register_().nameOfRow(edit.sheet, key));
    }
    return names;
}

/// Each on a line of its own, with the name of its row.
void warn(core::SheetId sheet, const core::EditPlan& plan, const std::vector<std::string>& rows) {
    const QString name = text(std::string(core::sheet(sheet).name()));
    for (const core::RejectedRow& each : plan.warnings)
        noteWarning(name + QLatin1Char(' ') + text(rowWarned(each, rows)), each.reason);
}

void sayChanges(const core::EditPlan& plan, const RowReport& report, core::CalendarDay today) {
    if (plan.changes.empty()) sayLine(QStringLiteral("It stands so already."));
    for (const core::RowChange& change : plan.changes) {
        const core::Sheet& sheet = core::sheet(change.sheet);
        for (const auto& [column, value] : change.set)
            sayLine(QStringLiteral("  %1: %2")
                        .arg(text(std::string(sheet.columns[static_cast<std::size_t>(column)].name)),
                             value.empty() ? QStringLiteral("nothing") : text(value)));
    }
    const QStringList effects = effectsInWords(report.effects, today);
    for (const QString& effect : effects)
        sayLine(effect.endsWith('.') ? effect : effect + '.');
    if (report.isDryRun) sayLine(QStringLiteral("Nothing was written."));
}

/// Plans for what it changes, then writes unless it is a dry run.
int writeEdit(core::Club& club, const RowOptions& options, const core::RegisterEdit& edit,
              core::Moment moment) {
    std::string by;
    if (!options.by.empty()) {
        const auto person = findPersonHere(club, options.by, "--by", moment.today);
        if (!person) return fail(person.error());
        by = *person;
    }
    const auto planned = club.register_().plan(edit, moment);
    if (!planned) return fail(planned.error());
    if (!planned->rejected.empty()) return refuse(*planned, options);
    auto plan = options.dryRun ? planned : club.register_().write(edit, by, moment);
    if (!plan) return fail(plan.error());
    if (!plan->rejected.empty()) return refuse(*plan, options);
    const RowReport report{namesOf(club, edit, *plan), planned->effects, options.dryRun};
    if (options.json)
        say(rowsJson(edit.sheet, *plan, report));
    else {
        for (const std::string& name : report.rows)
            sayLine(
                QStringLiteral("%1: %2").arg(text(std::string(core::sheet(edit.sheet).name())), text(name)));
        warn(edit.sheet, *plan, report.rows);
        sayChanges(*plan, report, moment.today);
    }
    return ExitFine;
}

int add(const RowOptions& options) {
    const core::Sheet* sheet = sheetNamed(options.sheet);
    const auto cells = sheet ? cellsOf(options.cells) : std::nullopt;
    if (!cells) return ExitBadInput;
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        return writeEdit(club, options, {sheet->id, {{{}, *cells, {}}}}, moment);
    });
}

int change(const RowOptions& options) {
    const core::Sheet* sheet = sheetNamed(options.sheet);
    const auto cells = sheet ? cellsOf(options.cells) : std::nullopt;
    if (!cells) return ExitBadInput;
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto row = club.register_().rowNamed(sheet->id, options.row);
        if (!row) return fail(row.error());
        return writeEdit(club, options, {sheet->id, {{keyTextsOf(*sheet, *row), *cells, {}}}}, moment);
    });
}

/// `tell` says what was removed, by its name.
int removeRow(const RowOptions& options, core::SheetId sheet,
              const std::function<void(const std::string& name)>& tell) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto row = club.register_().rowNamed(sheet, options.row);
        if (!row) return fail(row.error());
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const std::string name = club.register_().nameOfRow(sheet, *row);
        const core::Outcome done = club.register_().remove(sheet, *row, *by, moment);
        if (!done) return fail(done.error());
        tell(name);
        return static_cast<int>(ExitFine);
    });
}

int removeRule(const RowOptions& options) {
    return removeRow(options, core::SheetId::LifeRules, [&](const std::string& name) {
        if (options.json)
            say(removedRuleJson(name));
        else
            sayLine(QStringLiteral("%1: removed. Nothing falls due by it any more.").arg(text(name)));
    });
}

/// Files of the register whose rows are taken away.
std::vector<std::string> removableSheets() {
    std::vector<std::string> names;
    for (const core::Sheet& each : core::allSheets())
        if (core::ClubRegister::mayRemove(each.id)) names.emplace_back(each.name());
    return names;
}

int remove(const RowOptions& options) {
    const core::Sheet* sheet = sheetNamed(options.sheet);
    if (!sheet) return ExitBadInput;
    if (!core::ClubRegister::mayRemove(sheet->id))
        return failWith(
            "rows of this file are not taken away", options.sheet,
            "a boat, place or person has a last day (end), kit is written off, a service record is "
            "withdrawn");
    return removeRow(options, sheet->id, [&](const std::string& name) {
        if (options.json)
            say(removedJson(options.sheet, name));
        else
            sayLine(QStringLiteral("%1: removed. That it was there stays recorded.").arg(text(name)));
    });
}

core::CellTexts homeOf(const RowOptions& options) {
    if (!options.boat.empty()) return {{"boat", options.boat}, {"place", ""}};
    if (!options.place.empty()) return {{"boat", ""}, {"place", options.place}};
    return {{"person", options.person}};
}

int move(RowOptions& options) {
    if (options.boat.empty() && options.place.empty() && options.person.empty())
        return failWith("nobody said where to", "move", "give --boat, --place or --person");
    options.sheet = core::sheet(core::SheetId::Items).name();
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        core::RegisterEdit edit{core::SheetId::Items, {}};
        for (const std::string& code : options.codes) {
            const auto row = club.register_().rowNamed(edit.sheet, code);
            if (!row) return fail(row.error());
            const auto isIt = [&](const core::RowEdit& each) {
                return each.key.front().second == row->front();
            };
            if (std::any_of(edit.rows.begin(), edit.rows.end(), isIt)) continue; // given twice
            edit.rows.push_back({keyTextsOf(core::sheet(edit.sheet), *row), homeOf(options), {}});
        }
        return writeEdit(club, options, edit, moment);
    });
}

void takeWriting(Command& command, RowOptions& options) {
    takeOfficer(command, options, "who does it");
    command.flag("--dry-run", options.dryRun, "only say what it would change");
}

} // namespace

void addAdd(CommandLine& line) {
    auto options = std::make_shared<RowOptions>();
    Command command =
        line.add("add", "writes a new row of the register", [options] { return add(*options); });
    takeCommon(command, *options);
    command.more(
        "A row is judged as an import judges it, and warned of alike; an item without a code gets one. "
        "The answer tells what it changes for boats and days.");
    command.file("SHEET", options->sheet, "a file of the register, without .csv");
    command.offer("SHEET", sheetNames());
    command.paths("CELL", options->cells, "the cells of the row, as COLUMN=VALUE");
    takeWriting(command, *options);
}

void addChange(CommandLine& line) {
    auto options = std::make_shared<RowOptions>();
    Command command =
        line.add("change", "changes cells of a row of the register", [options] { return change(*options); });
    takeCommon(command, *options);
    command.more("KEY is the row's name, its key cells with / between them, like 'life jacket/M'. Key cells "
                 "do not change: see rename.");
    command.file("SHEET", options->sheet, "a file of the register, without .csv");
    command.offer("SHEET", sheetNames());
    command.file("KEY", options->row, "the row's name, its parts with / between them");
    command.paths("CELL", options->cells, "the cells that change, as COLUMN=VALUE; COLUMN=- clears one");
    takeWriting(command, *options);
}

void addRemoveRule(CommandLine& line) {
    auto options = std::make_shared<RowOptions>();
    Command command = line.add("remove-rule", "takes a life rule away: nothing falls due by it any more",
                               [options] { return removeRule(*options); });
    takeCommon(command, *options);
    command.more(
        "A rule that has service records is refused: change it, or withdraw them first. An import of its "
        "row brings it back.");
    command.file("RULE", options->row, "kit type, part if it is one's, and rule: 'knife/half-year look'");
    takeOfficer(command, *options, "who does it");
}

void addRemove(CommandLine& line) {
    auto options = std::make_shared<RowOptions>();
    Command command =
        line.add("remove", "takes a row away that was made in error", [options] { return remove(*options); });
    takeCommon(command, *options);
    command.more(
        "A kit type goes when nothing stands by it: no item, also none that is written off, no manifest "
        "line, size, life rule or word of spreadsheets; a size when no item has it. An import of the "
        "row brings it back.");
    command.file("SHEET", options->sheet, "kit_types, sizes, life_rules, manifest_lines or points");
    command.offer("SHEET", removableSheets());
    command.file("KEY", options->row, "the row's name, its parts with / between them");
    takeOfficer(command, *options, "who does it");
}

void addMove(CommandLine& line) {
    auto options = std::make_shared<RowOptions>();
    Command command =
        line.add("move", "gives items another home or owner", [options] { return move(*options); });
    takeCommon(command, *options);
    command.more("All of them or none.");
    command.paths("CODE", options->codes, "the items' tag codes");
    command.text("--boat", options->boat, "the boat that is their home", Need::NotEmpty);
    command.text("--place", options->place, "the place that is their home", Need::NotEmpty);
    command.text("--person", options->person, "whose they are", Need::NotEmpty);
    command.notTogether("--boat", "--place");
    command.notTogether("--boat", "--person");
    command.notTogether("--place", "--person");
    takeWriting(command, *options);
}

} // namespace app

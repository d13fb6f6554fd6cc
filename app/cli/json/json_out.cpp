#include "app/cli/json/json_out.h"

#include "app/cli/json/json_parts.h"
#include "app/flow/seen_text.h"
#include "app/text/sentences.h"
#include "core/club/club_register.h"
#include "core/register/typed_rows.h"

#include <cmath>
#include <optional>

namespace app {
namespace {

Json anchorName(core::Anchor anchor) {
    static constexpr const char* names[] = {"",           "made",    "first_use", "stamped",
                                            "registered", "service", "event"};
    return orNull(names[static_cast<std::size_t>(anchor)]);
}

/// In tenths: more is not told by a picture.
Json printGrade(std::optional<double> grade) {
    return grade ? Json(std::round(*grade * 10) / 10) : Json(nullptr);
}

Json lineItem(const core::LineItem& item) {
    return {{"code", item.item.id},     {"counts", item.counts},
            {"kit_type", item.kitType}, {"worn_by", orNull(item.wornBy)},
            {"due", orNull(item.due)},  {"print_grade", printGrade(item.print)}};
}

Json line(const core::LineAnswer& answer) {
    return {{"kit_type", answer.line.kitType},
            {"required", answer.line.required},
            {"wanted", answer.wanted},
            {"counted", answer.counted},
            {"items", listOf(answer.items, lineItem)}};
}

/// For a sentence of a document, which names an item by its id whatever tag is on it.
core::Finding byId(core::Finding finding) {
    finding.item.tag = finding.item.id;
    return finding;
}

core::NotReadyReason byId(core::NotReadyReason reason) {
    reason.item.tag = reason.item.id;
    if (reason.finding) reason.finding = byId(std::move(*reason.finding));
    return reason;
}

/// `since` is the day that the rule counted from, or the day since which a state holds: with `rule` and
/// `source` it explains the finding.
Json finding(const core::Finding& found) {
    const auto& due = found.due;
    return {{"kind", core::nameOf(found.kind)},
            {"severity", core::nameOf(found.severity)},
            {"kit_type", orNull(found.kitType)},
            {"code", orNull(found.item.id)},
            {"quantity", found.quantity},
            {"reason", reasonOf(byId(found)).toStdString()},
            {"rule", due ? orNull(due->rule.name) : Json()},
            {"since", due ? orNull(due->anchorDay) : orNull(found.since)},
            {"source", due ? orNull(due->rule.source) : Json()},
            {"due", due ? orNull(due->due) : Json()}};
}

Json point(const core::PointAnswer& answer) {
    const bool hasValue = answer.value && answer.point.kind != core::PointKind::Look;
    const bool seconds = answer.point.kind == core::PointKind::Timed && answer.point.unit.empty();
    return {{"point", answer.point.name},
            {"state", core::nameOf(answer.state)},
            {"value", hasValue ? Json(*answer.value) : Json()},
            {"unit", seconds ? Json("s") : orNull(answer.point.unit)}};
}

Json openEntry(const core::LogEntry& entry) {
    return {{"entry", entry.id},
            {"text", entry.text},
            {"day", entry.day.iso()},
            {"severity", core::nameOf(entry.severity)},
            {"code", orNull(entry.item.id)}};
}

Json corner(const scanner::Point& at) {
    return Json::array({at.x, at.y});
}

Json seenCode(const scanner::SeenCode& code) {
    Json corners = Json::array();
    for (const scanner::Point& at : code.corners)
        corners.push_back(corner(at));
    return {{"text", code.text},
            {"symbology", scanner::nameOf(code.symbology)},
            {"gs1", code.gs1},
            {"tag", orNull(tagOfText(code.text, code.gs1).value_or(""))},
            {"how_read", scanner::nameOf(code.howRead)},
            {"guessed", code.howRead == scanner::HowRead::Guessed},
            {"print_grade", printGrade(code.printGrade)},
            {"corners", corners}};
}

Json picture(const scanner::PathReading& reading) {
    Json entry{{"path", reading.path.string()}, {"seen", listOf(reading.seen, seenCode)}};
    if (reading.frames) entry["frames"] = *reading.frames;
    return entry;
}

Json sight(const scanner::StreamSight& seen) {
    return {{"text", seen.code.text},
            {"symbology", scanner::nameOf(seen.code.symbology)},
            {"tag", orNull(tagOfText(seen.code.text, seen.code.gs1).value_or(""))},
            {"guessed", seen.guessed},
            {"frame", seen.frame}};
}

Json stream(const scanner::StreamReading& read) {
    return {{"name", read.name}, {"frames", read.frames}, {"seen", listOf(read.seen, sight)}};
}

Json rejectedRow(const core::RejectedRow& row) {
    Json rejected{{"file", row.file},
                  {"row", row.row},
                  {"column", orNull(row.column)},
                  {"reason", rejectionInWords(row.reason).toStdString()}};
    if (!row.cell.empty()) rejected["cell"] = row.cell;
    return rejected;
}

Json importDocument(const core::ImportPlan& plan) {
    Json accepted = Json::object();
    for (const auto& [file, rows] : plan.accepted)
        accepted[file] = rows;
    const auto warning = [](const core::RejectedRow& row) {
        return Json{
            {"file", row.file}, {"row", row.row}, {"what", rejectionInWords(row.reason).toStdString()}};
    };
    return {{"accepted", accepted},
            {"rejected", listOf(plan.rejected, rejectedRow)},
            {"warnings", listOf(plan.warnings, warning)}};
}

Json boat(const core::BoatCondition& condition) {
    const auto reason = [](const core::NotReadyReason& each) {
        return Json(reasonOf(byId(each)).toStdString());
    };
    return {{"boat", condition.boat},
            {"boat_class", orNull(condition.boatClass)},
            {"condition", core::nameOf(condition.kind)},
            {"since", orNull(condition.since)},
            {"by", orNull(condition.by)},
            {"reasons", listOf(condition.reasons, reason)},
            {"urgent", orNull(condition.urgent)}};
}

Json link(const core::ChainLink& each) {
    return {{"at", each.at ? orNull(each.at) : orNull(each.day)},
            {"what", core::nameOf(each.what)},
            {"where", orNull(each.where ? each.where->name : "")},
            {"by", orNull(joined(each.by))},
            {"check", orNull(each.check)}};
}

Json missingItem(const core::MissingItem& item) {
    return {{"code", item.item.id},
            {"kit_type", item.kitType},
            {"boat", orNull(item.boat)},
            {"since", orNull(item.since)},
            {"chain", listOf(item.chain, link)}};
}

Json dueRow(const core::DueRow& row) {
    const core::RuleDue& due = row.due;
    return {{"code", row.item.id},
            {"kit_type", row.kitType},
            {"size", orNull(row.size)},
            {"boat", orNull(row.boat)},
            {"part", orNull(due.rule.part)},
            {"rule", due.rule.name},
            {"kind", core::nameOf(due.rule.kind)},
            {"due", orNull(due.due)},
            {"state", nameOf(due.state)},
            {"severity", core::nameOf(due.severity)},
            {"anchor", anchorName(due.anchor)},
            {"anchor_day", orNull(due.anchorDay)},
            {"source", orNull(due.rule.source)}};
}

Json logEntry(const core::LogEntry& entry) {
    return {{"entry", entry.id},
            {"boat", orNull(entry.boat)},
            {"code", orNull(entry.item.id)},
            {"day", entry.day.iso()},
            {"text", entry.text},
            {"severity", core::nameOf(entry.severity)},
            {"by", orNull(entry.by)},
            {"closed", orNull(entry.closed)},
            {"closing", orNull(entry.closing)}};
}

Json historyLine(const core::HistoryLine& line) {
    const Json body = Json::parse(line.body, nullptr, false);
    return {{"recorded_at", line.recordedAt.iso()},
            {"at", orNull(line.at)},
            {"device", line.machine},
            {"machine_name", orNull(line.machineName)},
            {"seq", line.seq},
            {"by", orNull(line.by)},
            {"proven", orNull(line.proven)},
            {"kind", line.kind},
            {"body", body.is_discarded() ? Json(line.body) : body}};
}

} // namespace

std::string checkJson(const CheckReport& report) {
    const core::CheckAnswer& answer = report.answer;
    const core::AssignmentScore& best = answer.score;
    Json document = {{"check", report.check},
                     {"boat", answer.location.name},
                     {"phase", core::nameOf(answer.phase)},
                     {"today", answer.today.iso()},
                     {"signed_by", orNull(report.signedBy)},
                     {"urgent", orNull(report.urgent)},
                     {"outcome", core::nameOf(answer.outcome)},
                     {"lines", listOf(answer.lines, line)},
                     {"findings", listOf(answer.findings, finding)},
                     {"points", listOf(answer.points, point)},
                     {"log_open", listOf(answer.logOpen, openEntry)},
                     {"unread", report.unread},
                     {"best",
                      {{"required", best.required},
                       {"other", best.other},
                       {"own_type", best.ownType},
                       {"own_boat", best.ownBoat},
                       {"due_sum", best.dueSum}}}};
    if (answer.phase == core::Phase::Stocktake) {
        document["boat"] = nullptr;
        document["place"] = answer.location.name;
    }
    return written(document);
}

std::string discardedJson(const core::OpenCheck& check, const std::string& reason) {
    return written({{"check", check.check},
                    {check.phase == core::Phase::Stocktake ? "place" : "boat", check.location.name},
                    {"phase", core::nameOf(check.phase)},
                    {"discarded", reason}});
}

std::string readingsJson(const std::vector<scanner::PathReading>& readings) {
    return written({{"pictures", listOf(readings, picture)}});
}

std::string streamsJson(const std::vector<scanner::StreamReading>& streams) {
    return written({{"streams", listOf(streams, stream)}});
}

std::string importJson(const core::ImportPlan& plan) {
    return written(importDocument(plan));
}

std::string clubSheetJson(const core::ClubSheetPlan& read) {
    Json columns = Json::object();
    Json leftOut = Json::array();
    for (const core::TableColumn& column : read.layout.columns)
        if (column.meaning.empty())
            leftOut.push_back(column.heading);
        else
            columns[column.heading] = column.meaning;
    const auto word = [](const core::WordApplied& each) {
        return Json{
            {"column", each.column}, {"word", each.word}, {"means", orNull(each.means)}, {"rows", each.rows}};
    };
    Json document{{"sheet", read.layout.table},
                  {"heading_row", read.layout.headingRow},
                  {"columns", columns},
                  {"left_out", leftOut},
                  {"words", listOf(read.words, word)}};
    document.update(importDocument(read.plan));
    return written(document);
}

std::string boatsJson(const std::vector<core::BoatCondition>& boats,
                      const std::vector<core::PinReset>& resets) {
    const auto reset = [](const core::PinReset& each) {
        return Json{{"person", each.person}, {"at", each.at.iso()}, {"by", orNull(each.by)}};
    };
    return written({{"boats", listOf(boats, boat)}, {"pin_resets", listOf(resets, reset)}});
}

std::string missingJson(const std::vector<core::MissingItem>& items) {
    return written({{"missing", listOf(items, missingItem)}});
}

std::string dueJson(const std::vector<core::DueRow>& rows, core::CalendarDay today) {
    return written({{"today", today.iso()}, {"due", listOf(rows, dueRow)}});
}

std::string logJson(const std::vector<core::LogEntry>& entries, const std::vector<core::Photo>& photos) {
    return written({{"log", listOf(entries, [&](const core::LogEntry& entry) {
                         Json each = logEntry(entry);
                         each["photos"] = Json::array();
                         for (const core::Photo& photo : photos)
                             if (photo.entry == entry.id) each["photos"].push_back(photoJson(photo));
                         return each;
                     })}});
}

std::string logEntryJson(const core::LogEntry& entry) {
    return written(logEntry(entry));
}

std::string closedJson(const std::string& entry) {
    return written({{"entry", entry}, {"closed", true}});
}

std::string historyJson(const std::string& subject, const std::vector<core::HistoryLine>& lines,
                        const std::vector<core::Photo>& photos) {
    return written(
        {{"of", subject}, {"history", listOf(lines, historyLine)}, {"photos", listOf(photos, photoJson)}});
}

std::string codesJson(const std::vector<std::string>& codes) {
    return written({{"codes", codes}});
}

std::string listJson(const std::string& list, const std::string& file, int rows) {
    return written({{"list", list}, {"file", file}, {"rows", rows}});
}

std::string checkListJson(const std::string& boat, const std::string& file, int pages) {
    return written({{"boat", boat}, {"file", file}, {"pages", pages}});
}

std::string fileJson(const std::string& file) {
    return written({{"file", file}});
}

std::string tagsJson(const std::string& file, int sheets, const std::vector<core::TagLabel>& labels) {
    const auto tag = [](const core::TagLabel& label) {
        return Json{{"code", label.code},
                    {"name", orNull(label.name)},
                    {"owner", orNull(label.owner)},
                    {"print_grade", printGrade(label.print)}};
    };
    return written({{"file", file}, {"sheets", sheets}, {"tags", listOf(labels, tag)}});
}

std::string sceneJson(const std::string& boat, const ScenePictures& pictures) {
    const auto picture = [](const auto& each) { return Json{{"path", each.first}, {"codes", each.second}}; };
    return written({{"boat", boat}, {"pictures", listOf(pictures, picture)}});
}

std::string startersJson(const std::vector<std::pair<std::string, std::string>>& starters) {
    const auto starter = [](const auto& each) { return Json{{"name", each.first}, {"title", each.second}}; };
    return written({{"starters", listOf(starters, starter)}});
}

std::string renamedJson(const std::string& sheet, const std::string& from, const std::string& to,
                        const std::vector<core::Error>& warnings) {
    return written(
        {{"sheet", sheet},
         {"from", from},
         {"to", to},
         {"warnings", listOf(warnings, [&](const core::Error& each) { return warningJson(to, each); })}});
}

std::string removedRuleJson(const std::string& rule) {
    return written({{"removed", rule}});
}

std::string removedJson(const std::string& sheet, const std::string& name) {
    return written({{"sheet", sheet}, {"removed", name}});
}

std::string clubJson(const std::string& name) {
    return written({{"club", name}});
}

std::string wordsJson(const std::vector<core::ToldWord>& words,
                      const std::vector<core::ToldWord>& forgotten) {
    const auto word = [](const core::ToldWord& each) {
        return Json{{"sheet", core::sheet(each.sheet).name()},
                    {"column", each.column},
                    {"word", each.word},
                    {"means", orNull(each.means)}};
    };
    return written({{"words", listOf(words, word)}, {"forgotten", listOf(forgotten, word)}});
}

std::string endedJson(const std::string& kind, const std::string& name, core::CalendarDay until) {
    return written({{kind, name}, {"until", until.iso()}});
}

std::string erasedJson(const std::string& person, int cells) {
    return written({{"person", person}, {"erased", cells}});
}

} // namespace app

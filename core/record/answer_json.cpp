#include "core/record/answer_json.h"

#include <nlohmann/json.hpp>

namespace core {
namespace {

using nlohmann::json;

template <class Enum>
json number(Enum value) {
    return static_cast<int>(value);
}

template <class Enum>
void read(const json& from, const char* key, Enum& into) {
    into = static_cast<Enum>(from.value(key, 0));
}

json dayOrNull(const std::optional<CalendarDay>& day) {
    return day ? json(day->iso()) : json();
}
json numberOrNull(const std::optional<double>& value) {
    return value ? json(*value) : json();
}

std::optional<CalendarDay> dayFrom(const json& from, const char* key) {
    const auto found = from.find(key);
    return found == from.end() || !found->is_string() ? std::nullopt
                                                      : CalendarDay::parse(found->get<std::string>());
}

std::optional<double> numberFrom(const json& from, const char* key) {
    const auto found = from.find(key);
    return found == from.end() || !found->is_number() ? std::nullopt : std::optional(found->get<double>());
}

json dueJson(const RuleDue& due) {
    return {{"rule", due.rule.name},
            {"part", due.rule.part},
            {"kind", number(due.rule.kind)},
            {"n", due.rule.n},
            {"strict", due.rule.strict},
            {"source", due.rule.source},
            {"due", dayOrNull(due.due)},
            {"last_good", dayOrNull(due.lastGoodDay)},
            {"state", number(due.state)},
            {"severity", number(due.severity)},
            {"anchor", number(due.anchor)},
            {"anchor_day", dayOrNull(due.anchorDay)},
            {"event", due.event},
            {"counted", numberOrNull(due.counted)},
            {"limit", numberOrNull(due.limit)}};
}

RuleDue dueFrom(const json& from) {
    RuleDue due;
    due.rule.name = from.value("rule", "");
    due.rule.part = from.value("part", "");
    read(from, "kind", due.rule.kind);
    due.rule.n = from.value("n", 0.0);
    due.rule.strict = from.value("strict", false);
    due.rule.source = from.value("source", "");
    due.due = dayFrom(from, "due");
    due.lastGoodDay = dayFrom(from, "last_good");
    read(from, "state", due.state);
    read(from, "severity", due.severity);
    read(from, "anchor", due.anchor);
    due.anchorDay = dayFrom(from, "anchor_day");
    due.event = from.value("event", "");
    due.counted = numberFrom(from, "counted");
    due.limit = numberFrom(from, "limit");
    return due;
}

json findingJson(const Finding& f) {
    return {{"kind", number(f.kind)},
            {"severity", number(f.severity)},
            {"kit_type", f.kitType},
            {"code", f.item.id},
            {"quantity", f.quantity},
            {"due", f.due ? dueJson(*f.due) : json()},
            {"people", f.people},
            {"boat", f.boat},
            {"size", f.size},
            {"text", f.text},
            {"entry", f.entry},
            {"since", dayOrNull(f.since)},
            {"value", numberOrNull(f.value)},
            {"afloat", numberOrNull(f.afloat)},
            {"unit", f.unit},
            {"low", numberOrNull(f.low)},
            {"high", numberOrNull(f.high)}};
}

Finding findingFrom(const json& from) {
    Finding f;
    read(from, "kind", f.kind);
    read(from, "severity", f.severity);
    f.kitType = from.value("kit_type", "");
    f.item.id = from.value("code", "");
    f.quantity = from.value("quantity", 1);
    if (from.contains("due") && from["due"].is_object()) f.due = dueFrom(from["due"]);
    f.people = from.value("people", std::vector<std::string>());
    f.boat = from.value("boat", "");
    f.size = from.value("size", "");
    f.text = from.value("text", "");
    f.entry = from.value("entry", "");
    f.since = dayFrom(from, "since");
    f.value = numberFrom(from, "value");
    f.afloat = numberFrom(from, "afloat");
    f.unit = from.value("unit", "");
    f.low = numberFrom(from, "low");
    f.high = numberFrom(from, "high");
    return f;
}

json lineJson(const LineAnswer& answer) {
    json items = json::array();
    for (const LineItem& item : answer.items)
        items.push_back({{"code", item.item.id},
                         {"kit_type", item.kitType},
                         {"counts", item.counts},
                         {"worn_by", item.wornBy},
                         {"due", dayOrNull(item.due)}});
    return {{"kit_type", answer.line.kitType},  {"quantity", answer.line.quantity},
            {"required", answer.line.required}, {"substitutes", answer.line.substitutes},
            {"wanted", answer.wanted},          {"counted", answer.counted},
            {"items", std::move(items)},        {"without", answer.withoutPeople}};
}

LineAnswer lineFrom(const json& from) {
    LineAnswer answer;
    answer.line.kitType = from.value("kit_type", "");
    answer.line.quantity = from.value("quantity", 1);
    answer.line.required = from.value("required", true);
    answer.line.substitutes = from.value("substitutes", std::vector<std::string>());
    answer.wanted = from.value("wanted", 0);
    answer.counted = from.value("counted", 0);
    answer.withoutPeople = from.value("without", std::vector<std::string>());
    for (const json& item : from.value("items", json::array()))
        answer.items.push_back({ItemName{item.value("code", ""), {}}, item.value("kit_type", ""),
                                item.value("counts", false), item.value("worn_by", ""),
                                dayFrom(item, "due")});
    return answer;
}

json pointJson(const PointAnswer& answer) {
    return {{"point", answer.point.name},
            {"kind", number(answer.point.kind)},
            {"unit", answer.point.unit},
            {"low", numberOrNull(answer.point.limits.low)},
            {"high", numberOrNull(answer.point.limits.high)},
            {"required", answer.point.required},
            {"state", number(answer.state)},
            {"value", numberOrNull(answer.value)},
            {"afloat", numberOrNull(answer.afloat)}};
}

PointAnswer pointAnswerFrom(const json& from) {
    PointAnswer answer;
    answer.point.name = from.value("point", "");
    read(from, "kind", answer.point.kind);
    answer.point.unit = from.value("unit", "");
    answer.point.limits = {numberFrom(from, "low"), numberFrom(from, "high")};
    answer.point.required = from.value("required", true);
    read(from, "state", answer.state);
    answer.value = numberFrom(from, "value");
    answer.afloat = numberFrom(from, "afloat");
    return answer;
}

json entryJson(const LogEntry& entry) {
    return {{"entry", entry.id},      {"boat", entry.boat}, {"code", entry.item.id},
            {"day", entry.day.iso()}, {"text", entry.text}, {"severity", number(entry.severity)}};
}

LogEntry entryFrom(const json& from) {
    LogEntry entry{.day = dayFrom(from, "day").value_or(CalendarDay::fromNumber(1))};
    entry.id = from.value("entry", "");
    entry.boat = from.value("boat", "");
    entry.item.id = from.value("code", "");
    entry.text = from.value("text", "");
    read(from, "severity", entry.severity);
    return entry;
}

template <class Value, class Make>
json listOf(const std::vector<Value>& values, Make make) {
    json list = json::array();
    for (const Value& value : values)
        list.push_back(make(value));
    return list;
}

template <class Value, class Make>
void readList(const json& from, const char* key, std::vector<Value>& into, Make make) {
    for (const json& each : from.value(key, json::array()))
        into.push_back(make(each));
}

void addTags(CheckAnswer& answer, const std::function<std::string(const std::string&)>& tagOf) {
    const auto add = [&](ItemName& item) {
        if (!item.id.empty()) item.tag = tagOf(item.id);
    };
    for (LineAnswer& line : answer.lines)
        for (LineItem& each : line.items)
            add(each.item);
    for (Finding& finding : answer.findings)
        add(finding.item);
    for (LogEntry& entry : answer.logOpen)
        add(entry.item);
}

} // namespace

json jsonOf(const CheckAnswer& answer) {
    return {{"boat", answer.location.name},
            {"phase", nameOf(answer.phase)},
            {"today", answer.today.iso()},
            {"outcome", nameOf(answer.outcome)},
            {"lines", listOf(answer.lines, lineJson)},
            {"findings", listOf(answer.findings, findingJson)},
            {"points", listOf(answer.points, pointJson)},
            {"log_open", listOf(answer.logOpen, entryJson)},
            {"best",
             {answer.score.required, answer.score.other, answer.score.ownType, answer.score.ownBoat,
              answer.score.dueSum}}};
}

CheckAnswer answerFrom(const json& from, const std::function<std::string(const std::string&)>& tagOf) {
    CheckAnswer answer{.today = dayFrom(from, "today").value_or(CalendarDay::fromNumber(1))};
    answer.phase = phaseOf(from.value("phase", ""));
    answer.location = locationOf(answer.phase, from.value("boat", ""));
    for (const CheckOutcome outcome :
         {CheckOutcome::Complete, CheckOutcome::CompleteWithRemarks, CheckOutcome::Incomplete})
        if (from.value("outcome", "") == nameOf(outcome)) answer.outcome = outcome;
    readList(from, "lines", answer.lines, lineFrom);
    readList(from, "findings", answer.findings, findingFrom);
    readList(from, "points", answer.points, pointAnswerFrom);
    readList(from, "log_open", answer.logOpen, entryFrom);
    if (const auto best = from.find("best"); best != from.end() && best->size() == 5)
        answer.score = {(*best)[0], (*best)[1], (*best)[2], (*best)[3], (*best)[4]};
    addTags(answer, tagOf);
    return answer;
}

} // namespace core

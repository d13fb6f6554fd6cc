#include "core/record/documents.h"

#include "core/record/fact.h"
#include "core/record/json_fields.h"

namespace core {

void fields(Of<RuleDue> auto& due, auto& field) {
    field("rule", due.rule.name);
    field("part", due.rule.part);
    field("kind", due.rule.kind);
    field("n", due.rule.n);
    field("strict", due.rule.strict);
    field("source", due.rule.source);
    field("due", due.due);
    field("last_good", due.lastGoodDay);
    field("state", due.state);
    field("severity", due.severity);
    field("anchor", due.anchor);
    field("anchor_day", due.anchorDay);
    field("event", due.event);
    field("counted", due.counted);
    field("limit", due.limit);
}

void fields(Of<Finding> auto& finding, auto& field) {
    field("kind", finding.kind);
    field("severity", finding.severity);
    field("kit_type", finding.kitType);
    field("code", finding.item.id);
    field("quantity", finding.quantity);
    field("due", finding.due);
    field("people", finding.people);
    field("boat", finding.boat);
    field("size", finding.size);
    field("text", finding.text);
    field("entry", finding.entry);
    field("since", finding.since);
    field("value", finding.value);
    field("afloat", finding.afloat);
    field("unit", finding.unit);
    field("low", finding.low);
    field("high", finding.high);
}

void fields(Of<LineItem> auto& item, auto& field) {
    field("code", item.item.id);
    field("kit_type", item.kitType);
    field("counts", item.counts);
    field("worn_by", item.wornBy);
    field("due", item.due);
    field.ifKnown("print", item.print);
}

void fields(Of<LineAnswer> auto& answer, auto& field) {
    field("kit_type", answer.line.kitType);
    field("quantity", answer.line.quantity);
    field("required", answer.line.required);
    field("substitutes", answer.line.substitutes);
    field("wanted", answer.wanted);
    field("counted", answer.counted);
    field("items", answer.items);
    field("without", answer.withoutPeople);
}

void fields(Of<PointAnswer> auto& answer, auto& field) {
    field("point", answer.point.name);
    field("kind", answer.point.kind);
    field("unit", answer.point.unit);
    field("low", answer.point.limits.low);
    field("high", answer.point.limits.high);
    field("required", answer.point.required);
    field("state", answer.state);
    field("value", answer.value);
    field("afloat", answer.afloat);
}

void fields(Of<LogEntry> auto& entry, auto& field) {
    field("entry", entry.id);
    field("boat", entry.boat);
    field("code", entry.item.id);
    field("day", entry.day);
    field("text", entry.text);
    field("severity", entry.severity);
}

void fields(Of<CheckAnswer> auto& answer, auto& field) {
    field("boat", answer.location.name);
    field("phase", answer.phase);
    field("today", answer.today);
    field("outcome", answer.outcome);
    field("lines", answer.lines);
    field("findings", answer.findings);
    field("points", answer.points);
    field("log_open", answer.logOpen);
    field("best", answer.score);
}

void fields(Of<Operation> auto& operation, auto& field) {
    field.ifKnown("left", operation.left);
    field.ifKnown("back", operation.back);
    field("people", operation.people);
    field.ifKnown("hours", operation.hours);
    field("launches", operation.launches);
    field("fuel", operation.fuel);
    field("incidents", operation.incidents);
}

json jsonOf(const CheckAnswer& answer) {
    return objectOf(answer);
}

json jsonOf(const Operation& operation) {
    return objectOf(operation);
}

void readJson(const json& from, CheckAnswer& into) {
    readObject(from, into);
    into.location = locationOf(into.phase, into.location.name);
}

void readJson(const json& from, Operation& into) {
    readObject(from, into);
}

namespace {

template <class Document>
Result<Document> documentFrom(const std::string& text, const CellPlace& place) {
    try {
        Document document = blank<Document>();
        readJson(parsed(text), document);
        return document;
    } catch (const FieldFault& fault) {
        return unreadableCell(place, fault.field, fault.text.value_or(""));
    }
}

void addTags(CheckAnswer& answer, const TagOfItem& tagOf) {
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

std::string textOf(const CheckAnswer& answer) {
    return canonical(jsonOf(answer));
}

std::string textOf(const Operation& operation) {
    return canonical(jsonOf(operation));
}

Result<CheckAnswer> answerFrom(const std::string& text, const CellPlace& place, const TagOfItem& tagOf) {
    auto answer = documentFrom<CheckAnswer>(text, place);
    if (answer) addTags(*answer, tagOf);
    return answer;
}

Result<Operation> operationFrom(const std::string& text, const CellPlace& place) {
    return documentFrom<Operation>(text, place);
}

} // namespace core

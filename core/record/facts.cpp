#include "core/record/facts.h"

#include "core/base/store_failure.h"
#include "core/record/json_fields.h"

#include <algorithm>
#include <array>

namespace core {

template <>
CheckSigned blank() {
    return {.answer = blank<CheckAnswer>()};
}

void fields(Of<MachineBegun> auto& fact, auto& field) {
    field("public_key", fact.publicKey);
    field("name", fact.name);
    field("continues", fact.continues);
}

void fields(Of<ClubNamed> auto& fact, auto& field) {
    field("name", fact.name);
}

void fields(Of<CheckOpened> auto& fact, auto& field) {
    field("check", fact.check);
    field("boat", fact.boat);
    field("phase", fact.phase);
    field("at", fact.at);
    field.ifKnown("event", fact.event);
}

void fields(Of<NamesGiven> auto& fact, auto& field) {
    field("check", fact.check);
    field("people", fact.people);
    field("at", fact.at);
}

void fields(Of<TagSeen> auto& fact, auto& field) {
    field("check", fact.check);
    field("code", fact.code);
    field("at", fact.at);
    field("seen_by", fact.seenBy);
    field.ifKnown("print", fact.print);
}

void fields(Of<ActTakenBack> auto& fact, auto& field) {
    field("check", fact.check);
    field("act", fact.act);
    field("reason", fact.reason);
    field("at", fact.at);
}

void fields(Of<RecordWithdrawn> auto& fact, auto& field) {
    field("code", fact.code);
    field("part", fact.part);
    field("rule", fact.rule);
    field("day", fact.day);
    field("acts", fact.acts);
    field("reason", fact.reason);
    field("at", fact.at);
}

void fields(Of<PointRecorded> auto& fact, auto& field) {
    field("check", fact.check);
    field("point", fact.point);
    field("value", fact.value);
    field("at", fact.at);
}

void fields(Of<CheckSigned> auto& fact, auto& field) {
    field("check", fact.check);
    field("boat", fact.boat);
    field("phase", fact.phase);
    field("at", fact.at);
    field("people", fact.people);
    field("urgent", fact.urgent);
    field("answer", fact.answer);
}

void fields(Of<CheckClosed> auto& fact, auto& field) {
    field("check", fact.check);
    field("reason", fact.reason);
    field("at", fact.at);
}

void fields(Of<UrgentEnded> auto& fact, auto& field) {
    field("check", fact.check);
}

void fields(Of<EventGiven> auto& fact, auto& field) {
    field("check", fact.check);
    field("event", fact.event);
    field("at", fact.at);
}

void fields(Of<EventHeld> auto& fact, auto& field) {
    field("event", fact.event);
    field("at", fact.at);
    field("until", fact.until);
}

void fields(Of<OperationLogged> auto& fact, auto& field) {
    field("check", fact.check);
    field("boat", fact.boat);
    field("operation", fact.operation);
    field("at", fact.at);
}

void fields(Of<TagFixed> auto& fact, auto& field) {
    field("code", fact.code);
    field("tag", fact.tag);
    field("at", fact.at);
}

void fields(Of<PhotoAdded> auto& fact, auto& field) {
    field("code", fact.code);
    field("of_entry", fact.isOfEntry);
    field("boat", fact.boat);
    field("day", fact.day);
    field("text", fact.text);
    field("sha256", fact.sha256);
    field("bytes", fact.bytes);
    field("at", fact.at);
}

void fields(Of<PrivateErased> auto& fact, auto& field) {
    field("facts", fact.facts);
}

void fields(Of<Renamed> auto& fact, auto& field) {
    field("named", fact.named);
    field("of", fact.of);
    field("from", fact.from);
    field("to", fact.to);
}

void fields(Of<WordTold> auto& fact, auto& field) {
    field("sheet", fact.sheet);
    field("column", fact.column);
    field("word", fact.word);
    field("means", fact.means);
}

void fields(Of<WordForgotten> auto& fact, auto& field) {
    field("sheet", fact.sheet);
    field("column", fact.column);
    field("word", fact.word);
}

void fields(Of<PinSet> auto& fact, auto& field) {
    field("person", fact.person);
    field("sealed", fact.sealed);
}

void fields(Of<PinCleared> auto& fact, auto& field) {
    field("person", fact.person);
    field("reset", fact.isReset);
}

void fields(Of<SignaturesProven> auto& fact, auto& field) {
    field("asked", fact.isAsked);
}

void fields(Of<MachineNamed> auto& fact, auto& field) {
    field("name", fact.name);
}

namespace {

std::string_view nameOfColumn(const Sheet& sheet, int column) {
    return sheet.columns[static_cast<std::size_t>(column)].name;
}

json jsonOf(const Sheet& sheet, const std::vector<std::pair<int, std::string>>& cells) {
    json object = json::object();
    for (const auto& [column, text] : cells)
        object[std::string(nameOfColumn(sheet, column))] = text;
    return object;
}

json jsonOf(const RowWritten& written) {
    const Sheet& sheet = core::sheet(written.sheet);
    json row = json::object();
    for (int column = 0; column < sheet.keyColumns; ++column)
        row[std::string(nameOfColumn(sheet, column))] = written.keyCells[static_cast<std::size_t>(column)];
    json body = {{"key", written.key}, {"row", std::move(row)}, {"set", jsonOf(sheet, written.set)}};
    FieldWriter field(body);
    if (!written.sealed.empty()) body["sealed"] = jsonOf(sheet, written.sealed);
    field.ifKnown("order", written.order);
    field.ifKnown("at", written.at);
    if (!written.check.empty()) field("check", written.check);
    if (!written.rule.empty()) field("rule", written.rule);
    if (written.isGone) field("gone", true);
    return body;
}

void readKeyCells(const json& from, const Sheet& sheet, Cells& into) {
    FieldReader field(from, FieldReader::Absent::IsFault);
    into.resize(static_cast<std::size_t>(sheet.keyColumns));
    for (int column = 0; column < sheet.keyColumns; ++column)
        field(nameOfColumn(sheet, column), into[static_cast<std::size_t>(column)]);
}

void readCells(const json& from, const Sheet& sheet, std::vector<std::pair<int, std::string>>& into) {
    if (!from.is_object()) failAt(from);
    for (const auto& [column, text] : from.items()) {
        const int index = sheet.indexOf(column);
        if (index < 0) continue; // a column of a later program
        within(column, [&, &cell = text] { readJson(cell, into.emplace_back(index, std::string()).second); });
    }
}

RowWritten rowFrom(const json& body, const Sheet& sheet) {
    RowWritten written{.sheet = sheet.id};
    FieldReader field(body, FieldReader::Absent::IsFault);
    field("key", written.key);
    if (!body.contains("row")) throw FieldFault{"row", std::nullopt};
    within("row", [&] { readKeyCells(body["row"], sheet, written.keyCells); });
    if (body.contains("set")) within("set", [&] { readCells(body["set"], sheet, written.set); });
    if (body.contains("sealed")) within("sealed", [&] { readCells(body["sealed"], sheet, written.sealed); });
    field.ifKnown("order", written.order);
    field.ifKnown("at", written.at);
    FieldReader whereGiven(body, FieldReader::Absent::KeepsDefault);
    whereGiven("check", written.check);
    whereGiven("rule", written.rule);
    whereGiven("gone", written.isGone);
    return written;
}

template <class Body>
FactBody readBody(const json& from) {
    Body body = blank<Body>();
    FieldReader field(from, FieldReader::Absent::IsFault);
    fields(body, field);
    return body;
}

using BodyReader = FactBody (*)(const json&);

template <class... Bodies>
constexpr std::array<std::pair<std::string_view, BodyReader>, sizeof...(Bodies)> readersOf() {
    return {{{Bodies::kind, readBody<Bodies>}...}};
}

constexpr auto readers =
    readersOf<MachineBegun, ClubNamed, CheckOpened, NamesGiven, TagSeen, ActTakenBack, RecordWithdrawn,
              PointRecorded, CheckSigned, CheckClosed, UrgentEnded, EventGiven, EventHeld, OperationLogged,
              TagFixed, PhotoAdded, PrivateErased, Renamed, WordTold, WordForgotten, PinSet, PinCleared,
              SignaturesProven, MachineNamed>();

std::optional<FactBody> bodyFrom(std::string_view kind, const std::string& text) {
    if (const Sheet* sheet = sheetOfTable(kind)) return rowFrom(parsed(text), *sheet);
    const auto reader =
        std::find_if(readers.begin(), readers.end(), [&](const auto& each) { return each.first == kind; });
    return reader == readers.end() ? std::nullopt : std::optional(reader->second(parsed(text)));
}

} // namespace

std::string kindOf(const FactBody& body) {
    return std::visit(
        [](const auto& fact) {
            if constexpr (std::same_as<const RowWritten&, decltype(fact)>)
                return std::string(sheet(fact.sheet).table);
            else
                return std::string(fact.kind);
        },
        body);
}

std::string textOf(const FactBody& body, const std::string& proven) {
    json written = std::visit([](const auto& fact) { return jsonOf(fact); }, body);
    if (!proven.empty()) written["proven"] = proven;
    return canonical(written);
}

Result<std::optional<FactBody>> bodyOf(const Fact& fact) {
    try {
        return bodyFrom(fact.kind, fact.body);
    } catch (const FieldFault& fault) {
        const std::string field = fact.kind + (fault.field.empty() ? "" : ".") + fault.field;
        return unreadableField(fact.seq, fact.machine, field, fault.text);
    }
}

std::optional<Instant> givenInstant(const Fact& fact) {
    const json body = parsedOrDiscarded(fact.body);
    const auto at = body.is_object() ? body.find("at") : body.end();
    return at != body.end() && at->is_string() ? Instant::parse(at->get_ref<const std::string&>())
                                               : std::nullopt;
}

std::string provenBy(const Fact& fact) {
    const json body = parsedOrDiscarded(fact.body);
    const auto proven = body.is_object() ? body.find("proven") : body.end();
    return proven != body.end() && proven->is_string() ? proven->get<std::string>() : std::string();
}

std::string fieldText(const Fact& fact, const char* field) {
    const json body = parsedOrDiscarded(fact.body);
    return canonical(body.is_object() ? body.value(field, json()) : json());
}

RowWritten rowWritten(const RowChange& change) {
    return {.sheet = change.sheet,
            .key = keyOf(sheet(change.sheet), change.keyCells),
            .keyCells = change.keyCells,
            .set = change.set,
            .order = change.order};
}

RowWritten rowWritten(SheetId id, const CellTexts& key, const CellTexts& set) {
    const Sheet& kind = sheet(id);
    RowChange change{.sheet = id, .keyCells = Cells(static_cast<std::size_t>(kind.keyColumns))};
    for (const auto& [column, text] : key)
        change.keyCells[static_cast<std::size_t>(kind.indexOf(column))] = text;
    for (const auto& [column, text] : set)
        change.set.emplace_back(kind.indexOf(column), text);
    return rowWritten(change);
}

RowWritten stateGiven(const std::string& code, const std::string& state, CalendarDay since,
                      const std::string& why, const std::string& check) {
    RowWritten written = rowWritten(SheetId::Items, {{"code", code}},
                                    {{"state", state}, {"since", since.iso()}, {"why", why}});
    written.check = check;
    return written;
}

} // namespace core

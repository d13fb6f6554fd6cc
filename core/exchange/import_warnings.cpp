#include "core/exchange/import_checks.h"

#include "core/base/error_code.h"
#include "core/base/one_slip.h"
#include "core/base/plain_text.h"
#include "core/register/cell_values.h"
#include "core/register/typed_rows.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace core {
namespace {

class Warnings {
public:
    Warnings(const ImportDraft& draft, CalendarDay today)
        : m_draft(draft)
        , m_today(today) {
        readManifests();
        if (draft.touched(SheetId::ManifestLines).empty()) return;
        for (const DraftRow& item : draft.all(SheetId::Items))
            m_typesOfItems.insert(foldName(item.cell("kit_type")));
    }

    std::vector<RejectedRow> all() && {
        addClassesWithoutBoat();
        addBoatsWithoutManifest();
        addNamesLikeOthers(SheetId::ManifestLines, "boat_class", ErrorCode::ClassLikeAnother);
        addNamesLikeOthers(SheetId::Boats, "boat_class", ErrorCode::ClassLikeAnother);
        addNamesLikeOthers(SheetId::KitTypes, "kit_type", ErrorCode::KitTypeLikeAnother);
        addTypesWithoutItem();
        addRulesWithoutSource();
        addJacketsNotWorn();
        addKitOfEnded(SheetId::Places, "place");
        addKitOfEnded(SheetId::Boats, "boat");
        addKitOfEnded(SheetId::People, "person");
        addDaysToCome();
        return std::move(m_warnings);
    }

private:
    void readManifests() {
        for (const DraftRow& line : m_draft.all(SheetId::ManifestLines)) {
            const bool isAsked = cellOf(sheet(SheetId::ManifestLines), line.cells, "quantity") != "0";
            if (!isAsked) continue;
            // A line is of a class or of a boat; a boat of no class has no class's lines.
            if (const std::string& of = line.cell("boat_class"); !of.empty())
                m_classesWithLines.insert(foldName(of));
            m_boatsWithLines.insert(foldName(line.cell("boat")));
        }
        for (const DraftRow& boat : m_draft.all(SheetId::Boats))
            m_classesOfBoats.insert(foldName(boat.cell("boat_class")));
    }

    void add(const DraftRow& row, Error what) {
        m_warnings.push_back({std::string(sheet(row.sheet).file), row.given->row, {}, std::move(what)});
    }

    void addClassesWithoutBoat() {
        std::set<std::string> told;
        for (const DraftRow* line : m_draft.touched(SheetId::ManifestLines)) {
            const std::string& name = line->cell("boat_class");
            if (!name.empty() && !m_classesOfBoats.contains(foldName(name)) &&
                told.insert(foldName(name)).second)
                add(*line, {ErrorCode::ClassWithoutBoat, {name}});
        }
    }

    void addBoatsWithoutManifest() {
        for (const DraftRow* boat : m_draft.touched(SheetId::Boats)) {
            const std::string& boatClass = boat->cell("boat_class");
            if (!m_classesWithLines.contains(foldName(boatClass)) &&
                !m_boatsWithLines.contains(foldName(boat->cells[0])))
                add(*boat, {ErrorCode::BoatWithoutManifest, {boat->cells[0], boatClass}});
        }
    }

    /// Told of the rarer spelling, which is the likelier slip; of names that are as common, of the later.
    void addNamesLikeOthers(SheetId id, std::string_view column, ErrorCode code) {
        std::map<std::string, int> uses;
        const auto count = [&](SheetId sheet) {
            for (const DraftRow& row : m_draft.all(sheet))
                if (const std::string& name = row.cell(column); !name.empty()) ++uses[foldName(name)];
        };
        count(id);
        if (column == "boat_class") count(id == SheetId::Boats ? SheetId::ManifestLines : SheetId::Boats);
        std::set<std::string>& told = m_told[std::string(column)];
        for (const DraftRow* row : m_draft.touched(id)) {
            const std::string name = foldName(row->cell(column));
            for (const auto& [other, times] : uses)
                if (isLikelySlip(name, other) && times >= uses[name] && !told.contains(other) &&
                    told.insert(name).second)
                    add(*row, {code, {row->cell(column), other}});
        }
    }

    void addTypesWithoutItem() {
        std::set<std::string> told;
        for (const DraftRow* line : m_draft.touched(SheetId::ManifestLines)) {
            const std::string& type = line->cell("kit_type");
            const auto hasItem = [&](const std::string& name) {
                return m_typesOfItems.contains(foldName(name));
            };
            if (cellOf(sheet(SheetId::ManifestLines), line->cells, "quantity") == "0" || hasItem(type) ||
                std::ranges::any_of(namesFrom(line->cell("substitutes")), hasItem) ||
                !told.insert(foldName(type)).second)
                continue;
            add(*line, {ErrorCode::TypeWithoutItem, {type}});
        }
    }

    void addRulesWithoutSource() {
        for (const DraftRow* rule : m_draft.touched(SheetId::LifeRules))
            if (rule->cell("source").empty())
                add(*rule, {ErrorCode::RuleWithoutSource, {rule->cell("rule"), rule->cell("kit_type")}});
    }

    void addJacketsNotWorn() {
        for (const DraftRow* type : m_draft.touched(SheetId::KitTypes)) {
            if (isCalledJacket(type->cells[0]) &&
                cellOf(sheet(SheetId::KitTypes), type->cells, "worn") != "yes")
                add(*type, {ErrorCode::JacketNotWorn, {type->cells[0]}});
        }
    }

    /// `column`: of an item, in which it names such a row. Told at the row of what has the last day, or else
    /// once at the first item that is given to it.
    void addKitOfEnded(SheetId id, std::string_view column) {
        if (m_draft.touched(id).empty() && m_draft.touched(SheetId::Items).empty()) return;
        std::map<std::string, int> kit;
        for (const DraftRow& item : m_draft.all(SheetId::Items))
            if (item.cell("state") != nameOf(ItemState::WrittenOff)) ++kit[foldName(item.cell(column))];
        for (const DraftRow* row : m_draft.touched(id))
            if (const auto found = kit.find(foldName(row->cells[0]));
                found != kit.end() && !row->cell("until").empty())
                add(*row, {ErrorCode::KitOfEnded,
                           {row->cells[0], row->cell("until"), std::to_string(found->second)}});
        addKitGivenToEnded(id, column, kit);
    }

    void addKitGivenToEnded(SheetId id, std::string_view column, const std::map<std::string, int>& kit) {
        std::map<std::string, const DraftRow*> ended; // by folded name
        for (const DraftRow& row : m_draft.all(id))
            if (!row.cell("until").empty()) ended.emplace(foldName(row.cells[0]), &row);
        for (const DraftRow* row : m_draft.touched(id))
            ended.erase(foldName(row->cells[0]));
        for (const DraftRow* item : m_draft.touched(SheetId::Items)) {
            const auto home = ended.find(foldName(item->cell(column)));
            if (home == ended.end() || item->cell("state") == nameOf(ItemState::WrittenOff)) continue;
            const DraftRow& row = *home->second;
            add(*item, {ErrorCode::KitOfEnded,
                        {row.cells[0], row.cell("until"), std::to_string(kit.find(home->first)->second)}});
            ended.erase(home);
        }
    }

    /// What is of a day that is still to come would count from that day on.
    void addDaysToCome() {
        for (const SheetId id : {SheetId::Items, SheetId::Parts})
            for (const DraftRow* row : m_draft.touched(id))
                addDaysOfThing(*row);
        for (const auto& [id, code] : {std::pair(SheetId::Services, ErrorCode::ServiceInFuture),
                                       {SheetId::Happenings, ErrorCode::HappeningInFuture},
                                       {SheetId::Use, ErrorCode::HappeningInFuture},
                                       {SheetId::Log, ErrorCode::HappeningInFuture}})
            for (const DraftRow* row : m_draft.touched(id))
                if (isToCome(row->cell("day"))) add(*row, {code, {row->cell("day"), m_today.iso()}});
    }

    void addDaysOfThing(const DraftRow& row) {
        const std::string& made = row.cell("made");
        const std::string& firstUse = row.cell("first_use");
        if (isToCome(made)) add(row, {ErrorCode::MadeInFuture, {made}});
        if (isToCome(firstUse)) add(row, {ErrorCode::FirstUseInFuture, {firstUse}});
        const auto from = PartialDay::parse(made), used = PartialDay::parse(firstUse);
        if (from && used && used->lastDay() < from->firstDay())
            add(row, {ErrorCode::UsedBeforeMade, {firstUse, made}});
    }

    bool isToCome(const std::string& text) const {
        const auto day = PartialDay::parse(text);
        return day && day->firstDay() > m_today;
    }

    const ImportDraft& m_draft;
    CalendarDay m_today;
    std::set<std::string> m_classesWithLines;
    std::set<std::string> m_boatsWithLines;
    std::set<std::string> m_classesOfBoats;
    std::set<std::string> m_typesOfItems;
    std::map<std::string, std::set<std::string>> m_told; // by column, folded names
    std::vector<RejectedRow> m_warnings;
};

} // namespace

bool isCalledJacket(const std::string& kitType) {
    static constexpr std::array<std::string_view, 6> words{"life jacket",  "lifejacket",  "buoyancy aid",
                                                           "rettungswest", "schwimmwest", "lifevest"};
    const std::string name = foldName(kitType);
    return std::ranges::any_of(words,
                               [&](std::string_view word) { return name.find(word) != std::string::npos; });
}

std::vector<RejectedRow> warningsOf(const ImportDraft& draft, CalendarDay today) {
    return Warnings(draft, today).all();
}

} // namespace core

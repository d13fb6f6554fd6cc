#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/tag/tag_code.h"

#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/register/typed_rows.h"
#include "core/store/check_tables.h"
#include "core/store/row_table.h"
#include "core/store/tag_tables.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <map>
#include <set>
#include <sodium.h>

namespace core {
namespace {

constexpr std::array holders{Named::Boat, Named::Person, Named::Place};

std::uint64_t randomBits() {
    std::uint64_t bits = 0;
    randombytes_buf(&bits, sizeof bits);
    return bits;
}

const Sheet& sheetOfHolder(Named named) {
    return sheet(sheetOf(named).value());
}

TagClass classOf(Named named) {
    return static_cast<TagClass>(sheetOfHolder(named).column("tag").tagClass);
}

std::optional<Named> holderOfClass(TagClass tagClass) {
    const auto found = std::ranges::find(holders, tagClass, classOf);
    return found == holders.end() ? std::nullopt : std::optional(*found);
}

TagHolder holderFrom(Named named, const Cells& cells) {
    const Sheet& sheet = sheetOfHolder(named);
    requireReadable(sheet, cells);
    const auto cell = [&](std::string_view column) { return std::string(cellOf(sheet, cells, column)); };
    TagHolder holder{named, cells[0], cell("tag"), {}, CalendarDay::parse(cell("until"))};
    if (named == Named::Boat) holder.about = cell("boat_class");
    if (named == Named::Person) holder.about = cell("role");
    return holder;
}

TagLabel labelOf(const TagHolder& holder) {
    return {holder.tag, holder.name, holder.about};
}

TagLabel labelOf(const Item& item, const std::map<std::string, double>& prints) {
    const std::string& owner = !item.person.empty() ? item.person
                               : !item.boat.empty() ? item.boat
                                                    : item.place;
    const auto print = prints.find(item.id);
    return {item.tag, item.kitType, owner,
            print == prints.end() ? std::nullopt : std::optional(print->second)};
}

Error needsNoTag(const Item& item) {
    return {ErrorCode::TagForWrittenOff, {item.kitType, groupedTag(item.tag)}};
}

bool isTaken(Database& database, const TagCode& code) {
    if (code.tagClass() == TagClass::Kit)
        return rowTable::find(database, sheet(SheetId::Items), foldName(code.text())) ||
               tagTables::everOf(database, code.text()) != code.text();
    const auto named = holderOfClass(code.tagClass());
    return named && !rowTable::where(database, sheetOfHolder(*named), "tag", code.text()).empty();
}

/// All that have that name, each with its tag, for people.
Error nameOfSeveral(const std::string& name, const std::vector<TagHolder>& found) {
    std::string all;
    for (const TagHolder& each : found)
        all += fmt::format("{}{} {}", all.empty() ? "" : ", ", nameOf(each.named),
                           each.tag.empty() ? "-" : groupedTag(each.tag));
    return {ErrorCode::NameOfSeveral, {name, all}};
}

/// What no tag and no name leads to.
Error nothingSoCalled(const ClubState& state, const std::string& asked) {
    if (const auto alike = state.tagsLike(asked); !alike.empty())
        return {ErrorCode::TagLikeOthers, {asked, fmt::format("{}", fmt::join(alike, ", "))}};
    const auto code = TagCode::parse(asked);
    return code ? Error{ErrorCode::NothingHasTag, {code->text()}}
                : Error{ErrorCode::NothingSoCalled, {asked}};
}

Result<std::string> giveTag(ClubState& state, Ledger& ledger, const TagHolder& holder, const std::string& by,
                            Moment moment) {
    const std::string tag = mintingFor(*state.database)(classOf(holder.named));
    const Outcome written =
        writeNamedRow(state, ledger, holder.named,
                      {{std::string(nameOf(holder.named)), holder.name}, {"tag", tag}}, by, moment);
    if (!written) return written.error();
    return tag;
}

} // namespace

MintTag mintingFor(Database& database) {
    return [&database](TagClass tagClass) {
        for (;;)
            if (const TagCode code = TagCode::mint(tagClass, randomBits); !isTaken(database, code))
                return code.text();
    };
}

Result<std::optional<TagHolder>> tagHolderOf(const ClubState& state, const std::string& asked) {
    const RegisterStore& store = state.registerStore;
    if (const auto code = TagCode::parse(asked))
        if (const auto named = holderOfClass(code->tagClass()))
            if (const auto rows = store.where(*sheetOf(*named), "tag", code->text()); !rows.empty())
                return std::optional(holderFrom(*named, rows.front()));
    std::vector<TagHolder> found;
    for (const Named named : holders)
        if (const auto cells = store.find(*sheetOf(named), foldName(asked)))
            found.push_back(holderFrom(named, *cells));
    if (found.size() > 1) return nameOfSeveral(found.front().name, found);
    return found.empty() ? std::nullopt : std::optional(std::move(found.front()));
}

Result<std::vector<TagLabel>> ClubKit::allTagLabels(CalendarDay today) const {
    return guarded([&]() -> Result<std::vector<TagLabel>> {
        std::vector<TagLabel> all;
        const auto prints = checkTables::printGrades(*m_state->database);
        for (const Item& item : m_state->registerStore.allItems())
            if (item.state != ItemState::WrittenOff) all.push_back(labelOf(item, prints));
        for (const Named named : holders)
            for (const Cells& cells : m_state->registerStore.all(*sheetOf(named)))
                if (const TagHolder each = holderFrom(named, cells);
                    !each.tag.empty() && isHere(each.until, today))
                    all.push_back(labelOf(each));
        return all;
    });
}

Result<std::vector<TagLabel>> ClubKit::tagLabels(const std::vector<std::string>& asked) const {
    return guarded([&]() -> Result<std::vector<TagLabel>> {
        std::vector<TagLabel> labels;
        for (const std::string& each : asked) {
            if (const auto known = item(each)) {
                if (known->state == ItemState::WrittenOff) return needsNoTag(*known);
                labels.push_back(labelOf(*known, checkTables::printGrades(*m_state->database, known->id)));
                continue;
            }
            const auto holder = tagHolderOf(*m_state, each);
            if (!holder) return holder.error();
            if (!*holder) return nothingSoCalled(*m_state, each);
            labels.push_back(labelOf(**holder));
        }
        return labels;
    });
}

Outcome ClubKit::giveMissingTags(const std::vector<std::string>& asked, const std::string& by,
                                 Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Outcome {
        for (const std::string& each : asked) {
            const auto holder = tagHolderOf(*m_state, each);
            if (!holder) return holder.error();
            if (!*holder || !(*holder)->tag.empty()) continue;
            if (const auto given = giveTag(*m_state, ledger, **holder, by, moment); !given)
                return given.error();
        }
        return Done{};
    });
}

Result<std::string> ClubKit::replaceTag(const std::string& asked, const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<std::string> {
        if (const auto known = item(asked)) {
            if (known->state == ItemState::WrittenOff) return needsNoTag(*known);
            const std::string tag = mintCodes(1).front();
            ledger.append(TagFixed{known->id, tag, moment.at}, by);
            return tag;
        }
        const auto holder = tagHolderOf(*m_state, asked);
        if (!holder) return holder.error();
        if (!*holder) return nothingSoCalled(*m_state, asked);
        return giveTag(*m_state, ledger, **holder, by, moment);
    });
}

Result<std::vector<TagLabel>> ClubKit::labelsOfBoat(const std::string& name) const {
    return guarded([&]() -> Result<std::vector<TagLabel>> {
        const auto found = ClubRegister(*m_state).boat(name);
        if (!found) return found.error();
        const auto lines = m_state->registerStore.manifestOf(*found);
        const auto rank = [&](const TagLabel& label) {
            return std::find_if(lines.begin(), lines.end(),
                                [&](const ManifestLine& l) { return l.kitType == label.name; }) -
                   lines.begin();
        };
        std::vector<TagLabel> labels;
        const auto prints = checkTables::printGrades(*m_state->database);
        for (const Item& item : m_state->registerStore.itemsOfBoat(found->name))
            if (item.state != ItemState::WrittenOff) labels.push_back(labelOf(item, prints));
        std::stable_sort(labels.begin(), labels.end(),
                         [&](const TagLabel& a, const TagLabel& b) { return rank(a) < rank(b); });
        return labels;
    });
}

std::vector<std::string> ClubKit::mintCodes(int count) const {
    const MintTag mint = mintingFor(*m_state->database);
    std::set<std::string> codes;
    while (static_cast<int>(codes.size()) < count)
        codes.insert(mint(TagClass::Kit));
    return {codes.begin(), codes.end()};
}

} // namespace core

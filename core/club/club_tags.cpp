#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/club/club_state.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/tag/tag_code.h"

#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/store/tag_tables.h"

#include <algorithm>
#include <set>
#include <sodium.h>

namespace core {
namespace {

std::uint64_t randomBits() {
    std::uint64_t bits = 0;
    randombytes_buf(&bits, sizeof bits);
    return bits;
}

TagLabel labelOf(const Item& item) {
    const std::string& owner = !item.person.empty() ? item.person
                               : !item.boat.empty() ? item.boat
                                                    : item.place;
    return {item.tag, item.kitType, owner};
}

} // namespace

std::string mintKitCode() {
    return TagCode::mint(TagClass::Kit, randomBits).text();
}

Result<std::vector<TagLabel>> ClubKit::tagLabels(const std::vector<std::string>& codes) const {
    return guarded([&]() -> Result<std::vector<TagLabel>> {
        std::vector<TagLabel> all;
        for (const Item& item : m_state->registerStore.allItems())
            all.push_back(labelOf(item));
        for (const Boat& boat : ClubRegister(*m_state).boats())
            if (!boat.tag.empty()) all.push_back({boat.tag, boat.name, boat.boatClass});
        for (const Person& person : ClubRegister(*m_state).people())
            if (!person.tag.empty()) all.push_back({person.tag, person.name, person.role});
        if (codes.empty()) return all;
        std::vector<TagLabel> chosen;
        for (const std::string& typed : codes) {
            const auto code = TagCode::parse(typed);
            if (!code) return code.error();
            Database& database = *m_state->database;
            const std::string tag = tagTables::tagOf(database, tagTables::everOf(database, code->text()));
            const auto found = std::find_if(all.begin(), all.end(),
                                            [&](const TagLabel& label) { return label.code == tag; });
            if (found == all.end()) return Error{ErrorCode::NothingHasTag, {code->text()}};
            chosen.push_back(*found);
        }
        return chosen;
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
        for (const Item& item : m_state->registerStore.itemsOfBoat(found->name))
            if (item.state != ItemState::WrittenOff) labels.push_back(labelOf(item));
        std::stable_sort(labels.begin(), labels.end(),
                         [&](const TagLabel& a, const TagLabel& b) { return rank(a) < rank(b); });
        return labels;
    });
}

std::vector<std::string> ClubKit::mintCodes(int count) const {
    std::set<std::string> codes;
    while (static_cast<int>(codes.size()) < count)
        if (const std::string code = mintKitCode();
            !m_state->registerStore.find(SheetId::Items, foldName(code)) &&
            tagTables::everOf(*m_state->database, code) == code)
            codes.insert(code);
    return {codes.begin(), codes.end()};
}

} // namespace core

#include "core/club/club_state.h"

#include "core/exchange/csv_export.h"
#include "core/register/typed_rows.h"
#include "core/store/club_file.h"
#include "core/store/row_table.h"
#include "core/store/tag_tables.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sodium.h>

namespace core {
namespace {

std::uint64_t randomBits() {
    std::uint64_t bits = 0;
    randombytes_buf(&bits, sizeof bits);
    return bits;
}

std::string mintKitCode() {
    return TagCode::mint(TagClass::Kit, randomBits).text();
}

/// `tags`: see tagTables::changed.
TagLabel labelOf(const Item& item, const std::map<std::string, std::string>& tags) {
    const std::string& owner = !item.person.empty() ? item.person
                               : !item.boat.empty() ? item.boat
                                                    : item.place;
    const auto changed = tags.find(item.code);
    return {changed == tags.end() ? item.code : changed->second, item.kitType, owner};
}

} // namespace

Club::Club(std::unique_ptr<State> state)
    : m_state(std::move(state)) {}
Club::Club(Club&&) noexcept = default;
Club& Club::operator=(Club&&) noexcept = default;
Club::~Club() = default;

Result<Club> Club::create(const std::filesystem::path& file, const std::string& name) {
    return guarded([&]() -> Result<Club> {
        if (sodium_init() < 0)
            return Error{ErrorKind::DiskFailed, "this machine gives no random numbers", {}, {}};
        auto database = clubFile::create(file, [&](Database& fresh) {
            Ledger::nameDevice(fresh);
            Ledger(fresh).append("club-named", {{"name", name}}, {});
        });
        return Club(std::make_unique<State>(std::move(database)));
    });
}

Result<Club> Club::open(const std::filesystem::path& file, Access access) {
    return guarded([&]() -> Result<Club> {
        if (sodium_init() < 0)
            return Error{ErrorKind::DiskFailed, "this machine gives no random numbers", {}, {}};
        return Club(std::make_unique<State>(clubFile::open(file, access == Access::ReadOnly)));
    });
}

std::string Club::name() const {
    return rowTable::clubName(*m_state->database);
}

Result<ImportPlan> Club::importRegister(const std::filesystem::path& folder, CalendarDay today, bool dryRun,
                                        const std::function<void(int, int)>& progress) {
    return guarded([&]() -> Result<ImportPlan> {
        Transaction transaction(*m_state->database);
        auto plan = planImport(folder, m_state->registerStore, today, mintKitCode, progress);
        if (!plan || !plan->rejected.empty() || dryRun) return plan;
        for (RowChange& change : plan->changes) {
            if (change.order) change.order = placeBehind(*m_state->database, change);
            m_state->ledger.append(std::string(sheet(change.sheet).table), bodyOf(change), {});
        }
        transaction.commit();
        return plan;
    });
}

Outcome Club::exportRegister(const std::filesystem::path& folder,
                             const std::vector<std::string>& measuresOf) const {
    return guarded([&] { return exportSheets(m_state->registerStore, folder, measuresOf); });
}

std::vector<Boat> Club::boats() const {
    std::vector<Boat> boats;
    for (const Cells& cells : m_state->registerStore.all(SheetId::Boats))
        boats.push_back(boatFrom(cells));
    return boats;
}

std::vector<Person> Club::people() const {
    std::vector<Person> people;
    for (const Cells& cells : m_state->registerStore.all(SheetId::People))
        people.push_back(personFrom(cells));
    return people;
}

Result<Boat> Club::boat(const std::string& name) const {
    return guarded([&]() -> Result<Boat> {
        if (auto boat = m_state->registerStore.boat(name)) return *boat;
        std::string known;
        for (const Boat& each : boats())
            known += (known.empty() ? "" : ", ") + each.boat;
        return notFound(fmt::format("there is no boat '{}' in this club", name),
                        known.empty() ? "import boats first"
                                      : fmt::format("the club's boats are: {}", known));
    });
}

Result<std::vector<BoatPoint>> Club::pointsOf(const std::string& name, Phase phase) const {
    return guarded([&]() -> Result<std::vector<BoatPoint>> {
        const auto found = boat(name);
        if (!found) return found.error();
        return m_state->registerStore.pointsOf(*found, nameOf(phase));
    });
}

std::optional<Boat> Club::boatOfTag(const std::string& code) const {
    return m_state->registerStore.boatOfTag(code);
}

std::optional<Item> Club::item(const std::string& code) const {
    const auto parsed = TagCode::parse(code);
    if (!parsed) return std::nullopt;
    // A replaced tag still finds its item here: it is typed by people who look things up.
    return m_state->registerStore.item(tagTables::everOf(*m_state->database, parsed->text()));
}

Result<std::vector<TagLabel>> Club::tagLabels(const std::vector<std::string>& codes) const {
    return guarded([&]() -> Result<std::vector<TagLabel>> {
        std::vector<TagLabel> all;
        const auto tags = tagTables::changed(*m_state->database);
        for (const Cells& cells : m_state->registerStore.all(SheetId::Items))
            all.push_back(labelOf(itemFrom(cells), tags));
        for (const Boat& boat : boats())
            if (!boat.tag.empty()) all.push_back({boat.tag, boat.boat, boat.boatClass});
        for (const Person& person : people())
            if (!person.tag.empty()) all.push_back({person.tag, person.person, person.role});
        if (codes.empty()) return all;
        std::vector<TagLabel> chosen;
        for (const std::string& typed : codes) {
            const auto code = TagCode::parse(typed);
            if (!code) return code.error();
            const std::string item = tagTables::everOf(*m_state->database, code->text());
            const auto changed = tags.find(item);
            const std::string& tag = changed == tags.end() ? item : changed->second;
            const auto found = std::find_if(all.begin(), all.end(),
                                            [&](const TagLabel& label) { return label.code == tag; });
            if (found == all.end())
                return notFound(
                    fmt::format("no item, boat or person of this club has the tag {}", code->text()),
                    "look the code up in the register");
            chosen.push_back(*found);
        }
        return chosen;
    });
}

std::map<std::string, std::string> Club::replacedTags() const {
    return tagTables::changed(*m_state->database);
}

Result<std::vector<TagLabel>> Club::kitOf(const std::string& name) const {
    return guarded([&]() -> Result<std::vector<TagLabel>> {
        const auto found = boat(name);
        if (!found) return found.error();
        const auto lines = m_state->registerStore.manifestOf(*found);
        const auto rank = [&](const TagLabel& label) {
            return std::find_if(lines.begin(), lines.end(),
                                [&](const ManifestLine& l) { return l.kitType == label.name; }) -
                   lines.begin();
        };
        std::vector<TagLabel> labels;
        const auto tags = tagTables::changed(*m_state->database);
        for (const Cells& cells : m_state->registerStore.where(SheetId::Items, "boat", found->boat))
            if (const Item item = itemFrom(cells); item.state != ItemState::WrittenOff)
                labels.push_back(labelOf(item, tags));
        std::stable_sort(labels.begin(), labels.end(),
                         [&](const TagLabel& a, const TagLabel& b) { return rank(a) < rank(b); });
        return labels;
    });
}

std::vector<std::string> Club::mintCodes(int count) const {
    std::set<std::string> codes;
    while (static_cast<int>(codes.size()) < count)
        if (const std::string code = mintKitCode();
            !m_state->registerStore.find(SheetId::Items, foldName(code)) &&
            tagTables::everOf(*m_state->database, code) == code)
            codes.insert(code);
    return {codes.begin(), codes.end()};
}

} // namespace core

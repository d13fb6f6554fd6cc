#include "core/base/error_code.h"
#include "core/base/one_slip.h"
#include "core/base/plain_text.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/exchange/sheet_file.h"
#include "core/store/tag_tables.h"
#include "core/tag/tag_code.h"

#include <algorithm>
#include <fmt/ranges.h>

namespace core {
namespace {

using Words = std::vector<std::string>;

Words partsOf(const std::string& name) {
    Words parts{""};
    for (const char character : name)
        if (character == '/')
            parts.emplace_back();
        else
            parts.back() += character;
    return parts;
}

std::string ownerWord(const Sheet& sheet, std::size_t column) {
    const std::string name(sheet.columns[column].name);
    return name == "boat_class" ? "class" : name;
}

/// The rows that a name may mean: a key cell may hold slashes itself, and some may be empty, so each way to
/// share the parts among the key's columns is tried.
class RowFinder {
public:
    RowFinder(const ClubState& state, const Sheet& sheet)
        : m_state(state)
        , m_sheet(sheet) {}

    std::vector<Cells> find(const std::string& name) {
        constexpr std::size_t mostParts = 24; // more ways to share them than anybody waits for
        m_parts = partsOf(name);
        if (m_parts.size() > mostParts) return {};
        share(0, 0, Cells(static_cast<std::size_t>(m_sheet.keyColumns)));
        if (m_parts.size() > 1 && mayBeEmpty(m_sheet, 0)) findOfOwner(m_parts.front());
        return std::move(m_found);
    }

private:
    /// "class/…" or "boat/…": which of the two columns holds the owner is said first.
    void findOfOwner(const std::string& word) {
        for (std::size_t owner = 0; owner < 2; ++owner) {
            if (foldName(word) != foldName(ownerWord(m_sheet, owner))) continue;
            m_parts.erase(m_parts.begin());
            m_owner = owner;
            share(0, 0, Cells(static_cast<std::size_t>(m_sheet.keyColumns)));
            return;
        }
    }

    void share(std::size_t column, std::size_t from, Cells key) {
        if (column == key.size()) {
            if (from == m_parts.size()) look(key);
            return;
        }
        const bool mayStay = mayBeEmpty(m_sheet, static_cast<int>(column));
        if (mayStay && m_owner != column) share(column + 1, from, key);
        if (column < 2 && m_owner && *m_owner != column) return;
        std::string text;
        for (std::size_t to = from; to < m_parts.size(); ++to) {
            text += (to == from ? "" : "/") + m_parts[to];
            key[column] = text;
            share(column + 1, to + 1, key);
        }
    }

    void look(Cells key) {
        for (std::size_t i = 0; i < key.size(); ++i)
            if (const Column& column = m_sheet.columns[i];
                column.type == CellType::Tag && column.tagClass == 'K')
                if (const auto code = TagCode::parse(key[i]))
                    key[i] = tagTables::everOf(*m_state.database, code->text());
        auto row = m_state.registerStore.find(m_sheet.id, keyOf(m_sheet, key));
        if (row && std::find(m_found.begin(), m_found.end(), *row) == m_found.end())
            m_found.push_back(std::move(*row));
    }

    const ClubState& m_state;
    const Sheet& m_sheet;
    Words m_parts;
    std::optional<std::size_t> m_owner;
    std::vector<Cells> m_found;
};

/// At most three.
Words likeOthers(const ClubRegister& register_, SheetId sheet, const std::string& name) {
    Words alike;
    for (const Cells& row : register_.rows(sheet))
        if (const std::string other = register_.nameOfRow(sheet, row);
            alike.size() < 3 && isOneSlip(foldName(other), foldName(name)))
            alike.push_back(other);
    return alike;
}

std::string joined(const Words& words) {
    return fmt::format("{}", fmt::join(words, ", "));
}

} // namespace

Result<Cells> ClubRegister::rowNamed(SheetId id, const std::string& name) const {
    return guarded([&]() -> Result<Cells> {
        auto found = RowFinder(*m_state, sheet(id)).find(std::string(withoutOuterBlanks(name)));
        if (found.size() == 1) return std::move(found.front());
        if (found.size() > 1) {
            Words names;
            for (const Cells& row : found)
                names.push_back(nameOfRow(id, row));
            return Error{ErrorCode::RowAmbiguous, {name, joined(names)}};
        }
        const std::string sheetName(sheet(id).name());
        const Words alike = id == SheetId::Items ? m_state->tagsLike(name) : likeOthers(*this, id, name);
        if (!alike.empty()) return Error{ErrorCode::RowLikeOthers, {sheetName, name, joined(alike)}};
        return Error{ErrorCode::NoSuchRow, {sheetName, name}};
    });
}

std::string ClubRegister::nameOfRow(SheetId id, const Cells& row) const {
    const Sheet& sheet = core::sheet(id);
    Words parts;
    for (int i = 0; i < sheet.keyColumns; ++i) {
        const std::string& text = row[static_cast<std::size_t>(i)];
        if (text.empty()) continue;
        if (i < 2 && mayBeEmpty(sheet, 0)) parts.push_back(ownerWord(sheet, static_cast<std::size_t>(i)));
        parts.push_back(text);
    }
    return fmt::format("{}", fmt::join(parts, "/"));
}

} // namespace core

#include "core/exchange/club_sheet/same_things.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"

#include <algorithm>
#include <array>
#include <deque>
#include <functional>
#include <unordered_map>
#include <unordered_set>

namespace core {
namespace {

constexpr std::array<std::string_view, 11> identity{"kit_type", "size",      "boat",    "place",
                                                    "made",     "first_use", "stamped", "registered",
                                                    "maker",    "batch",     "note"};

class Matching {
public:
    Matching(SheetFile& items, const TableLayout& layout, const RegisterRows& current, Rejections& rejections)
        : m_file(items)
        , m_sheet(*items.sheet)
        , m_rejections(rejections)
        , m_items(current.all(SheetId::Items)) {
        std::stable_sort(m_items.begin(), m_items.end(),
                         [&](const Cells& a, const Cells& b) { return isWrittenOff(a) < isWrittenOff(b); });
        for (int column = 1; column < static_cast<int>(m_sheet.columns.size()); ++column)
            if (isInTable(column, layout)) {
                m_all.push_back(column);
                const std::string_view name = m_sheet.columns[static_cast<std::size_t>(column)].name;
                if (std::find(identity.begin(), identity.end(), name) != identity.end())
                    m_identity.push_back(column);
            }
    }

    void run() {
        for (const GivenRow& row : m_file.rows)
            if (!row.text(0).empty()) m_used.insert(foldName(row.text(0)));
        bySerial();
        byColumns(m_all);
        byColumns(m_identity);
    }

private:
    int column(std::string_view name) const { return m_sheet.indexOf(name); }
    bool isWrittenOff(const Cells& item) const {
        return item[static_cast<std::size_t>(column("state"))] == "written off";
    }

    bool isInTable(int index, const TableLayout& layout) const {
        const std::string_view name = m_sheet.columns[static_cast<std::size_t>(index)].name;
        const bool isHome = (name == "boat" || name == "place") && layout.meaning(homeMeaning);
        return isHome || layout.meaning(name) != nullptr;
    }

    bool isOpen(const GivenRow& row) const { return row.text(0).empty() && !row.isFaulty(0); }
    bool hasSerial(const GivenRow& row) const { return !row.text(column("serial")).empty(); }

    void give(GivenRow& row, const Cells& item) {
        row.cells[0] = item[0];
        m_used.insert(foldName(item[0]));
    }

    std::string serialKey(std::string_view kitType, std::string_view serial) const {
        return foldName(kitType) + '\x1F' + foldName(serial);
    }

    void bySerial() {
        std::unordered_map<std::string, const Cells*> items;
        for (const Cells& item : m_items)
            items.emplace(serialKey(item[static_cast<std::size_t>(column("kit_type"))],
                                    item[static_cast<std::size_t>(column("serial"))]),
                          &item);
        std::unordered_map<std::string, int> rows;
        for (GivenRow& row : m_file.rows) {
            if (!isOpen(row) || !hasSerial(row)) continue;
            const std::string key = serialKey(row.text(column("kit_type")), row.text(column("serial")));
            if (const auto [first, isNew] = rows.emplace(key, row.row); !isNew) {
                m_rejections.add(m_sheet, row, column("serial"),
                                 {ErrorCode::SerialTwiceInTable,
                                  {shown(row.text(column("serial"))), std::to_string(first->second)}});
                continue;
            }
            const auto found = items.find(key);
            if (found != items.end() && !m_used.contains(foldName((*found->second)[0])))
                give(row, *found->second);
        }
    }

    std::string keyBy(const std::vector<int>& columns,
                      const std::function<const std::string&(int)>& cell) const {
        std::string key;
        for (int each : columns)
            key += foldName(cell(each)) + '\x1F';
        return key;
    }

    void byColumns(const std::vector<int>& columns) {
        std::unordered_map<std::string, std::deque<const Cells*>> items;
        for (const Cells& item : m_items)
            if (item[static_cast<std::size_t>(column("serial"))].empty() &&
                !m_used.contains(foldName(item[0])))
                items[keyBy(columns, [&](int at) -> const std::string& {
                    return item[static_cast<std::size_t>(at)];
                })].push_back(&item);
        for (GivenRow& row : m_file.rows) {
            if (!isOpen(row) || hasSerial(row)) continue;
            const auto found =
                items.find(keyBy(columns, [&](int at) -> const std::string& { return row.text(at); }));
            if (found == items.end() || found->second.empty()) continue;
            give(row, *found->second.front());
            found->second.pop_front();
        }
    }

    SheetFile& m_file;
    const Sheet& m_sheet;
    Rejections& m_rejections;
    std::vector<Cells> m_items;
    std::vector<int> m_all, m_identity;     ///< columns that the table has
    std::unordered_set<std::string> m_used; ///< folded codes
};

} // namespace

void findSameThings(SheetFile& items, const TableLayout& layout, const RegisterRows& current,
                    Rejections& rejections) {
    Matching(items, layout, current, rejections).run();
}

} // namespace core

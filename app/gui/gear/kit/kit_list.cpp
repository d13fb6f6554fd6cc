#include "app/gui/gear/kit/kit_list.h"

#include "app/gui/gear/kit/kit_words.h"
#include "app/text/text.h"
#include "core/tag/tag_code.h"

#include <QCollator>

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <unordered_map>

namespace app {
namespace {

QStringList wordsShown(const std::vector<TableRow>& rows) {
    QStringList words;
    words.reserve(static_cast<qsizetype>(rows.size()));
    for (const TableRow& row : rows)
        words << row.cells.join('\n');
    return words;
}

std::vector<QString> namesOf(const std::vector<core::Item>& kit, std::string core::Item::*name) {
    std::set<std::string> names;
    for (const core::Item& item : kit)
        if (!(item.*name).empty()) names.insert(item.*name);
    std::vector<QString> all;
    for (const std::string& each : names)
        all.push_back(text(each));
    return all;
}

} // namespace

KitList::KitList(std::vector<core::ItemDue> lines) {
    std::vector<core::Item> kit;
    kit.reserve(lines.size());
    m_rows.reserve(lines.size());
    m_next.reserve(lines.size());
    for (core::ItemDue& line : lines) {
        m_rows.push_back(rowOf(line));
        m_next.push_back(std::move(line.next));
        kit.push_back(std::move(line.item));
    }
    m_search = KitSearch(std::move(kit), wordsShown(m_rows));
}

std::vector<core::ItemDue> KitList::kitOf(const std::vector<int>& rows) const {
    std::vector<core::ItemDue> kit;
    kit.reserve(rows.size());
    for (const int row : rows) {
        const auto at = static_cast<std::size_t>(row);
        kit.push_back({m_search.kit()[at], m_next[at], m_rows[at].mark == Mark::Look});
    }
    return kit;
}

const core::Item* KitList::item(const QString& id) const {
    const std::string wanted = id.toStdString();
    const auto& kit = m_search.kit();
    const auto found =
        std::find_if(kit.begin(), kit.end(), [&](const core::Item& item) { return item.id == wanted; });
    return found == kit.end() ? nullptr : &*found;
}

bool KitList::isChosen(std::size_t at, const KitChoice& choice) const {
    using State = KitChoice::State;
    const core::Item& item = m_search.kit()[at];
    const auto isState = [&] {
        switch (choice.state) {
        case State::InUse:
            return item.state != core::ItemState::WrittenOff;
        case State::All:
            return true;
        case State::ToLookAt:
            return m_rows[at].mark == Mark::Look;
        case State::Serviceable:
            return item.state == core::ItemState::Serviceable;
        case State::Unserviceable:
            return item.state == core::ItemState::Unserviceable;
        case State::Missing:
            return item.state == core::ItemState::Missing;
        case State::WrittenOff:
            break;
        }
        return item.state == core::ItemState::WrittenOff;
    };
    if (!isState()) return false;
    if (!choice.kitType.isEmpty() && text(item.kitType) != choice.kitType) return false;
    if (!choice.boat.isEmpty() && text(item.boat) != choice.boat) return false;
    if (!choice.place.isEmpty() && text(item.place) != choice.place) return false;
    return !choice.withoutHome || (item.boat.empty() && item.place.empty() && item.person.empty());
}

std::vector<int> KitList::shown(const KitChoice& choice) {
    const auto found = m_search.find(choice.typed);
    std::vector<int> places;
    places.reserve(found.size());
    const bool isWholeCode = m_search.ofCode(choice.typed);
    for (const std::size_t at : found)
        if (isWholeCode || isChosen(at, choice)) places.push_back(static_cast<int>(at));
    const std::vector<int>& rank = ranks(choice.sortedBy);
    std::sort(places.begin(), places.end(), [&](int a, int b) {
        return choice.isBackwards ? rank[static_cast<std::size_t>(a)] > rank[static_cast<std::size_t>(b)]
                                  : rank[static_cast<std::size_t>(a)] < rank[static_cast<std::size_t>(b)];
    });
    return places;
}

QString KitList::sortKey(std::size_t row, int column) const {
    if (column != dueColumn) return m_rows[row].cells.value(column);
    const auto& next = m_next[row];
    return next && next->due ? text(next->due->iso()) : QString();
}

/// Each text is compared once; what is empty comes last, and equal ones in the register's order.
const std::vector<int>& KitList::ranks(int column) {
    m_ranks.resize(kitColumns().size()); // of a list that nothing was read into, too
    std::vector<int>& ranks = m_ranks[static_cast<std::size_t>(column)];
    if (!ranks.empty() || m_rows.empty()) return ranks;
    QCollator collator;
    collator.setNumericMode(true);
    std::map<QString, QCollatorSortKey> keys;
    std::vector<QString> texts;
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        texts.push_back(sortKey(row, column));
        if (!keys.contains(texts.back()))
            keys.emplace(texts.back(), collator.sortKey(texts.back().toLower()));
    }
    std::vector<QString> sorted;
    for (const auto& [text, key] : keys)
        if (!text.isEmpty()) sorted.push_back(text);
    std::stable_sort(sorted.begin(), sorted.end(),
                     [&](const QString& a, const QString& b) { return keys.at(a) < keys.at(b); });
    std::unordered_map<QString, int> rankOfText;
    for (std::size_t i = 0; i < sorted.size(); ++i)
        rankOfText[sorted[i]] = static_cast<int>(i);
    const auto rows = static_cast<int>(m_rows.size());
    std::vector<int> order(m_rows.size());
    std::iota(order.begin(), order.end(), 0);
    const auto rankOf = [&](int row) {
        const QString& text = texts[static_cast<std::size_t>(row)];
        return text.isEmpty() ? rows : rankOfText[text];
    };
    std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return rankOf(a) < rankOf(b); });
    ranks.resize(m_rows.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        ranks[static_cast<std::size_t>(order[i])] = static_cast<int>(i);
    return ranks;
}

std::vector<QString> KitList::kitTypes() const {
    return namesOf(m_search.kit(), &core::Item::kitType);
}

std::vector<QString> KitList::boats() const {
    return namesOf(m_search.kit(), &core::Item::boat);
}

std::vector<QString> KitList::places() const {
    return namesOf(m_search.kit(), &core::Item::place);
}

} // namespace app

#include "core/store/names_now.h"

#include "core/register/cell_values.h"
#include "core/register/typed_rows.h"

#include <functional>
#include <map>
#include <numeric>

namespace core::namesNow {
namespace {

/// Names by what they are of and folded: those that were renamed into each other are one group.
class Groups {
public:
    void join(const std::string& from, const std::string& to, const std::string& name) {
        const std::size_t group = topOf(numberOf(to));
        m_groups[topOf(numberOf(from))] = group;
        m_names[group] = name;
    }
    void each(const std::function<void(const std::string& key, const std::string& name)>& visit) {
        for (const auto& [key, number] : m_numbers)
            visit(key, m_names[topOf(number)]);
    }

private:
    std::size_t numberOf(const std::string& key) {
        const auto [at, isNew] = m_numbers.try_emplace(key, m_groups.size());
        if (isNew) {
            m_groups.push_back(at->second);
            m_names.emplace_back();
        }
        return at->second;
    }
    std::size_t topOf(std::size_t number) const {
        while (m_groups[number] != number)
            number = m_groups[number];
        return number;
    }

    std::map<std::string, std::size_t> m_numbers;
    std::vector<std::size_t> m_groups;
    std::vector<std::string> m_names;
};

std::string keyOf(const std::string& of, const std::string& name) {
    return foldName(of) + '\x1f' + foldName(name);
}

void settleOne(Database& database, Named named) {
    Groups groups;
    struct Row {
        std::string of, from, to;
    };
    std::vector<Row> rows;
    Statement query =
        database.prepare("SELECT of, from_name, to_name FROM renamed WHERE named = ? ORDER BY stamp")
            .with(nameOf(named));
    while (query.step())
        rows.push_back({query.text(0), query.text(1), query.text(2)});
    for (const Row& row : rows) {
        const std::string scope = named == Named::Size ? of(database, Named::KitType, row.of) : row.of;
        groups.join(keyOf(scope, row.from), keyOf(scope, row.to), row.to);
    }
    groups.each([&](const std::string& key, const std::string& name) {
        database.prepare("INSERT INTO name_now (named, key, name) VALUES (?, ?, ?)")
            .with(nameOf(named))
            .with(key)
            .with(name)
            .run();
    });
}

} // namespace

void put(Database& database, const std::string& id, const std::string& stamp, const Renamed& renamed) {
    database
        .prepare("INSERT OR IGNORE INTO renamed (id, stamp, named, of, from_name, to_name) VALUES (?, ?, ?, "
                 "?, ?, ?)")
        .with(id)
        .with(stamp)
        .with(nameOf(renamed.named))
        .with(renamed.of)
        .with(renamed.from)
        .with(renamed.to)
        .run();
}

void settle(Database& database) {
    database.script("DELETE FROM name_now");
    for (const Named named : {Named::Boat, Named::Place, Named::Person, Named::KitType, Named::Size,
                              Named::BoatClass}) // sizes behind the kit types that they are of
        settleOne(database, named);
}

std::string of(Database& database, Named named, const std::string& name, const std::string& scope) {
    if (name.empty()) return name;
    const std::string kitType =
        named == Named::Size && !scope.empty() ? of(database, Named::KitType, scope) : scope;
    return firstText(database.prepare("SELECT name FROM name_now WHERE named = ? AND key = ?")
                         .with(nameOf(named))
                         .with(keyOf(kitType, name)))
        .value_or(name);
}

std::vector<std::string> of(Database& database, Named named, const std::vector<std::string>& names) {
    std::vector<std::string> now;
    for (const std::string& name : names)
        now.push_back(of(database, named, name));
    return now;
}

std::string cell(Database& database, const Sheet& sheet, int column, const std::string& cell) {
    const auto named = namedIn(sheet, column);
    if (!named || named == Named::Size) return cell;
    if (sheet.columns[static_cast<std::size_t>(column)].type != CellType::Names)
        return of(database, *named, cell);
    std::string list;
    for (const std::string& name : of(database, *named, namesFrom(cell)))
        list += (list.empty() ? "" : ";") + name;
    return list;
}

RowWritten row(Database& database, RowWritten written) {
    const Sheet& sheet = core::sheet(written.sheet);
    for (int column = 0; column < sheet.keyColumns; ++column) {
        std::string& key = written.keyCells[static_cast<std::size_t>(column)];
        key = cell(database, sheet, column, key);
    }
    for (auto& [column, text] : written.set)
        text = cell(database, sheet, column, text);
    settleSize(database, sheet, written.keyCells);
    written.key = core::keyOf(sheet, written.keyCells);
    return written;
}

void settleSize(Database& database, const Sheet& sheet, Cells& cells) {
    const int size = sheet.indexOf("size"), kitType = sheet.indexOf("kit_type");
    if (size < 0 || kitType < 0 || static_cast<int>(cells.size()) <= std::max(size, kitType)) return;
    std::string& cell = cells[static_cast<std::size_t>(size)];
    cell = of(database, Named::Size, cell, cells[static_cast<std::size_t>(kitType)]);
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"renamed", "name_now"};
    return names;
}

} // namespace core::namesNow

#include "core/store/fact_table.h"

#include "core/register/sheets.h"
#include "core/store/names_now.h"
#include "core/store/row_table.h"

#include <utility>

namespace core::factTable {
namespace {

/// Gathers facts from several sides.
class Gathered {
public:
    explicit Gathered(Database& database)
        : m_database(database) {}

    void addRow(SheetId id, const std::string& key) {
        for (Fact& fact : ofRow(m_database, std::string(sheet(id).table), key))
            m_facts.push_back(std::move(fact));
    }
    void addRowsWhere(SheetId id, std::string_view column, const std::string& value) {
        for (const Cells& cells : rowTable::where(m_database, sheet(id), column, value))
            addRow(id, keyOf(sheet(id), cells));
    }
    /// Also of rows of which nothing is left.
    void addRowsUnder(SheetId id, const std::string& key) {
        for (Fact& fact : ofRowsUnder(m_database, std::string(sheet(id).table), key))
            m_facts.push_back(std::move(fact));
    }
    /// `sql` gives stamps of facts; its only parameter, used once or more, is `value`.
    void addStamped(std::string_view sql, const std::string& value) {
        std::vector<std::string> stamps;
        Statement query = m_database.prepare(sql).with(value);
        while (query.step())
            stamps.push_back(query.text(0));
        for (const std::string& stamp : stamps)
            if (auto fact = byStamp(m_database, stamp)) m_facts.push_back(std::move(*fact));
    }
    void addRenamings(Named named, const std::string& name) {
        std::vector<std::string> stamps;
        Statement query =
            m_database.prepare("SELECT stamp, to_name FROM renamed WHERE named = ?").with(nameOf(named));
        while (query.step())
            if (namesNow::of(m_database, named, query.text(1)) == name) stamps.push_back(query.text(0));
        for (const std::string& stamp : stamps)
            if (auto fact = byStamp(m_database, stamp)) m_facts.push_back(std::move(*fact));
    }
    std::vector<Fact> facts() && { return std::move(m_facts); }

private:
    Database& m_database;
    std::vector<Fact> m_facts;
};

} // namespace

std::vector<Fact> ofItem(Database& database, const std::string& code) {
    Gathered gathered(database);
    gathered.addRow(SheetId::Items, foldName(code));
    for (const SheetId id : {SheetId::Parts, SheetId::Happenings, SheetId::Log})
        gathered.addRowsWhere(id, "code", code);
    for (const SheetId id : {SheetId::Services, SheetId::Use})
        gathered.addRowsUnder(id, foldName(code));
    gathered.addStamped(
        "SELECT stamp FROM sighting WHERE code = ?1 UNION SELECT taken_back.stamp FROM taken_back JOIN "
        "sighting ON sighting.id = taken_back.act WHERE sighting.code = ?1 UNION SELECT taken_back.stamp "
        "FROM taken_back JOIN item_state ON item_state.id = taken_back.act WHERE item_state.code = ?1 UNION "
        "SELECT stamp FROM tag_change WHERE item = ?1 UNION SELECT stamp FROM photo_of WHERE item = ?1 UNION "
        "SELECT taken_back.stamp FROM taken_back JOIN photo_of ON photo_of.id = taken_back.act WHERE item = "
        "?1",
        code);
    gathered.addStamped("SELECT taken_back.stamp FROM taken_back JOIN fact_of_row ON fact_of_row.fact = "
                        "taken_back.act WHERE kind = 'service' AND key > ?1 || char(31) AND key < ?1 || ' '",
                        foldName(code));
    return std::move(gathered).facts();
}

std::vector<Fact> ofBoat(Database& database, const std::string& boat) {
    Gathered gathered(database);
    gathered.addRow(SheetId::Boats, foldName(boat));
    for (const SheetId id : {SheetId::ManifestLines, SheetId::Points, SheetId::Log})
        gathered.addRowsWhere(id, "boat", boat);
    gathered.addStamped(
        "SELECT stamp FROM check_run WHERE boat = ?1 UNION SELECT stamp FROM sign_off WHERE boat = ?1 UNION "
        "SELECT check_closed.stamp FROM check_closed JOIN check_run ON check_run.id = check_id WHERE boat = "
        "?1 UNION SELECT check_names.stamp FROM check_names JOIN check_run ON check_run.id = check_id WHERE "
        "boat = ?1 UNION SELECT point_value.stamp FROM point_value JOIN check_run ON check_run.id = check_id "
        "WHERE boat = ?1 UNION SELECT check_event.stamp FROM check_event JOIN check_run ON check_run.id = "
        "check_id WHERE boat = ?1 UNION SELECT stamp FROM operation WHERE boat = ?1 UNION SELECT "
        "stamp FROM photo_of WHERE boat = ?1 UNION SELECT taken_back.stamp FROM taken_back JOIN photo_of ON "
        "photo_of.id = taken_back.act WHERE boat = ?1 UNION SELECT taken_back.stamp FROM taken_back JOIN "
        "(SELECT id, "
        "check_id FROM check_names UNION ALL SELECT id, "
        "check_id FROM point_value UNION ALL SELECT id, check_id FROM check_event UNION ALL SELECT id, "
        "check_id FROM operation) AS done ON done.id = act JOIN check_run ON check_run.id = check_id WHERE "
        "boat = ?1",
        boat);
    gathered.addRenamings(Named::Boat, boat);
    return std::move(gathered).facts();
}

std::vector<Fact> ofPerson(Database& database, const std::string& person) {
    Gathered gathered(database);
    gathered.addRow(SheetId::People, foldName(person));
    gathered.addStamped(
        "WITH named AS (SELECT id, stamp FROM check_names WHERE EXISTS (SELECT 1 FROM json_each(people) "
        "WHERE value = ?1)) SELECT stamp FROM sign_off WHERE by = ?1 UNION SELECT stamp FROM named UNION "
        "SELECT taken_back.stamp FROM taken_back JOIN named ON named.id = act",
        person);
    gathered.addStamped(
        "SELECT erased.stamp FROM erased JOIN fact_of_row ON fact_of_row.fact = erased.fact WHERE kind = "
        "'person' AND key = ?1 GROUP BY erased.stamp",
        foldName(person));
    gathered.addStamped(
        "SELECT stamp FROM pin_change WHERE key = ?1 UNION SELECT erased.stamp FROM erased JOIN "
        "pin_change ON pin_change.id = erased.fact WHERE pin_change.key = ?1",
        foldName(person));
    gathered.addRenamings(Named::Person, person);
    return std::move(gathered).facts();
}

} // namespace core::factTable

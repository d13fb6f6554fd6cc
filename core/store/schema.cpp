#include "core/store/schema.h"

#include "core/store/migrations.h"

#include <map>

namespace core {
namespace {

/// "table item": its SQL text. A name that stands there twice differs from one that does not.
using Objects = std::map<std::string, std::string>;

Objects objectsOf(Database& database) {
    Objects objects;
    Statement query = database.prepare(
        "SELECT type || ' ' || name, tbl_name || ' ' || coalesce(sql, '') FROM sqlite_schema");
    while (query.step())
        objects[query.text(0)] += query.text(1);
    return objects;
}

const Objects& wantedObjects() {
    static const Objects wanted = [] {
        Database made({}, Database::Mode::Memory);
        migrate(made, migrations());
        return objectsOf(made);
    }();
    return wanted;
}

} // namespace

std::vector<std::string> schemaDifferences(Database& database) {
    std::vector<std::string> differences;
    const Objects here = objectsOf(database);
    const Objects& wanted = wantedObjects();
    for (const auto& [name, text] : here)
        if (const auto found = wanted.find(name); found == wanted.end() || found->second != text)
            differences.push_back(name);
    for (const auto& [name, text] : wanted)
        if (here.count(name) == 0) differences.push_back(name);
    return differences;
}

} // namespace core

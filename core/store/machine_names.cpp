#include "core/store/machine_names.h"

namespace core::machineNames {

void put(Database& database, const std::string& machine, const std::string& stamp, const std::string& name) {
    database
        .prepare("INSERT INTO machine_name (machine, stamp, name) VALUES (?, ?, ?) ON CONFLICT (machine) DO "
                 "UPDATE SET stamp = excluded.stamp, name = excluded.name WHERE stamp < excluded.stamp")
        .with(machine)
        .with(stamp)
        .with(name)
        .run();
}

std::string of(Database& database, const std::string& machine) {
    return firstText(database.prepare("SELECT name FROM machine_name WHERE machine = ?").with(machine))
        .value_or(std::string());
}

std::map<std::string, std::string> all(Database& database) {
    std::map<std::string, std::string> names;
    Statement query = database.prepare("SELECT machine, name FROM machine_name");
    while (query.step())
        names[query.text(0)] = query.text(1);
    return names;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"machine_name"};
    return names;
}

} // namespace core::machineNames

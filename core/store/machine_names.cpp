#include "core/store/machine_names.h"

#include "core/store/fact_table.h"

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

std::string given(Database& database, const std::string& machine) {
    return firstText(database.prepare("SELECT name FROM machine_name WHERE machine = ?").with(machine))
        .value_or(std::string());
}

std::string of(Database& database, const std::string& machine) {
    if (std::string name = given(database, machine); !name.empty()) return name;
    const auto first = factTable::inChain(database, machine, 1);
    const auto body =
        first ? core::bodyOf(*first) : Result<std::optional<FactBody>>(std::optional<FactBody>());
    const auto* begun = body && *body ? std::get_if<MachineBegun>(&**body) : nullptr;
    return begun != nullptr ? begun->name : std::string();
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"machine_name"};
    return names;
}

} // namespace core::machineNames

#include "core/store/migrations.h"

#include "migration_scripts.h" // made by CMake from migrations/*.sql

#include <array>
#include <fmt/format.h>

namespace core {

std::span<const Migration> migrations() {
    static constexpr std::array<Migration, 1> steps{{{3, scripts::migration0003}}};
    return steps;
}

void migrate(Database& database, std::span<const Migration> steps) {
    const auto have = database.number("PRAGMA user_version");
    for (const Migration& step : steps) {
        if (step.version <= have) continue;
        Transaction transaction(database);
        database.script(std::string(step.sql));
        database.script(fmt::format("PRAGMA user_version = {}", step.version));
        transaction.commit();
    }
}

} // namespace core

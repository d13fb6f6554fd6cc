#include "app/cli/json/pin_json.h"

#include "app/cli/json/json_parts.h"
#include "core/club/club_record.h"

namespace app {

std::string pinJson(const std::string& act, const std::string& person,
                    const std::vector<std::string>& officers) {
    return written({{"person", person}, {"act", act}, {"pin", act == "set"}, {"officers", officers}});
}

std::string signingJson(bool isProven) {
    return written({{"proven", isProven}});
}

std::string machineJson(const core::ThisMachine& machine) {
    return written(
        {{"machine", orNull(machine.machine)}, {"name", orNull(machine.name)}, {"facts", machine.facts}});
}

} // namespace app

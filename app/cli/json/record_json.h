#pragma once

#include "app/cli/json/json_out.h"
#include "core/answers/event_tally.h"
#include "core/answers/evidence.h"
#include "core/answers/service_round.h"
#include "core/register/item.h"

#include <string>
#include <vector>

namespace app {

// Documents of the commands that record more than a check; the rules of json_out.h hold.

std::string serviceJson(const core::ServiceOrder& order, const core::ServiceRound& round);
/// The missing list of one event, with what went out and came back.
std::string tallyJson(const core::EventTally& tally);
std::string evidenceJson(const core::Evidence& evidence);
/// New kit, each with its tag; `sheet`: the file of its tags, or empty.
std::string newKitJson(const std::vector<core::Item>& items, const std::string& sheet);
/// `name`: the item's code, else the name of the boat, person or place.
std::string newTagJson(const std::string& tag, const std::string& name, const std::string& sheet);
std::string stateJson(const core::Item& item);

} // namespace app

#pragma once

#include "app/cli/json/json_out.h"
#include "core/answers/event_tally.h"
#include "core/answers/evidence.h"
#include "core/answers/item_record.h"
#include "core/answers/service_round.h"
#include "core/answers/set_up.h"
#include "core/club/club_events.h"
#include "core/register/item.h"
#include "core/register/photo.h"

#include <optional>
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
/// What a boat's manifest asks for, and by line what was registered for it.
using FittedOut = std::vector<std::vector<core::Item>>;
std::string fitOutJson(const core::BoatFitOut& boat, const FittedOut& fitted, const std::string& sheet);
/// `name`: the item's code, else the name of the boat, person or place.
std::string newTagJson(const std::string& tag, const std::string& name, const std::string& sheet);
std::string stateJson(const core::Item& item);
std::string happenedJson(const core::Happened& happened, core::CalendarDay on);
std::string withdrawnJson(const core::Item& item, const core::ServiceEntry& record);
/// Which event holds; none: null.
std::string eventJson(const std::optional<core::HeldEvent>& held);
std::string addedPhotoJson(const core::Photo& photo);
std::string takenBackPhotosJson(const std::vector<core::Photo>& photos);

} // namespace app

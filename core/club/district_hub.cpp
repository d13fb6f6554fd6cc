#include "core/club/district_hub.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/club/club_state.h"
#include "core/club/hub_exchange.h"
#include "core/club/hub_link.h"
#include "core/club/kept_place.h"
#include "core/hub/hub_boards.h"
#include "core/hub/hub_office.h"
#include "core/store/club_file.h"
#include "core/store/other_record.h"
#include "core/store/taking_in.h"

#include <algorithm>
#include <sodium.h>

namespace core::districtHub {
namespace {

/// Runs `work` on a connection of its own; what fails is told with the URL.
template <class Work>
auto atHub(const std::string& url, Work work) -> decltype(work(std::declval<HubConnection&>())) {
    return guarded([&]() -> decltype(work(std::declval<HubConnection&>())) {
        if (sodium_init() < 0) return Error{ErrorCode::NoRandomNumbers};
        try {
            return work(*connectedHub(url));
        } catch (StoreFailure& failure) {
            sayWhere(failure.error, url);
            throw;
        }
    });
}

hubFacts::KnownClub clubCalled(HubConnection& hub, const std::string& name) {
    const auto clubs = hubFacts::clubs(hub);
    const auto found = std::find_if(clubs.begin(), clubs.end(),
                                    [&](const auto& each) { return foldName(each.name) == foldName(name); });
    if (found != clubs.end() && !found->founder.empty()) return *found;
    if (found != clubs.end()) throw StoreFailure({ErrorCode::HubClubEmpty, {found->name}});
    if (clubs.empty()) throw StoreFailure({ErrorCode::HubRoleUnknown, {hubFacts::ownRole(hub)}});
    std::string known;
    for (const auto& each : clubs)
        known += (known.empty() ? "" : ", ") + each.name;
    throw StoreFailure({ErrorCode::HubNoSuchClub, {name, known}});
}

void requireNothingAt(const std::filesystem::path& file) {
    if (std::filesystem::exists(std::filesystem::symlink_status(file)))
        throw StoreFailure({ErrorCode::FileExists, {}, file.string()});
}

/// Keeps where it exchanges, unless somebody joined or left before, which only an officer may change.
FetchedFile joined(const HubPlace& place, const hubFacts::KnownClub& club, bool isOwn) {
    if (const auto before = keptPlace::of(club.founder)) return {before, true};
    if (keptPlace::isLeft(club.founder)) return {std::nullopt, false, true};
    if (!isOwn) return {};
    keptPlace::put(club.founder, place);
    return {place};
}

} // namespace

Outcome prepare(const std::string& url) {
    return atHub(url, [](HubConnection& hub) -> Outcome {
        hubOffice::prepare(hub);
        return Done{};
    });
}

Result<std::string> addClub(const std::string& url, const std::string& club, const std::string& role) {
    const auto name = nameFrom(withoutOuterBlanks(club), "club");
    if (!name) return name.error();
    if (name->empty()) return Error{ErrorCode::NameMissing, {}, "club"};
    return atHub(
        url, [&](HubConnection& hub) -> Result<std::string> { return hubOffice::addClub(hub, *name, role); });
}

Outcome addDistrict(const std::string& url, const std::string& role) {
    return atHub(url, [&](HubConnection& hub) -> Outcome {
        hubOffice::addDistrict(hub, role);
        return Done{};
    });
}

Result<std::vector<PublishedBoard>> boards(const std::string& url) {
    return atHub(url, [](HubConnection& hub) -> Result<std::vector<PublishedBoard>> {
        return hubBoards::newest(hub);
    });
}

Result<FetchedFile> fetch(const HubPlace& place, const std::string& club, const std::filesystem::path& file) {
    return atHub(place.url, [&](HubConnection& hub) -> Result<FetchedFile> {
        requireNothingAt(file); // before much is pulled for nothing
        const hubFacts::KnownClub known = clubCalled(hub, club);
        const bool isOwn = hubFacts::ownClub(hub) == known.club;
        IncomingFacts incoming;
        incoming.pull(hub, known.club, hubFacts::all(hub, known.club), place.sendsPrivate, nullptr);
        if (clubOf(incoming.database()) != known.founder)
            throw StoreFailure({ErrorCode::HubRecordDamaged, {}, {}, {{ErrorCode::OtherClub}}});
        OtherFacts facts;
        try {
            Database nothing({}, Database::Mode::Memory);
            migrate(nothing, migrations());
            facts = newFactsIn(nothing, incoming.database(), {});
        } catch (const StoreFailure& failure) {
            throw StoreFailure(asOfHub(failure.error, place.url));
        }
        clubFile::create(file, [&](Database& fresh) { takeIn(fresh, facts); });
        try {
            return joined(place, known, isOwn);
        } catch (...) {
            clubFile::remove(file); // it would exchange nowhere
            throw;
        }
    });
}

} // namespace core::districtHub

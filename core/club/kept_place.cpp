#include "core/club/kept_place.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/store/kept_keys.h"

namespace core::keptPlace {
namespace {

constexpr const char* placeNote = "hub";
constexpr const char* withPrivate = "private";

void keep(const std::string& club, const std::string& text) {
    if (!KeptKeys(club).putNote(placeNote, text))
        throw StoreFailure({ErrorCode::HubPlaceNotKept, {}, stateFolder().string()});
}

} // namespace

std::optional<HubPlace> of(const std::string& club) {
    const auto note = KeptKeys(club).note(placeNote);
    if (!note) return std::nullopt;
    const auto end = note->find('\n');
    return HubPlace{note->substr(0, end), end != std::string::npos && note->substr(end + 1) == withPrivate};
}

void put(const std::string& club, const HubPlace& place) {
    keep(club, place.url + '\n' + (place.sendsPrivate ? withPrivate : ""));
}

void remove(const std::string& club) {
    keep(club, {});
}

} // namespace core::keptPlace

#include "core/club/club_photos.h"

#include "core/base/error_code.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/store/photo_table.h"

#include <algorithm>
#include <string_view>

namespace core {
namespace {

constexpr std::string_view beginOfJpeg =
    "\xFF\xD8\xFF"; // ITU-T T.81, table B.1: start of image, then a marker
constexpr std::string_view endOfJpeg = "\xFF\xD9";

Outcome isJpegOfOurs(const std::string& bytes) {
    if (!bytes.starts_with(beginOfJpeg) || !bytes.ends_with(endOfJpeg)) return Error{ErrorCode::PhotoNotJpeg};
    const auto size = static_cast<int>(std::min<std::size_t>(bytes.size(), 2'000'000'000));
    if (size > ClubPhotos::mostBytes)
        return Error{ErrorCode::PhotoTooHeavy,
                     {std::to_string((size + 999) / 1000), std::to_string(ClubPhotos::mostBytes / 1000)}};
    return Done{};
}

/// `there`: the photographs of the same thing.
Photo put(ClubState& state, Ledger& ledger, PhotoAdded added, const std::string& jpeg,
          const std::vector<Photo>& there, const std::string& by) {
    added.sha256 = sha256Hex(jpeg);
    added.bytes = static_cast<int>(jpeg.size());
    const auto same = std::ranges::find_if(there, [&](const Photo& photo) {
        return photo.sha256 == added.sha256 && photo.entry.empty() != added.isOfEntry;
    });
    if (same != there.end()) return *same;
    photoTable::keep(*state.database, added.sha256, jpeg);
    const Fact fact = ledger.append(added, by);
    for (const Photo& photo : photoTable::all(*state.database))
        if (photo.id == fact.id) return photo;
    throw StoreFailure({ErrorCode::NoSuchPhoto, {added.sha256}});
}

} // namespace

Result<Photo> ClubPhotos::addToItem(const std::string& typed, const std::string& jpeg, const std::string& by,
                                    Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<Photo> {
        const auto known = knownItem(*m_state, typed);
        if (!known) return known.error();
        if (const Outcome good = isJpegOfOurs(jpeg); !good) return good.error();
        PhotoAdded added{.code = known->id};
        added.at = moment.at;
        return put(*m_state, ledger, added, jpeg, photoTable::ofItem(*m_state->database, known->id), by);
    });
}

Result<Photo> ClubPhotos::addToEntry(const std::string& id, const std::string& jpeg, const std::string& by,
                                     Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<Photo> {
        const auto log = m_state->registerStore.allLog();
        const auto entry = std::ranges::find(log, id, &LogEntry::id);
        if (entry == log.end()) return Error{ErrorCode::NoSuchLogEntry, {id}};
        if (const Outcome good = isJpegOfOurs(jpeg); !good) return good.error();
        PhotoAdded added{.code = entry->item.id, .isOfEntry = true, .boat = entry->boat};
        added.day = entry->day.iso();
        added.text = entry->text;
        added.at = moment.at;
        return put(*m_state, ledger, added, jpeg, photoTable::ofEntry(*m_state->database, id), by);
    });
}

Outcome ClubPhotos::takeBack(const std::vector<std::string>& ids, const std::string& by, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const std::vector<Photo> photos = photoTable::all(*m_state->database);
        for (const std::string& id : ids)
            if (std::ranges::find(photos, id, &Photo::id) == photos.end())
                return Error{ErrorCode::NoSuchPhoto, {id}};
        for (const std::string& id : ids)
            ledger.append(ActTakenBack{{}, id, {}, moment.at}, by);
        return Done{};
    });
}

std::vector<Photo> ClubPhotos::all() const {
    return photoTable::all(*m_state->database);
}

std::vector<Photo> ClubPhotos::ofItem(const std::string& code) const {
    const auto item = ClubKit(*m_state).item(code);
    return item ? photoTable::ofItem(*m_state->database, item->id) : std::vector<Photo>();
}

std::vector<Photo> ClubPhotos::ofBoat(const std::string& name) const {
    const auto boat = m_state->registerStore.boat(name);
    return boat ? photoTable::ofBoat(*m_state->database, boat->name) : std::vector<Photo>();
}

std::vector<Photo> ClubPhotos::ofEntry(const std::string& entry) const {
    return photoTable::ofEntry(*m_state->database, entry);
}

Result<std::string> ClubPhotos::jpegOf(const std::string& sha256) const {
    return guarded([&]() -> Result<std::string> {
        Database& database = *m_state->database;
        auto bytes = photoTable::bytesOf(database, sha256);
        if (!bytes) return Error{ErrorCode::NoSuchPhoto, {sha256}};
        if (sha256Hex(*bytes) != sha256)
            return Error{ErrorCode::RecordDamaged, {}, {}, {Error{ErrorCode::PhotoStray, {sha256}}}};
        return std::move(*bytes);
    });
}

} // namespace core

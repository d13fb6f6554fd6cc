#include "core/store/photo_table.h"

namespace core::photoTable {
namespace {

Photo photoIn(const Statement& row) {
    const auto at = Instant::parse(row.text(6));
    if (!at) throw StoreFailure(unreadableCell({"photo_of", row.text(0), "at"}, {}, row.text(6)));
    return {row.text(0), row.text(1), row.text(2), row.text(3), row.text(4), static_cast<int>(row.integer(5)),
            *at,         row.text(7)};
}

std::vector<Photo> photosIn(Statement query) {
    std::vector<Photo> photos;
    while (query.step())
        photos.push_back(photoIn(query));
    return photos;
}

} // namespace

// But those that were taken back.
#define PHOTOS                                                                                               \
    "SELECT id, item, boat, entry, sha256, size, at, by FROM photo_of WHERE id NOT IN (SELECT act FROM "     \
    "taken_back) "

void put(Database& database, const std::string& stamp, const Photo& photo) {
    database
        .prepare("INSERT INTO photo_of (id, stamp, item, boat, entry, sha256, size, at, by) VALUES (?, ?, ?, "
                 "?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING")
        .with(photo.id)
        .with(stamp)
        .with(photo.item)
        .with(photo.boat)
        .with(photo.entry)
        .with(photo.sha256)
        .with(photo.size)
        .with(photo.at.iso())
        .with(photo.by)
        .run();
}

std::vector<Photo> ofItem(Database& database, const std::string& item) {
    return photosIn(database.prepare(PHOTOS "AND item = ? ORDER BY stamp").with(item));
}

std::vector<Photo> ofBoat(Database& database, const std::string& boat) {
    return photosIn(database.prepare(PHOTOS "AND boat = ? ORDER BY stamp").with(boat));
}

std::vector<Photo> ofEntry(Database& database, const std::string& entry) {
    return photosIn(database.prepare(PHOTOS "AND entry = ? ORDER BY stamp").with(entry));
}

std::vector<Photo> all(Database& database) {
    return photosIn(database.prepare(PHOTOS "ORDER BY stamp"));
}

void keep(Database& database, const std::string& sha256, const std::string& bytes) {
    database.prepare("INSERT INTO photo (sha256, bytes) VALUES (?, ?) ON CONFLICT DO NOTHING")
        .with(sha256)
        .withBytes(bytes)
        .run();
}

std::optional<std::string> bytesOf(Database& database, const std::string& sha256) {
    Statement query = database.prepare("SELECT bytes FROM photo WHERE sha256 = ?").with(sha256);
    return query.step() ? std::optional(query.bytes(0)) : std::nullopt;
}

std::vector<std::string> kept(Database& database) {
    std::vector<std::string> hashes;
    Statement query = database.prepare("SELECT sha256 FROM photo ORDER BY sha256");
    while (query.step())
        hashes.push_back(query.text(0));
    return hashes;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"photo_of"};
    return names;
}

} // namespace core::photoTable

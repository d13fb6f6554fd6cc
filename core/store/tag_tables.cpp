#include "core/store/tag_tables.h"

namespace core::tagTables {
void put(Database& database, const std::string& tag, const std::string& stamp, const std::string& item) {
    // A tag names one item for ever: the first fact that gave it stands.
    database
        .prepare("INSERT INTO tag_change (tag, stamp, item) VALUES (?, ?, ?) ON CONFLICT (tag) DO UPDATE SET "
                 "stamp = excluded.stamp, item = excluded.item WHERE excluded.stamp < stamp")
        .with(tag)
        .with(stamp)
        .with(item)
        .run();
}

std::optional<std::string> itemOf(Database& database, const std::string& tag) {
    const std::string item = everOf(database, tag);
    return tagOf(database, item) == tag ? std::optional(item) : std::nullopt;
}

std::string tagOf(Database& database, const std::string& item) {
    return firstText(database.prepare("SELECT tag FROM tag_change WHERE item = ? ORDER BY stamp DESC LIMIT 1")
                         .with(item))
        .value_or(item);
}

std::string everOf(Database& database, const std::string& tag) {
    return firstText(database.prepare("SELECT item FROM tag_change WHERE tag = ?").with(tag)).value_or(tag);
}

std::map<std::string, std::string> changed(Database& database) {
    std::map<std::string, std::string> tags;
    Statement query = database.prepare("SELECT item, tag FROM tag_change ORDER BY stamp");
    while (query.step())
        tags[query.text(0)] = query.text(1);
    return tags;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"tag_change"};
    return names;
}

} // namespace core::tagTables

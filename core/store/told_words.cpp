#include "core/store/told_words.h"

namespace core::toldWords {
namespace {

/// No name of a sheet has a full stop.
std::string wordPlace(std::string_view sheet, std::string_view column) {
    return std::string(sheet) + '.' + std::string(column);
}

} // namespace

void put(Database& database, const std::string& stamp, const WordTold& told) {
    database
        .prepare("INSERT INTO told_word (cells, word, stamp, means) VALUES (?, ?, ?, ?) ON CONFLICT DO "
                 "UPDATE SET stamp = excluded.stamp, means = excluded.means WHERE stamp < excluded.stamp")
        .with(wordPlace(told.sheet, told.column))
        .with(told.word)
        .with(stamp)
        .with(told.means)
        .run();
}

std::vector<WordTold> of(Database& database, std::string_view sheet) {
    const std::string before = wordPlace(sheet, {});
    Statement query = database.prepare("SELECT cells, word, means FROM told_word ORDER BY stamp");
    std::vector<WordTold> words;
    while (query.step())
        if (const std::string cells = query.text(0); cells.starts_with(before))
            words.push_back({std::string(sheet), cells.substr(before.size()), query.text(1), query.text(2)});
    return words;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"told_word"};
    return names;
}

} // namespace core::toldWords

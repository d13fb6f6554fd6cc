#include "core/store/told_words.h"

namespace core::toldWords {

void put(Database& database, const std::string& stamp, const WordTold& told) {
    database
        .prepare("INSERT INTO told_word (sheet, column_name, word, stamp, means) VALUES (?, ?, ?, ?, ?) "
                 "ON CONFLICT DO UPDATE SET stamp = excluded.stamp, means = excluded.means "
                 "WHERE stamp < excluded.stamp")
        .with(told.sheet)
        .with(told.column)
        .with(told.word)
        .with(stamp)
        .with(told.means)
        .run();
}

std::vector<WordTold> of(Database& database, std::string_view sheet) {
    Statement query =
        database
            .prepare("SELECT sheet, column_name, word, means FROM told_word WHERE sheet = ? ORDER BY stamp")
            .with(sheet);
    std::vector<WordTold> words;
    while (query.step())
        words.push_back({query.text(0), query.text(1), query.text(2), query.text(3)});
    return words;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"told_word"};
    return names;
}

} // namespace core::toldWords

#include "core/store/told_words.h"

#include "core/store/names_now.h"

namespace core::toldWords {
namespace {

/// No name of a sheet has a full stop.
std::string wordPlace(const std::string& sheet, const std::string& column) {
    return sheet + '.' + column;
}

/// Of a sheet or column that this program does not know, as it is. A size's name waits for the row, which
/// says of what kit type it is.
std::string meaningNow(Database& database, const WordTold& told) {
    const Sheet* sheet = sheetOfName(told.sheet);
    const int column = sheet == nullptr ? -1 : sheet->indexOf(told.column);
    return column < 0 ? told.means : namesNow::cell(database, *sheet, column, told.means);
}

void putWord(Database& database, const std::string& stamp, const WordTold& told, bool isForgotten) {
    database
        .prepare("INSERT INTO told_word (cells, word, stamp, means, is_forgotten) VALUES (?, ?, ?, ?, ?) "
                 "ON CONFLICT DO UPDATE SET stamp = excluded.stamp, means = excluded.means, is_forgotten = "
                 "excluded.is_forgotten WHERE stamp < excluded.stamp")
        .with(wordPlace(told.sheet, told.column))
        .with(told.word)
        .with(stamp)
        .with(told.means)
        .with(isForgotten ? 1 : 0)
        .run();
}

} // namespace

void put(Database& database, const std::string& stamp, const WordTold& told) {
    WordTold now = told;
    now.means = meaningNow(database, told);
    putWord(database, stamp, now, false);
}

void put(Database& database, const std::string& stamp, const WordForgotten& forgotten) {
    putWord(database, stamp, WordTold{forgotten.sheet, forgotten.column, forgotten.word, {}}, true);
}

std::vector<Told> all(Database& database) {
    Statement query =
        database.prepare("SELECT cells, word, means, is_forgotten FROM told_word ORDER BY stamp");
    std::vector<Told> words;
    while (query.step()) {
        const std::string cells = query.text(0);
        const auto stop = cells.find('.');
        words.push_back({{cells.substr(0, stop), cells.substr(stop + 1), query.text(1), query.text(2)},
                         query.integer(3) != 0});
    }
    return words;
}

const std::vector<std::string>& tables() {
    static const std::vector<std::string> names{"told_word"};
    return names;
}

} // namespace core::toldWords

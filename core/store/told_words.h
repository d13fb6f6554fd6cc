#pragma once

#include "core/record/facts.h"
#include "core/store/database.h"

#include <string>
#include <string_view>
#include <vector>

/// What words of the club's own say in its spreadsheets. All throw StoreFailure.
namespace core::toldWords {

/// A name that a word means is kept as it is called now.
void put(Database& database, const std::string& stamp, const WordTold& told);
void put(Database& database, const std::string& stamp, const WordForgotten& forgotten);

struct Told {
    WordTold word;
    bool isForgotten = false; ///< it means nothing then
};
/// The newest last. Words are as they were written: some of them may be one word, of which the newest holds.
std::vector<Told> all(Database& database);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::toldWords

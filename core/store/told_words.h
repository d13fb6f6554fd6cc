#pragma once

#include "core/record/facts.h"
#include "core/store/database.h"

#include <string>
#include <string_view>
#include <vector>

/// What words of the club's own say in its spreadsheets. All throw StoreFailure.
namespace core::toldWords {

void put(Database& database, const std::string& stamp, const WordTold& told);
/// Those of rows of that sheet (its name without .csv), the newest last. Words are as they were written: some
/// of them may be one word.
std::vector<WordTold> of(Database& database, std::string_view sheet);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::toldWords

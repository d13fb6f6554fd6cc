#pragma once

#include "core/register/sheets.h"

#include <QString>

#include <map>
#include <string>
#include <utility>

namespace app {

// What words of a club mean, as somebody said once. Kept in the settings of this machine, for each club file
// and each kind of rows: the club file has no place for it, and another machine asks once more.

using ToldWords = std::map<std::pair<std::string, std::string>, std::string>; ///< column and word, our word

ToldWords toldWords(const QString& clubFile, core::SheetId sheet);
void keepTold(const QString& clubFile, core::SheetId sheet, const ToldWords& words);

} // namespace app

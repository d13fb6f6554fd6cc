#pragma once

#include "core/register/sheets.h"

#include <string>
#include <string_view>
#include <vector>

namespace core {

/// A heading or word as words are compared: folded, umlauts written out, punctuation and line breaks as one
/// blank.
std::string plainWord(std::string_view text);
/// The same without what stands in brackets: "Mass (kg)" is "mass".
std::string plainHeading(std::string_view text);
/// The words of a list with | between them.
std::vector<std::string_view> wordsOf(std::string_view list);

/// A meaning that a heading may have; the lower the rank, the surer.
struct HeadingMeaning {
    std::string_view meaning;
    int rank = 0;
};
/// By rank: the column's own name, then its words in English and German.
std::vector<HeadingMeaning> meaningsOf(std::string_view heading, const Sheet& sheet);

/// All meanings that columns of the sheet may have.
std::vector<std::string_view> allMeanings(const Sheet& sheet);

} // namespace core

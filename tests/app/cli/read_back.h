#pragma once

#include "tests/support/ctl_process.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

#include <filesystem>
#include <string>

namespace small_club {

// What was written, as foreign programs read it: poppler's tools and Python's csv module, which share no code
// with the writers.

inline std::string popplerTool(const char* name) {
    return std::filesystem::path(PDFTOPPM).parent_path() / name;
}

/// Its blanks and line ends made one blank each, no-break spaces too. `page`: 0 for all.
inline std::string textOfPdf(const std::string& file, int page = 0) {
    std::vector<std::string> words;
    if (page > 0) words = {"-f", std::to_string(page), "-l", std::to_string(page)};
    words.insert(words.end(), {"-layout", file, "-"});
    const support::Ran ran = support::runProgram(popplerTool("pdftotext"), words);
    EXPECT_EQ(ran.exit, 0) << ran.err;
    std::string text;
    for (std::size_t i = 0; i < ran.out.size(); ++i) {
        const bool isNoBreak = ran.out.compare(i, 2, "\u00a0") == 0;
        const bool isBlank =
            isNoBreak || std::string_view(" \n\r\t\f").find(ran.out[i]) != std::string_view::npos;
        if (isNoBreak) ++i;
        if (!isBlank)
            text += ran.out[i];
        else if (!text.empty() && text.back() != ' ')
            text += ' ';
    }
    return text;
}

inline int pagesOfPdf(const std::string& file) {
    const support::Ran ran = support::runProgram(popplerTool("pdfinfo"), {file});
    const auto at = ran.out.find("Pages:");
    return at == std::string::npos ? 0 : std::stoi(ran.out.substr(at + 6));
}

/// Strictly: what is no RFC 4180 fails.
inline nlohmann::ordered_json rowsOfCsv(const std::string& file) {
    const support::Ran ran = support::runProgram(
        "/usr/bin/python3", {"-c",
                             "import csv, json, sys\n"
                             "with open(sys.argv[1], newline='', encoding='utf-8') as file:\n"
                             "    print(json.dumps(list(csv.reader(file, strict=True))))",
                             file});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    return nlohmann::ordered_json::parse(ran.out);
}

/// "K7Q2 4RMX 1P", as people read a code.
inline std::string groupedCode(const std::string& code) {
    return code.substr(0, 4) + ' ' + code.substr(4, 4) + ' ' + code.substr(8);
}

} // namespace small_club

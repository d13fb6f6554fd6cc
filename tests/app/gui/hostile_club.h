#pragma once

#include "core/base/plain_text.h"
#include "tests/app/gui/shown_texts.h"
#include "tests/support/small_club_files.h"
#include "tests/support/unchecked_club.h"

#include <gtest/gtest.h>

namespace support {

/// Names that a page would run instead of showing: HTML (HTML Living Standard, 13.1.2), and what drives a
/// terminal or turns the direction of writing. The boat's has only what a boat may be called: it is opened by
/// it.
inline const std::map<std::string, std::string> hostileNames{
    {"Teal", "<b>Teal</b>"},
    {"Ada Thorne", "<i>Ada\u202EThorne</i>"},
    {"Shed", "<u>Sh\u009B2Jed</u>"},
    {"knife", "<img src=x>kni\u2066fe"},
    {"life jacket", "<h1>life\u2028jacket</h1>"},
    {"hull", "<s>hu\x1Bll</s>"},
};

/// The same as they are shown.
inline const QStringList hostileShown{
    QStringLiteral("<b>Teal</b>"),
    QStringLiteral("<i>Ada\\u202eThorne</i>"),
    QStringLiteral("<u>Sh\\x9b2Jed</u>"),
    QStringLiteral("<img src=x>kni\\u2066fe"),
    QStringLiteral("<h1>life\\u2028jacket</h1>"),
    QStringLiteral("<s>hu\\x1bll</s>"),
};

inline void writeHostileClub(const std::filesystem::path& file) {
    auto files = small_club::csvFiles();
    files["log.csv"] =
        "boat,day,text,severity,by\nTeal,2026-03-01,<b>torn\x1B[5m</b> strap,remark,Ada Thorne\n";
    for (auto& [name, text] : files)
        text = replaced(text, hostileNames);
    writeUnchecked(file, "<b>Small\x1B[31m</b> Club", files);
}

/// Nothing in view runs, and nothing is shown but what is seen.
inline void expectShownAsItIs(QWidget& root, const char* where) {
    EXPECT_TRUE(richLabelsIn(root).isEmpty())
        << where << ": " << richLabelsIn(root).join(" | ").toStdString();
    for (const QString& text : textsIn(root)) {
        const std::string oneLine = QString(text).remove('\n').toStdString();
        EXPECT_FALSE(core::holdsUnseen(oneLine)) << where << ": " << core::visibleText(oneLine);
    }
}

/// How many of the hostile names stand in view as they are.
inline qsizetype hostileNamesIn(QWidget& root) {
    const QString all = textsIn(root).join('\n');
    return std::count_if(hostileShown.begin(), hostileShown.end(),
                         [&](const QString& name) { return all.contains(name); });
}

} // namespace support

#include "app/text/text.h"

#include <gtest/gtest.h>

using app::text;
using app::textOfLines;

TEST(Text, showsWhatWouldDriveTheScreen) {
    EXPECT_EQ(text(std::string("Te\x1B[31mal\n")), QStringLiteral("Te\\x1b[31mal\\x0a"));
    EXPECT_EQ(text(QStringLiteral("\u202Egpj\u2028\u009B")), QStringLiteral("\\u202egpj\\u2028\\x9b"));
    EXPECT_EQ(textOfLines(QStringLiteral("a\nb\t\x1B")), QStringLiteral("a\nb\\x09\\x1b"));
}

TEST(Text, leavesEverythingElse) {
    const std::string plain = "<b>Mücke</b> & 😀 \u05D0\u05D1 \\x1b";
    EXPECT_EQ(text(plain).toStdString(), plain);
    EXPECT_EQ(textOfLines(text(plain)).toStdString(), plain);
}

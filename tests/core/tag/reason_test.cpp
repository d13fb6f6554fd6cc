#include "core/tag/reason.h"

#include "core/base/error_code.h"

#include <gtest/gtest.h>

using core::ErrorCode;
using core::reasonFrom;

TEST(Reason, isSaidInWords) {
    EXPECT_TRUE(reasonFrom("swimmer in the rip"));
    EXPECT_TRUE(reasonFrom("rip"));
    EXPECT_TRUE(reasonFrom("Böe"));
    EXPECT_TRUE(reasonFrom("2 in the water"));
}

TEST(Reason, isNoTagThatWasScanned) {
    for (const char* tag : {"K80NSC1FX4", "k80n sc1f x4", "C00000001Y"})
        EXPECT_EQ(reasonFrom(tag).error().code, ErrorCode::ReasonIsTag) << tag;
    EXPECT_TRUE(reasonFrom("K80NSC1FX4 is torn"));
}

TEST(Reason, hasThreeLetters) {
    for (const char* text : {"", "  ", "ok", "...", "123456789", "09521101530001", "ö1ö"})
        EXPECT_EQ(reasonFrom(text).error().code, ErrorCode::ReasonTooShort) << text;
}

#include "core/tag/reason.h"

#include "core/base/error_code.h"

#include <gtest/gtest.h>

using core::checkReason;
using core::ErrorCode;

TEST(Reason, isSaidInWords) {
    EXPECT_TRUE(checkReason("swimmer in the rip"));
    EXPECT_TRUE(checkReason("rip"));
    EXPECT_TRUE(checkReason("Böe"));
    EXPECT_TRUE(checkReason("2 in the water"));
}

TEST(Reason, isNoTagThatWasScanned) {
    for (const char* tag : {"K80NSC1FX4", "k80n sc1f x4", "C00000001Y"})
        EXPECT_EQ(checkReason(tag).error().code, ErrorCode::ReasonIsTag) << tag;
    EXPECT_TRUE(checkReason("K80NSC1FX4 is torn"));
}

TEST(Reason, hasThreeLetters) {
    for (const char* text : {"", "  ", "ok", "...", "123456789", "09521101530001", "ö1ö"})
        EXPECT_EQ(checkReason(text).error().code, ErrorCode::ReasonTooShort) << text;
}

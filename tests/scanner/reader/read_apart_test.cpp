#include "tests/scanner/reader/read_apart.h"

#include "tests/scanner/reader/scored_frames.h"

#include <QJsonObject>
#include <gtest/gtest.h>

#include <cstdlib>

TEST(ReadApart, countsAReaderThatEndsItsProcessAndGoesOn) {
    const auto frames = scored::framesIn(READER_SAMPLES, 4);
    ASSERT_TRUE(frames);
    const QImage fatal = scored::pictureOf(READER_SAMPLES, frames->at(1).toObject());
    const auto reader = [&](scanner::GreyView picture) -> scored::Texts {
        if (scanner::copyOf(picture).pixels == scanner::copyOf(scored::viewOf(fatal)).pixels) std::abort();
        return {{"a text", scanner::HowRead::Fitted}};
    };
    const auto outcomes = scored::readApart(READER_SAMPLES, *frames, reader);
    ASSERT_EQ(outcomes.size(), 4u);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(outcomes[i].aborted, i == 1) << i;
        EXPECT_EQ(outcomes[i].texts.count("a text"), i == 1 ? 0u : 1u) << i;
    }
    EXPECT_EQ(outcomes[0].texts.at("a text"), scanner::HowRead::Fitted);
}

#include "app/gui/theme/sounds.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

const std::int16_t* samples(const QByteArray& bytes) {
    return reinterpret_cast<const std::int16_t*>(bytes.constData());
}

/// Hertz, from the times the wave comes up through zero.
double pitchOf(const QByteArray& bytes) {
    const auto count = bytes.size() / 2;
    int rises = 0;
    for (qsizetype i = 1; i < count; ++i)
        rises += samples(bytes)[i - 1] < 0 && samples(bytes)[i] >= 0;
    return rises * static_cast<double>(app::soundRate) / static_cast<double>(count);
}

} // namespace

TEST(Sounds, lookIsLongerAndLowerThanFine) {
    const QByteArray fine = app::samplesOf(app::Sound::NewAndFine);
    const QByteArray look = app::samplesOf(app::Sound::LookAtThis);
    EXPECT_GT(look.size(), 3 * fine.size());
    EXPECT_GT(pitchOf(fine), 2 * pitchOf(look));
}

TEST(Sounds, beginAndEndSoftly) {
    for (const app::Sound sound : {app::Sound::NewAndFine, app::Sound::LookAtThis}) {
        const QByteArray bytes = app::samplesOf(sound);
        EXPECT_LT(std::abs(samples(bytes)[0]), 200);
        EXPECT_LT(std::abs(samples(bytes)[bytes.size() / 2 - 1]), 600);
    }
}

TEST(Sounds, volumeStaysBetweenOffAndFull) {
    app::Sounds sounds;
    sounds.setVolume(140);
    EXPECT_EQ(sounds.volume(), 100);
    sounds.setVolume(-5);
    EXPECT_EQ(sounds.volume(), 0);
}

#include "scanner/live/frame_mailbox.h"

#include <gtest/gtest.h>

#include <atomic>
#include <thread>

namespace scanner {
namespace {

using namespace std::chrono_literals;

Frame frame(int number) {
    Frame made;
    made.grey = GreyPicture(16, 16, static_cast<std::uint8_t>(number));
    made.at = std::chrono::milliseconds(number);
    return made;
}

TEST(FrameMailbox, newestWins) {
    FrameMailbox mailbox;
    mailbox.offer(frame(1));
    mailbox.offer(frame(2));
    mailbox.offer(frame(3));
    const auto taken = mailbox.take();
    ASSERT_TRUE(taken);
    EXPECT_EQ(taken->at, 3ms);
    EXPECT_EQ(taken->grey.pixels[0], 3);
    EXPECT_FALSE(mailbox.take());
}

TEST(FrameMailbox, tellsOfAnArrivalOnceUntilItIsTaken) {
    int arrivals = 0;
    FrameMailbox mailbox([&] { ++arrivals; });
    mailbox.offer(frame(1));
    mailbox.offer(frame(2));
    EXPECT_EQ(arrivals, 1);
    mailbox.take();
    mailbox.offer(frame(3));
    EXPECT_EQ(arrivals, 2);
}

TEST(FrameMailbox, aRecordingsFrameWaitsForItsTurn) {
    FrameMailbox mailbox;
    std::atomic<int> put = 0;
    std::jthread recording([&](const std::stop_token& stop) {
        for (int i = 1; i <= 100; ++i)
            if (mailbox.put(frame(i), stop)) ++put;
    });
    int next = 1;
    while (next <= 100) {
        const auto taken = mailbox.take();
        if (!taken) {
            std::this_thread::yield();
            continue;
        }
        EXPECT_EQ(taken->at.count(), next);
        ++next;
    }
    recording.join();
    EXPECT_EQ(put, 100);
}

TEST(FrameMailbox, aFrameThatWaitsIsDroppedWhenAskedToStop) {
    FrameMailbox mailbox;
    mailbox.offer(frame(1));
    std::atomic<bool> accepted = true;
    std::jthread recording([&](const std::stop_token& stop) { accepted = mailbox.put(frame(2), stop); });
    recording.request_stop();
    recording.join();
    EXPECT_FALSE(accepted);
    EXPECT_EQ(mailbox.take()->at, 1ms);
}

// Most telling under the thread sanitizer.
TEST(FrameMailbox, framesComeWhole) {
    FrameMailbox mailbox;
    std::atomic<bool> done = false;
    std::jthread camera([&] {
        for (int i = 1; i <= 5000; ++i)
            mailbox.offer(frame(i % 200));
        done = true;
    });
    int taken = 0;
    while (!done || taken == 0) {
        const auto got = mailbox.take();
        if (!got) continue;
        ++taken;
        const auto value = static_cast<std::uint8_t>(got->at.count());
        for (const std::uint8_t pixel : got->grey.pixels)
            ASSERT_EQ(pixel, value);
    }
    EXPECT_GT(taken, 0);
}

} // namespace
} // namespace scanner

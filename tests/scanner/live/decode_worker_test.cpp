#include "scanner/live/decode_worker.h"

#include "scanner/live/frame_mailbox.h"
#include "tests/support/wait_for.h"

#include <QThread>
#include <gtest/gtest.h>

#include <semaphore>
#include <thread>
#include <utility>
#include <vector>

namespace scanner {
namespace {

Frame numberedFrame(int number) {
    Frame made;
    made.grey = GreyPicture(32, 16, static_cast<std::uint8_t>(number % 200));
    made.at = std::chrono::milliseconds(number);
    made.source = 7;
    return made;
}

/// Names the frame by its pixels, which must be all alike.
std::vector<SeenCode> readLevel(GreyView view) {
    SeenCode code;
    code.text = std::to_string(view.at(0, 0));
    for (int y = 0; y < view.height; ++y)
        for (int x = 0; x < view.width; ++x)
            if (view.at(x, y) != view.at(0, 0)) code.text = "torn";
    return {code};
}

/// A mailbox with a worker on a thread of its own, as the scanner has it.
class DecodeWorkerOnItsThread : public testing::Test {
protected:
    DecodeWorkerOnItsThread()
        : mailbox([this] {
            QMetaObject::invokeMethod(&worker, &DecodeWorker::readWaiting, Qt::QueuedConnection);
        })
        , worker(mailbox, readLevel) {
        worker.moveToThread(&thread);
        QObject::connect(&worker, &DecodeWorker::frameRead, &receiver,
                         [this](const FrameReading& reading) { readings.push_back(reading); });
        thread.start();
    }
    ~DecodeWorkerOnItsThread() override {
        thread.quit();
        thread.wait();
    }

    FrameMailbox mailbox;
    DecodeWorker worker;
    QObject receiver; ///< on the test's thread: readings come queued
    QThread thread;
    std::vector<FrameReading> readings;
};

TEST_F(DecodeWorkerOnItsThread, tellsWhatItReadAndOfWhichFrame) {
    mailbox.offer(numberedFrame(42));
    ASSERT_TRUE(support::waitFor([&] { return readings.size() == 1; }));
    ASSERT_EQ(readings[0].seen.size(), 1U);
    EXPECT_EQ(readings[0].seen[0].text, "42");
    EXPECT_EQ(readings[0].width, 32);
    EXPECT_EQ(readings[0].height, 16);
    EXPECT_EQ(readings[0].at.count(), 42);
    EXPECT_EQ(readings[0].source, 7);
    EXPECT_FALSE(readings[0].isEnd);
}

TEST_F(DecodeWorkerOnItsThread, theEndOfARecordingIsNotRead) {
    Frame end;
    end.isEnd = true;
    mailbox.offer(std::move(end));
    ASSERT_TRUE(support::waitFor([&] { return readings.size() == 1; }));
    EXPECT_TRUE(readings[0].isEnd);
    EXPECT_TRUE(readings[0].seen.empty());
}

TEST_F(DecodeWorkerOnItsThread, aFastCameraNeverTearsAFrameAndItsNewestIsRead) {
    constexpr int count = 3000;
    std::jthread camera([&] {
        for (int i = 1; i <= count; ++i)
            mailbox.offer(numberedFrame(i));
    });
    ASSERT_TRUE(support::waitFor([&] { return !readings.empty() && readings.back().at.count() == count; }));
    EXPECT_LE(readings.size(), static_cast<std::size_t>(count));
    for (std::size_t i = 0; i < readings.size(); ++i) {
        EXPECT_EQ(readings[i].seen[0].text, std::to_string(readings[i].at.count() % 200));
        if (i > 0) {
            EXPECT_GT(readings[i].at, readings[i - 1].at);
        }
    }
}

TEST_F(DecodeWorkerOnItsThread, everyFrameOfARecordingIsRead) {
    constexpr int count = 500;
    std::jthread recording([&](const std::stop_token& stop) {
        for (int i = 1; i <= count; ++i)
            mailbox.put(numberedFrame(i), stop);
    });
    ASSERT_TRUE(support::waitFor([&] { return readings.size() == count; }));
    for (int i = 0; i < count; ++i)
        EXPECT_EQ(readings[static_cast<std::size_t>(i)].at.count(), i + 1);
}

/// The same with a plain thread in place of Qt's event loop, whose locks the thread sanitizer cannot see
/// into: what it says of this is about our own code.
TEST(DecodeWorkerOnAPlainThread, aFastCameraAndARecordingShareTheMailbox) {
    std::counting_semaphore<> arrived(0);
    FrameMailbox mailbox([&] { arrived.release(); });
    DecodeWorker worker(mailbox, readLevel);
    std::vector<FrameReading> readings;
    QObject::connect(&worker, &DecodeWorker::frameRead,
                     [&](const FrameReading& reading) { readings.push_back(reading); });
    std::jthread reading([&] {
        while (readings.empty() || !readings.back().isEnd) {
            arrived.acquire();
            worker.readWaiting();
        }
    });
    std::jthread camera([&] {
        for (int i = 1; i <= 3000; ++i)
            mailbox.offer(numberedFrame(i));
    });
    camera.join();
    std::jthread recording([&](const std::stop_token& stop) {
        for (int i = 3001; i <= 3200; ++i)
            mailbox.put(numberedFrame(i), stop);
        Frame end;
        end.isEnd = true;
        mailbox.put(std::move(end), stop);
    });
    recording.join();
    reading.join();
    ASSERT_GT(readings.size(), 201U); // all of the recording, its end, and the camera's newest at least
    for (std::size_t i = 0; i + 1 < readings.size(); ++i)
        EXPECT_EQ(readings[i].seen[0].text, std::to_string(readings[i].at.count() % 200));
    EXPECT_EQ(readings[readings.size() - 2].at.count(), 3200);
    EXPECT_EQ(readings[readings.size() - 202].at.count(), 3000);
}

} // namespace
} // namespace scanner

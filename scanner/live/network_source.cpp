#include "scanner/live/network_source.h"

#include "scanner/files/network_video.h"
#include "scanner/live/frame_mailbox.h"

#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <utility>

namespace scanner {
namespace {

using namespace std::chrono_literals;

constexpr auto glance = 50ms;          // between two looks at whether to stop
constexpr auto silenceIsLoss = 6000ms; // also before the first frame
constexpr std::chrono::milliseconds firstWait = 500ms, longestWait = 8000ms;

/// Returns early when asked to stop.
void waitFor(std::chrono::milliseconds time, const std::stop_token& stop) {
    std::mutex mutex;
    std::unique_lock lock(mutex);
    std::condition_variable_any().wait_for(lock, stop, time, [] { return false; });
}

} // namespace

NetworkSource::NetworkSource(FrameMailbox& mailbox, int number, NetworkAddress address)
    : FrameSource(mailbox, number)
    , m_address(std::move(address)) {}

NetworkSource::~NetworkSource() {
    m_thread.request_stop();
    if (m_thread.joinable()) m_thread.join();
}

void NetworkSource::start() {
    stop();
    m_thread = std::jthread([this](const std::stop_token& stop) { run(stop); });
}

void NetworkSource::stop() {
    if (!m_thread.joinable()) return;
    m_thread.request_stop();
    m_thread.join();
    setState(SourceState::Stopped);
}

void NetworkSource::run(const std::stop_token& stop) {
    std::chrono::milliseconds retryAfter = firstWait;
    setState(SourceState::Starting);
    while (!stop.stop_requested()) {
        const bool wasThere = follow(stop);
        if (stop.stop_requested()) return;
        setState(SourceState::NoCamera);
        if (wasThere) retryAfter = firstWait;
        waitFor(retryAfter, stop);
        retryAfter = std::min(2 * retryAfter, longestWait);
    }
}

/// One connection, until it is lost or silent for too long; whether a frame came over it.
bool NetworkSource::follow(const std::stop_token& stop) {
    NetworkVideo video(m_address);
    bool wasThere = false;
    for (std::chrono::milliseconds last = now(); !stop.stop_requested() && !video.isLost();) {
        auto picture = video.next(glance, m_previewWidth);
        const std::chrono::milliseconds silence = now() - last;
        if (!picture || picture->grey.view().isEmpty()) {
            if (silence > silenceIsLoss) break;
            if (wasThere && silence > silenceIsStall) setState(SourceState::Stalled);
            continue;
        }
        wasThere = true;
        last = now();
        setState(SourceState::Running);
        m_mailbox.offer({std::move(picture->grey), last, m_number, false});
        if (!picture->preview.isNull()) emit previewReady(picture->preview);
    }
    return wasThere;
}

void NetworkSource::setState(SourceState state) {
    if (std::exchange(m_state, state) != state) emit stateChanged(state);
}

} // namespace scanner

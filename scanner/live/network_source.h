#pragma once

#include "scanner/files/network_address.h"
#include "scanner/live/frame_source.h"

#include <atomic>
#include <chrono>
#include <optional>
#include <stop_token>
#include <thread>

namespace scanner {

/// A camera of the network, watched over: it is connected to anew, until told to stop, when it cannot be
/// reached, ends, or says nothing for a while. SourceState::NoCamera while it cannot be reached,
/// SourceState::Stalled while it is connected and silent. Works on a thread of its own, so its signals come
/// queued.
class NetworkSource : public FrameSource {
    Q_OBJECT

public:
    NetworkSource(FrameMailbox& mailbox, int number, NetworkAddress address);
    ~NetworkSource() override;

    void start() override;
    void stop() override;
    void setPreviewWidth(int width) override { m_previewWidth = width; }

private:
    void run(const std::stop_token& stop);
    bool follow(const std::stop_token& stop);
    void setState(SourceState state);

    const NetworkAddress m_address;
    std::atomic<int> m_previewWidth{0};
    std::optional<SourceState> m_state; ///< told last; of the thread
    std::jthread m_thread;
};

} // namespace scanner

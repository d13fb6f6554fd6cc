#include "scanner/live/frame_mailbox.h"

#include <utility>

namespace scanner {

FrameMailbox::FrameMailbox(std::function<void()> onArrival)
    : m_onArrival(std::move(onArrival)) {}

void FrameMailbox::offer(Frame frame) {
    bool wasEmpty = false;
    {
        const std::lock_guard guard(m_lock);
        wasEmpty = !m_frame;
        m_frame = std::move(frame);
    }
    if (wasEmpty && m_onArrival) m_onArrival();
}

bool FrameMailbox::put(Frame frame, const std::stop_token& stop) {
    {
        std::unique_lock guard(m_lock);
        if (!m_emptied.wait(guard, stop, [&] { return !m_frame; }) || stop.stop_requested()) return false;
        m_frame = std::move(frame);
    }
    if (m_onArrival) m_onArrival();
    return true;
}

std::optional<Frame> FrameMailbox::take() {
    std::optional<Frame> taken;
    {
        const std::lock_guard guard(m_lock);
        taken.swap(m_frame);
    }
    m_emptied.notify_one();
    return taken;
}

} // namespace scanner

#include "scanner/live/decode_worker.h"

#include "scanner/live/frame_mailbox.h"

#include <utility>

namespace scanner {
namespace {

constexpr std::chrono::milliseconds adviceEvery{200};

} // namespace

DecodeWorker::DecodeWorker(FrameMailbox& mailbox, CodeReader ofFrames, CodeReader ofPictures)
    : m_mailbox(mailbox)
    , m_ofFrames(std::move(ofFrames))
    , m_ofPictures(ofPictures ? std::move(ofPictures) : m_ofFrames) {}

void DecodeWorker::readWaiting() {
    const auto frame = m_mailbox.take();
    if (!frame) return;
    FrameReading reading;
    if (!frame->isEnd) reading.seen = (frame->isPicture ? m_ofPictures : m_ofFrames)(frame->grey.view());
    reading.width = frame->grey.width;
    reading.height = frame->grey.height;
    reading.at = frame->at;
    reading.source = frame->source;
    reading.isEnd = frame->isEnd;
    if (std::exchange(m_source, frame->source) != frame->source) m_nextAdvice = frame->at;
    if (!frame->isEnd && frame->at >= m_nextAdvice) {
        reading.advice = adviseOn(frame->grey.view(), reading.seen);
        m_nextAdvice = frame->at + adviceEvery;
    }
    emit frameRead(reading);
}

} // namespace scanner

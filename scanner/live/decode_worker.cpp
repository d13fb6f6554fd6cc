#include "scanner/live/decode_worker.h"

#include "scanner/live/frame_mailbox.h"

#include <utility>

namespace scanner {

DecodeWorker::DecodeWorker(FrameMailbox& mailbox, CodeReader reader)
    : m_mailbox(mailbox)
    , m_reader(std::move(reader)) {}

void DecodeWorker::readWaiting() {
    const auto frame = m_mailbox.take();
    if (!frame) return;
    FrameReading reading;
    if (!frame->last) reading.seen = m_reader(frame->grey.view());
    reading.width = frame->grey.width;
    reading.height = frame->grey.height;
    reading.at = frame->at;
    reading.source = frame->source;
    reading.last = frame->last;
    emit frameRead(reading);
}

} // namespace scanner

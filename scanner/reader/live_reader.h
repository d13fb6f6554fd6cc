#pragma once

#include "scanner/grey_picture.h"
#include "scanner/reader/symbol_reader.h"
#include "scanner/seen_code.h"

#include <chrono>
#include <memory>
#include <vector>

namespace scanner {

/// Reads a stream of frames within a time budget a frame. A frame gets a few of the reader's steps; the next
/// frame goes on with those that follow, so that after some frames a steady scene has seen them all. What is
/// read is followed from frame to frame and costs no further reading. One thread at a time.
class LiveReader {
public:
    /// What the budget counts: the wall's clock, or the processor time of the calling thread, to measure by.
    enum class Clock { Wall, Thread };

    explicit LiveReader(TagTest isTag, std::chrono::milliseconds budget = std::chrono::milliseconds(33),
                        Clock clock = Clock::Wall);
    ~LiveReader();
    LiveReader(LiveReader&&) noexcept;
    LiveReader& operator=(LiveReader&&) noexcept;

    /// The codes in view: read in this frame, or read before and still where they were, moved with the
    /// picture. Each as it was read. A guess is told again when it is read again, and from then on like the
    /// others. An empty frame has no codes.
    std::vector<SeenCode> read(GreyView frame);

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace scanner

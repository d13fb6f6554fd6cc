#pragma once

#include "scanner/seen_code.h"

#include <chrono>
#include <string>
#include <vector>

namespace scanner {

struct TrackedCode {
    SeenCode code;         ///< as it was seen last
    bool believed = false; ///< false: a guess that waits for a second frame; draw it, do not act on it
};

struct TrackingTimes {
    std::chrono::milliseconds gone{
        2000}; ///< a code not seen for so long has gone; seen again, it is new again
    std::chrono::milliseconds outline{
        250}; ///< its outline stays for so long, because single frames miss codes
};

/// Makes of the codes of single frames what is new, still there and gone. The same label held before the
/// camera is new once; two labels of one text count as one. A guess (HowRead::Guessed) is new only when a
/// second frame gives the same text before it has gone. A value: no clock, no thread.
class Tracker {
public:
    struct Change {
        std::vector<SeenCode> fresh;   ///< to act upon, once each
        std::vector<std::string> gone; ///< texts; only of codes that were fresh before
    };

    explicit Tracker(TrackingTimes times = {})
        : m_times(times) {}

    /// What one further frame showed. `at` is the source's own time and never falls.
    Change update(const std::vector<SeenCode>& frame, std::chrono::milliseconds at);

    /// The codes to draw, in the order of their coming.
    std::vector<TrackedCode> outlines() const;

private:
    struct Entry {
        TrackedCode tracked;
        std::chrono::milliseconds last;
        int lastFrame;
    };

    void see(const SeenCode& code, Change& change);
    void dropGone(Change& change);

    TrackingTimes m_times;
    std::vector<Entry> m_entries;
    std::chrono::milliseconds m_now{0};
    int m_frame = 0;
};

} // namespace scanner

#pragma once

#include "scanner/reader/finder_search.h"
#include "scanner/reader/grid_fit.h"
#include "scanner/reader/linear_step.h"
#include "scanner/reader/picture_levels.h"
#include "scanner/reader/qr_tag_decoder.h"
#include "scanner/seen_code.h"

#include <chrono>
#include <vector>

namespace scanner::reader {

/// Reads one picture step by step. What is read is masked for the steps that follow.
class FrameReader {
public:
    FrameReader(GreyPicture picture, TextTest isTag);

    /// Runs the steps in the order of what they give for their time; none starts after `budget` (0: no
    /// limit).
    void readAll(bool rescue, std::chrono::milliseconds budget);

    const std::vector<SeenCode>& codes() const { return m_codes; }

private:
    using Clock = std::chrono::steady_clock;

    void readPlain();
    void readFinderTriples();
    void readFinderPairs();
    void readBent();
    void readBars(BarEffort effort);
    void readDarkPatches(int level, int reach, bool negative);
    bool isTaken(Point p) const;
    void add(SeenCode code);
    bool isLate() const;

    PictureLevels m_picture;
    TextTest m_isTag;
    std::vector<SeenCode> m_codes;
    std::vector<Finder> m_finders;
    ContrastMap m_contrast;
    struct Unread {
        GridFit fit;
        bool negative;
    };
    std::vector<Unread> m_unread; ///< version 1 symbols that were found but not read flat
    std::vector<BarRegion> m_bars;
    Clock::time_point m_end = Clock::time_point::max();
};

} // namespace scanner::reader

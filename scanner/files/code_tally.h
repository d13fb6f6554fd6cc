#pragma once

#include "scanner/seen_code.h"

#include <vector>

namespace scanner {

/// Merges what the frames of one recording showed, by text: the first sight of each is kept, in the order of
/// coming. A guess is believed once a second frame gave the same text, however it was read there.
class CodeTally {
public:
    /// What one further frame showed. The same guess twice in one frame is still one frame's word.
    void add(const std::vector<SeenCode>& frame);

    std::vector<SeenCode> believed() const { return pick(true); }
    std::vector<SeenCode> doubtful() const { return pick(false); }

private:
    struct Entry {
        SeenCode code;
        int lastFrame;
        bool believed;
    };

    std::vector<SeenCode> pick(bool believed) const;

    std::vector<Entry> m_entries;
    int m_frames = 0;
};

} // namespace scanner

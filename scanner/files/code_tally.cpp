#include "scanner/files/code_tally.h"

#include <algorithm>

namespace scanner {

void CodeTally::add(const std::vector<SeenCode>& frame) {
    ++m_frames;
    for (const SeenCode& code : frame) {
        const bool certain = code.howRead != HowRead::Guessed;
        const auto known = std::find_if(m_entries.begin(), m_entries.end(),
                                        [&](const Entry& entry) { return entry.code.text == code.text; });
        if (known == m_entries.end()) {
            m_entries.push_back({code, m_frames, certain});
            continue;
        }
        if (certain && known->code.howRead == HowRead::Guessed) known->code = code;
        known->believed = known->believed || certain || known->lastFrame != m_frames;
        known->lastFrame = m_frames;
    }
}

std::vector<SeenCode> CodeTally::pick(bool believed) const {
    std::vector<SeenCode> picked;
    for (const Entry& entry : m_entries)
        if (entry.believed == believed) picked.push_back(entry.code);
    return picked;
}

} // namespace scanner

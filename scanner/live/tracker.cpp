#include "scanner/live/tracker.h"

#include <algorithm>

namespace scanner {

Tracker::Change Tracker::update(const std::vector<SeenCode>& frame, std::chrono::milliseconds at) {
    Change change;
    m_now = std::max(m_now, at);
    ++m_frame;
    dropGone(change);
    for (const SeenCode& code : frame)
        see(code, change);
    return change;
}

void Tracker::see(const SeenCode& code, Change& change) {
    auto entry = std::find_if(m_entries.begin(), m_entries.end(),
                              [&](const Entry& known) { return known.tracked.code.text == code.text; });
    if (entry == m_entries.end()) entry = m_entries.insert(entry, {{code, false}, m_now, m_frame});
    const bool secondFrame = entry->lastFrame != m_frame;
    entry->tracked.code = code;
    entry->last = m_now;
    entry->lastFrame = m_frame;
    if (entry->tracked.believed || (code.howRead == HowRead::Guessed && !secondFrame)) return;
    entry->tracked.believed = true;
    change.fresh.push_back(code);
}

void Tracker::dropGone(Change& change) {
    const auto isGone = [&](const Entry& entry) { return m_now - entry.last >= m_times.gone; };
    for (const Entry& entry : m_entries)
        if (isGone(entry) && entry.tracked.believed) change.gone.push_back(entry.tracked.code.text);
    std::erase_if(m_entries, isGone);
}

std::vector<TrackedCode> Tracker::outlines() const {
    std::vector<TrackedCode> codes;
    for (const Entry& entry : m_entries)
        if (m_now - entry.last <= m_times.outline) codes.push_back(entry.tracked);
    return codes;
}

} // namespace scanner

// The steps that look for linear symbols in regions of bars.

#include "scanner/reader/frame_reader.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

bool isAlike(const BarRegion& a, const BarRegion& b) {
    const double apart = std::hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y);
    const double turn = std::abs(a.along.x * b.along.y - a.along.y * b.along.x);
    return apart < 0.1 * a.height && turn < 0.02 && std::abs(std::log(a.length / b.length)) < 0.05;
}

} // namespace

const std::vector<BarRegion>& FrameReader::bars() {
    if (!m_bars) m_bars = findBarRegions(barCells());
    return *m_bars;
}

const BarCells& FrameReader::barCells() {
    if (!m_barCells) m_barCells = barCellsOf(m_picture.full());
    return *m_barCells;
}

void FrameReader::readBars(BarEffort effort) {
    readCode128In(bars(), effort);
}

void FrameReader::readCode128In(const std::vector<BarRegion>& regions, BarEffort effort) {
    tryInTurn(regions, [&](const BarRegion& region) {
        if (isTaken(region.centre)) return;
        if (auto code = readCode128(m_picture.full(), region, effort, m_isTag, m_budget))
            add(std::move(*code));
    });
}

/// Regions that the usual search has are not looked at again, nor such as no tag's bars have: a Code 128 of
/// ten characters is longer than high.
void FrameReader::readFaintBars() {
    std::vector<BarRegion> others = findBarRegions(barCells(), BarSearch::Parted);
    const auto faint = findBarRegions(barCellsOf(smoothed(m_picture.full())), BarSearch::Faint);
    others.insert(others.end(), faint.begin(), faint.end());
    std::erase_if(others, [&](const BarRegion& region) {
        return region.length < 1.5 * region.height ||
               std::any_of(bars().begin(), bars().end(),
                           [&](const BarRegion& known) { return isAlike(known, region); });
    });
    readCode128In(others, BarEffort::AllBands);
}

void FrameReader::readOtherBars() {
    tryInTurn(bars(), [&](const BarRegion& region) {
        if (isTaken(region.centre)) return;
        if (auto code = readOtherLinear(m_picture.full(), region, m_budget)) add(std::move(*code));
    });
}

} // namespace scanner::reader

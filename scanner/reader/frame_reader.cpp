#include "scanner/reader/frame_reader.h"

#include "scanner/reader/data_matrix_step.h"
#include "scanner/reader/finder_pairs.h"
#include "scanner/reader/finder_triples.h"
#include "scanner/reader/general_decoder.h"
#include "scanner/reader/grid_fit.h"
#include "scanner/reader/qr_step.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {

FrameReader::FrameReader(GreyPicture picture, TextTest isTag)
    : m_picture(std::move(picture))
    , m_isTag(std::move(isTag)) {}

void FrameReader::readAll(bool rescue, std::chrono::milliseconds budget) {
    if (budget.count() > 0) m_end = Clock::now() + budget;
    timed("plain", [&] { readPlain(); });
    timed("triples", [&] { readFinderTriples(); });
    timed("bars1", [&] { readBars(BarEffort::OneBand); });
    if (!rescue || isLate()) return;
    timed("pairs", [&] { readFinderPairs(); });
    timed("bent", [&] { readBent(); });
    timed("dm01", [&] { readDarkPatches(0, 1, false); });
    timed("dm11", [&] { readDarkPatches(1, 1, false); });
    timed("dm12", [&] { readDarkPatches(1, 2, false); });
    timed("dmn01", [&] { readDarkPatches(0, 1, true); });
    timed("dmn11", [&] { readDarkPatches(1, 1, true); });
    timed("dmn12", [&] { readDarkPatches(1, 2, true); });
    timed("bars2", [&] { readBars(BarEffort::AllBands); });
}

bool FrameReader::isLate() const {
    return Clock::now() >= m_end;
}

bool FrameReader::isTaken(Point p) const {
    return std::any_of(m_codes.begin(), m_codes.end(), [&](const SeenCode& code) {
        for (int i = 0; i < 4; ++i) {
            const Point a = code.corners[i], b = code.corners[(i + 1) % 4];
            if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) < 0) return false;
        }
        return true;
    });
}

void FrameReader::add(SeenCode code) {
    m_codes.push_back(std::move(code));
}

void FrameReader::readPlain() {
    for (SeenCode& code : decodeMatrixSymbols(m_picture.full().view(), Effort::Quick))
        add(std::move(code));
}

void FrameReader::readFinderTriples() {
    m_contrast = contrastOf(smoothed(m_picture.full()), 15);
    m_finders = findFinders(m_contrast);
    const auto triples = findTriples(m_finders);
    for (auto& f : m_finders)
        fprintf(stderr, " F %.1f %.1f m %.2f neg %d rays %d con %.0f\n", f.centre.x, f.centre.y, f.module,
                f.negative, f.rays, f.contrast);
    int tried = 0;
    for (const FinderTriple& triple : triples) {
        const Point a = m_finders[triple.corner].centre, b = m_finders[triple.right].centre,
                    c = m_finders[triple.below].centre;
        if (isTaken(a) || isTaken(b) || isTaken(c) || isTaken({(b.x + c.x) / 2, (b.y + c.y) / 2})) continue;
        if (++tried > 40) break;
        const bool negative = m_finders[triple.corner].negative;
        for (int version = 1; version <= 3; ++version) {
            const int size = 17 + 4 * version;
            if (std::abs(std::log(triple.distance / (size - 7))) > 0.3) continue;
            const auto guess = mappingOf(m_finders, triple, size);
            if (!guess) continue;
            const GridFit fit = fitGrid(m_picture, qrPattern(version), *guess, negative);
            fprintf(stderr, "  triple %d %d %d doubt %.2f dist %.1f v%d corr %.2f at %.0f,%.0f\n",
                    triple.corner, triple.right, triple.below, triple.doubt, triple.distance, version,
                    fit.correlation, a.x, a.y);
            if (version == 1 && fit.correlation > 0.5) m_unread.push_back({fit, negative});
            if (fit.correlation < 0.55) continue;
            if (auto code = readFittedQr(m_picture, fit, version, negative, m_isTag)) {
                add(std::move(*code));
                break;
            }
        }
    }
}

void FrameReader::readFinderPairs() {
    std::vector<Finder> free;
    for (const Finder& finder : m_finders)
        if (!isTaken(finder.centre)) free.push_back(finder);
    for (const PairGuess& guess : guessFromPairs(m_contrast, free, 60)) {
        if (isLate()) return;
        if (isTaken(free[guess.first].centre) || isTaken(free[guess.second].centre)) continue;
        if (isTaken(guess.toPicture.map(10.5, 10.5))) continue;
        const GridFit fit = fitGrid(m_picture, qrPattern(1), guess.toPicture, guess.negative);
        if (fit.correlation > 0.5) m_unread.push_back({fit, guess.negative});
        if (fit.correlation < 0.55) continue;
        if (auto code = readFittedQr(m_picture, fit, 1, guess.negative, m_isTag)) add(std::move(*code));
    }
}

void FrameReader::readBent() {
    for (const Unread& unread : m_unread) {
        if (isLate()) return;
        if (isTaken(unread.fit.toPicture.map(10.5, 10.5))) continue;
        if (auto code = readBentQrTag(m_picture, unread.fit, unread.negative, m_isTag)) add(std::move(*code));
    }
}

void FrameReader::readDarkPatches(int level, int reach, bool negative) {
    if (level >= static_cast<int>(m_picture.levels.size())) return;
    const ContrastMap map = contrastOf(m_picture.levels[level], 20 >> level);
    for (Quad patch : findDarkPatches(map, reach, negative)) {
        if (isLate()) return;
        Point middle;
        for (Point& p : patch) {
            p = {p.x * (1 << level), p.y * (1 << level)};
            middle = {middle.x + p.x / 4, middle.y + p.y / 4};
        }
        if (isTaken(middle)) continue;
        if (auto code = readDataMatrix(m_picture, patch, negative, m_isTag)) add(std::move(*code));
    }
}

void FrameReader::readBars(BarEffort effort) {
    if (effort == BarEffort::OneBand) m_bars = findBarRegions(m_picture.full());
    for (const BarRegion& region : m_bars) {
        fprintf(stderr, "BAR %.0f %.0f len %.0f h %.0f along %.2f %.2f up %.2f %.2f\n", region.centre.x,
                region.centre.y, region.length, region.height, region.along.x, region.along.y,
                region.upright.x, region.upright.y);
        if (isLate()) return;
        if (isTaken(region.centre)) continue;
        if (auto code = readCode128(m_picture.full(), region, effort, m_isTag)) add(std::move(*code));
    }
}

} // namespace scanner::reader

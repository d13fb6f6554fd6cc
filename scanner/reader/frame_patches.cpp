// The steps that look for symbols in dark patches and on light labels.

#include "scanner/reader/frame_reader.h"

#include "scanner/reader/data_matrix/matrix_places.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/label_symbol.h"
#include "scanner/reader/qr/qr_patch.h"

#include <algorithm>
#include <cmath>

namespace scanner::reader {
namespace {

/// Whether two patches are one, by their corners.
bool isAlike(const Quad& a, const Quad& b) {
    const double side = std::hypot(a[1].x - a[0].x, a[1].y - a[0].y);
    const Point one = middleOf(a), other = middleOf(b);
    if (std::abs(one.x - other.x) > 0.06 * side || std::abs(one.y - other.y) > 0.06 * side) return false;
    for (std::size_t turn = 0; turn < a.size(); ++turn) {
        double off = 0;
        for (std::size_t i = 0; i < a.size(); ++i)
            off = std::max(off, std::hypot(a[i].x - b[(i + turn) % 4].x, a[i].y - b[(i + turn) % 4].y));
        if (off < 0.06 * side) return true;
    }
    return false;
}

bool isAmong(const std::vector<Quad>& patches, const Quad& patch) {
    return std::any_of(patches.begin(), patches.end(),
                       [&](const Quad& other) { return isAlike(other, patch); });
}

} // namespace

/// Those that were found and not read flat until now.
void FrameReader::readBentMatrices() {
    for (const UnreadMatrix& unread : m_unreadMatrices) {
        const double middle = unread.modules / 2.0;
        if (!hasTime() || isTaken(unread.fit.toPicture.map(middle, middle))) continue;
        if (auto code = readBentDataMatrix(m_picture, unread, m_isTag, m_budget)) add(std::move(*code));
    }
    m_unreadMatrices.clear();
}

void FrameReader::readPatches(int level, int reach, bool negative) {
    std::vector<Quad>& tried = m_tried[negative];
    tryInTurn(patches(level, reach, negative), [&](const Quad& patch) {
        if (isTaken(middleOf(patch)) || isAmong(tried, patch)) return;
        readMatrixIn(patch, negative, PatchTrust::Any);
        tried.push_back(patch);
    });
    const bool late = reach > 1 || negative; // bending takes the time of many patches
    if (m_bendsAtOnce && late) readBentMatrices();
}

void FrameReader::readMatrixIn(const Quad& patch, bool negative, PatchTrust trust) {
    if (auto code = readDataMatrix(m_picture, patch, negative, m_isTag, m_budget, &m_unreadMatrices, trust))
        add(std::move(*code));
}

const ContrastMap& FrameReader::patchContrast(int level) {
    const auto [at, isNew] = m_patchContrasts.try_emplace(level);
    if (isNew) at->second = contrastOf(m_picture.levels[level], level > 1 ? 10 : 20 >> level);
    return at->second;
}

const std::vector<Quad>& FrameReader::patches(int level, int reach, bool negative) {
    const auto [at, isNew] = m_patches.try_emplace({level, reach, negative});
    if (!isNew || level >= static_cast<int>(m_picture.levels.size())) return at->second;
    constexpr double smallest = 14; // pixels; ten modules of which neighbours could not be told apart
    for (const Quad& found : findDarkPatches(patchContrast(level), reach, negative))
        if (const Quad patch = scaled(found, 1 << level); shortestSideOf(patch) >= smallest)
            at->second.push_back(patch);
    return at->second;
}

/// Of all lists, each place once, without those where something was read.
std::vector<Quad> FrameReader::freePlaces(std::initializer_list<const std::vector<Quad>*> lists) const {
    std::vector<Quad> all;
    for (const auto* some : lists)
        for (const Quad& patch : *some)
            if (!isTaken(middleOf(patch)) && !isAmong(all, patch)) all.push_back(patch);
    return all;
}

/// Those of all gaps.
std::vector<Quad> FrameReader::allDarkPatches() {
    return freePlaces({&patches(1, 1, false), &patches(0, 1, false), &patches(1, 2, false)});
}

/// Those of all gaps that half the size shows.
std::vector<Quad> FrameReader::halfSizeDarkPatches() {
    return freePlaces({&patches(1, 1, false), &patches(1, 2, false)});
}

void FrameReader::readOtherLabels() {
    readLabels(1, true);
    if (!m_isCut) readLabels(0, false);
}

/// `negative`: light print on dark labels.
void FrameReader::readLabels(int level, bool negative) {
    const bool again = level == 0; // most labels show at half size
    std::vector<Quad>& tried = m_triedOnLabels[negative];
    tryInTurn(patches(level, 1, !negative), [&](const Quad& label) {
        if (again && isAmong(patches(1, 1, !negative), label)) return;
        const auto place = symbolOnLabel(m_picture, label);
        if (!place || isTaken(middleOf(*place)) || isAmong(tried, *place)) return;
        tried.push_back(*place);
        for (int version = 1; version <= 2; ++version)
            if (readQrIn(*place, version, negative)) return;
        readMatrixIn(*place, negative, PatchTrust::OnLabel);
    });
    if (m_bendsAtOnce) readBentMatrices();
}

bool FrameReader::readQrIn(const Quad& patch, int version, bool negative) {
    for (const GridFit& fit : fitQrInPatch(m_picture, version, patch, negative))
        if (readFlat(fit, version, negative)) return true;
    return false;
}

void FrameReader::readQrInPatches() {
    tryInTurn(halfSizeDarkPatches(), [&](const Quad& patch) {
        if (!isTaken(middleOf(patch))) readQrIn(patch, 1, false);
    });
}

/// Apart from the step above: these patches gave one in twenty of its tags and took most of its time.
void FrameReader::readQrInFinePatches() {
    const auto half = halfSizeDarkPatches();
    tryInTurn(patches(0, 1, false), [&](const Quad& patch) {
        if (!isTaken(middleOf(patch)) && !isAmong(half, patch)) readQrIn(patch, 1, false);
    });
}

/// Whether what fills a good part of the region was read.
bool FrameReader::isReadIn(const Quad& region) const {
    constexpr double part = 0.15;
    return std::any_of(m_taken.begin(), m_taken.end(), [&](const Quad& area) {
        return contains(region, middleOf(area)) && areaOf(area) > part * areaOf(region);
    });
}

/// Places in labels and dark patches, likeliest first. One place may come from several regions, a little
/// different each time: the first that is read takes it.
std::vector<MatrixPlace> FrameReader::matrixPlaces() {
    std::vector<MatrixPlace> places;
    for (const Quad& region :
         freePlaces({&patches(1, 1, true), &patches(1, 1, false), &patches(0, 1, true)})) {
        if (!hasTime()) return {};
        if (isReadIn(region)) continue;
        for (const MatrixPlace& place : matrixPlacesIn(m_picture, region, false))
            if (!isTaken(middleOf(place.corners))) places.push_back(place);
    }
    std::stable_sort(places.begin(), places.end(),
                     [](const MatrixPlace& a, const MatrixPlace& b) { return a.share > b.share; });
    constexpr std::size_t most = 20;
    if (places.size() > most) places.resize(most);
    return places;
}

void FrameReader::readBySides() {
    tryInTurn(matrixPlaces(), [&](const MatrixPlace& place) {
        if (isTaken(middleOf(place.corners))) return;
        if (auto code = readDataMatrixAt(m_picture, place, false, m_isTag, m_budget, &m_unreadMatrices))
            add(std::move(*code));
    });
    if (m_bendsAtOnce) readBentMatrices();
}

void FrameReader::readThreeCorners() {
    tryInTurn(allDarkPatches(), [&](const Quad& patch) {
        if (!isTaken(middleOf(patch))) readMatrixIn(patch, false, PatchTrust::OneCornerLost);
    });
    if (m_bendsAtOnce) readBentMatrices();
}

} // namespace scanner::reader

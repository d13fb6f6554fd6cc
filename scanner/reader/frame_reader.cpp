#include "scanner/reader/frame_reader.h"

#include "scanner/reader/image/correlation.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/print_grade.h"
#include "scanner/reader/qr/finder_pairs.h"
#include "scanner/reader/qr/finder_triples.h"
#include "scanner/reader/qr/qr_pattern.h"
#include "scanner/reader/qr/qr_step.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace scanner::reader {
namespace {

constexpr double leastCorrelation = 0.55; // of a fit that is worth decoding
constexpr double poorCorrelation = 0.4;   // of one where a tag may lie, if all its modules agree
constexpr double bendable = 0.5;          // of a flat fit that bending may improve
/// Of a guess before it is fitted: of 484 triples that were read none had under 0.3, of 16,000 others nine of
/// ten have under 0.2.
constexpr double fittable = 0.2;
constexpr int mostTriples = 40;
constexpr std::size_t mostPairs = 60, mostSingles = 20;

/// A full HD frame keeps its size; a photograph's pixels tell less than they cost.
GreyPicture reduced(GreyPicture picture) {
    constexpr long most = 2'600'000;
    while (static_cast<long>(picture.width) * picture.height > most) {
        GreyPicture half = halved(picture);
        if (half.pixels.empty()) break;
        picture = std::move(half);
    }
    return picture;
}

} // namespace

FrameReader::FrameReader(GreyPicture picture, TagTest isTag)
    : m_reduction(picture.width)
    , m_picture(reduced(std::move(picture)))
    , m_isTag(std::move(isTag)) {
    m_reduction = std::max(1.0, std::round(m_reduction / std::max(1, m_picture.full().width)));
}

void FrameReader::run(ReadingStep step) {
    m_isCut = false;
    m_stoppedAt = 0;
    switch (step) {
    case ReadingStep::ThreeFinders:
        seekFinders();
        return readTriples(*m_contrast, *m_finders, 1);
    case ReadingStep::WholePicture:
        return readWholePicture(Effort::Quick);
    case ReadingStep::Code128:
        return readBars(BarEffort::TwoBands);
    case ReadingStep::DataMatrix:
        return readPatches(0, 1, false);
    case ReadingStep::DataMatrixWideGaps:
        return readPatches(1, 1, false);
    case ReadingStep::TwoFinders:
        seekFinders();
        return readGuesses(*m_contrast, *m_finders, 1, guessFromPairs, mostPairs);
    case ReadingStep::OneFinder:
        seekFinders();
        return readGuesses(*m_contrast, *m_finders, 1, guessFromSingles, mostSingles);
    case ReadingStep::BentLabels:
        return readAllBent();
    case ReadingStep::CloseUp:
        return readCloseUp();
    case ReadingStep::SymbolsOnLabels:
        return readLabels(1, false);
    case ReadingStep::SymbolsOnOtherLabels:
        return readOtherLabels();
    case ReadingStep::QrInPatches:
        return readQrInPatches();
    case ReadingStep::QrInFinePatches:
        return readQrInFinePatches();
    case ReadingStep::DataMatrixThreeCorners:
        return readThreeCorners();
    case ReadingStep::DataMatrixBySides:
        return readBySides();
    case ReadingStep::DataMatrixWidestGaps:
        return readPatches(1, 2, false);
    case ReadingStep::DataMatrixLightOnDark:
        readPatches(1, 1, true);
        if (!m_isCut) readPatches(0, 1, true);
        return;
    case ReadingStep::Code128AllBands:
        return readBars(BarEffort::AllBands);
    case ReadingStep::Code128Faint:
        return readFaintBars();
    case ReadingStep::WholePictureThorough:
        return readWholePicture(Effort::Thorough);
    case ReadingStep::OtherLinear:
        return readOtherBars();
    }
}

void FrameReader::tryAgain(const SeenCode& guess) {
    const Quad corners = scaled(guess.corners, 1 / m_reduction);
    const GridPattern& pattern = qrPattern(1);
    const auto toPicture = rectangleTo(corners, pattern.columns, pattern.rows);
    if (!toPicture) return;
    m_isCut = false;
    const Mending before = std::exchange(m_mending, Mending::ByAgreementToo);
    for (const bool negative : {false, true}) {
        if (isTaken(middleOf(corners)) || !hasTime()) break;
        if (guess.symbology == Symbology::Qr)
            readFlat(fitGrid(m_picture, pattern, *toPicture, negative), 1, negative);
        else if (guess.symbology == Symbology::DataMatrix)
            readMatrixIn(corners, negative, PatchTrust::OnLabel);
    }
    if (m_bendsAtOnce) readBentMatrices();
    m_mending = before;
}

void FrameReader::mask(const Quad& area) {
    m_taken.push_back(scaled(area, 1 / m_reduction));
}

std::vector<SeenCode> FrameReader::codes() const {
    std::vector<SeenCode> codes = m_codes;
    for (SeenCode& code : codes)
        code.corners = scaled(code.corners, m_reduction);
    return codes;
}

void FrameReader::gradePrints() {
    for (SeenCode& code : m_codes)
        code.printGrade = printGradeOf(m_picture, code);
}

/// Asked before each candidate of a step.
bool FrameReader::hasTime() {
    m_isCut = m_isCut || isLate();
    return !m_isCut;
}

bool FrameReader::isTaken(Point p) const {
    return std::any_of(m_taken.begin(), m_taken.end(), [&](const auto& area) { return contains(area, p); });
}

void FrameReader::add(SeenCode code) {
    if (isTaken(middleOf(code.corners))) return; // another step's reading of the same place
    m_taken.push_back(code.corners);
    m_codes.push_back(std::move(code));
}

void FrameReader::seekFinders() {
    if (m_finders) return;
    m_contrast = contrastOf(smoothed(m_picture.full()), 15);
    m_finders = findFinders(*m_contrast, finderLimits(1));
}

/// In a picture that is `reduction` times smaller.
FinderLimits FrameReader::finderLimits(double reduction) const {
    FinderLimits limits{m_budget, m_mostPlaces};
    for (const Quad& area : m_taken)
        limits.leftOut.push_back(scaled(area, 1 / reduction));
    return limits;
}

void FrameReader::readWholePicture(Effort effort) {
    for (SeenCode& code : decodeMatrixSymbols(m_picture.full().view(), effort)) {
        const bool tag = code.symbology == Symbology::Qr && m_isTag && m_isTag(code.text);
        if (!tag || !isContradicted(m_picture, code, false)) add(std::move(code));
    }
}

/// `scale`: full pixels to one of the picture in which the finders were sought.
void FrameReader::readTriples(const ContrastMap& map, const std::vector<Finder>& finders, double scale) {
    int tried = 0;
    for (const FinderTriple& triple : findTriples(finders)) {
        if (!hasTime()) return;
        const auto centre = [&](int finder) {
            return Point{finders[finder].centre.x * scale, finders[finder].centre.y * scale};
        };
        const Point a = centre(triple.corner), b = centre(triple.right), c = centre(triple.below);
        if (isTaken(a) || isTaken(b) || isTaken(c) || isTaken({(b.x + c.x) / 2, (b.y + c.y) / 2})) continue;
        if (++tried > mostTriples) return; // gravel has thousands
        const bool negative = finders[triple.corner].negative;
        for (int version = 1; version <= 6; ++version) {
            const int size = qrModules(version);
            if (std::abs(std::log(triple.distance / (size - 7))) > (version < 4 ? 0.3 : 0.12)) continue;
            auto guess = mappingOf(finders, triple, size);
            if (!guess || correlationOnMap(map, qrPattern(version), *guess, negative) < fittable) continue;
            const GridFit fit = fitGrid(m_picture, qrPattern(version), scaling(scale) * *guess, negative);
            if (readFlat(fit, version, negative)) break;
        }
    }
}

/// A fit that cannot be read is kept for the step that bends it, or bent now.
bool FrameReader::readFlat(const GridFit& fit, int version, bool negative) {
    std::optional<SeenCode> code;
    if (fit.correlation >= leastCorrelation)
        code = readFittedQr(m_picture, fit, version, negative, m_isTag, m_mending);
    else if (version == 1 && fit.correlation >= poorCorrelation && m_mending == Mending::ByAgreementToo)
        code = readPoorlyFittedTag(m_picture, fit, negative, m_isTag);
    if (code) {
        add(std::move(*code));
        return true;
    }
    if (version > 1 || fit.correlation <= bendable) return false;
    if (m_bendsAtOnce) return readBent({fit, negative});
    m_unread.push_back({fit, negative});
    return false;
}

bool FrameReader::readBent(const Unread& unread) {
    auto code = readBentQrTag(m_picture, unread.fit, unread.negative, m_isTag, m_mending);
    if (code) add(std::move(*code));
    return code.has_value();
}

/// `scale`: full pixels to one of the map in which the finders were sought.
void FrameReader::readGuesses(const ContrastMap& map, const std::vector<Finder>& finders, double scale,
                              GuessMaker from, std::size_t most) {
    const auto full = [&](Point p) { return Point{p.x * scale, p.y * scale}; };
    std::vector<Finder> free;
    for (const Finder& finder : finders)
        if (!isTaken(full(finder.centre))) free.push_back(finder);
    const std::vector<PairGuess> guesses = from(map, free, most, m_budget);
    if (!hasTime()) return; // it may have run out among the finders
    for (const PairGuess& guess : guesses) {
        if (!hasTime()) return;
        if (isTaken(full(free[guess.first].centre)) || isTaken(full(free[guess.second].centre))) continue;
        const Homography toPicture = scaling(scale) * guess.toPicture;
        if (isTaken(toPicture.map(10.5, 10.5))) continue;
        readFlat(fitGrid(m_picture, qrPattern(1), toPicture, guess.negative), 1, guess.negative);
    }
}

void FrameReader::readAllBent() {
    for (const Unread& unread : m_unread)
        if (hasTime() && !isTaken(unread.fit.toPicture.map(10.5, 10.5))) readBent(unread);
    readBentMatrices();
    m_bendsAtOnce = true; // what the steps after this one find
}

/// Modules that the other steps' windows are too small for: the same at half and quarter size.
void FrameReader::readCloseUp() {
    constexpr double large = 2.5; // pixels of the smaller picture; below it the full size has found it
    for (int level = 1; level < std::min(3, static_cast<int>(m_picture.levels.size())); ++level) {
        if (m_isCut) return;
        const ContrastMap map = contrastOf(smoothed(m_picture.levels[level]), 15);
        auto found = findFinders(map, finderLimits(1 << level));
        std::erase_if(found, [](const Finder& finder) { return finder.module < large; });
        readTriples(map, found, 1 << level);
        if (!m_isCut) readGuesses(map, found, 1 << level, guessFromPairs, mostPairs);
    }
    if (!m_isCut) readPatches(2, 2, false);
}

} // namespace scanner::reader

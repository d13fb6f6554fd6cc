#pragma once

#include "scanner/reader/data_matrix/data_matrix_step.h"
#include "scanner/reader/data_matrix/matrix_places.h"
#include "scanner/reader/general_decoder.h"
#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/image/time_budget.h"
#include "scanner/reader/linear/bar_regions.h"
#include "scanner/reader/linear/linear_step.h"
#include "scanner/reader/qr/finder_pairs.h"
#include "scanner/reader/qr/finder_search.h"
#include "scanner/reader/qr/qr_tag_decoder.h"
#include "scanner/reader/reading_step.h"
#include "scanner/reader/text_proof.h"
#include "scanner/seen_code.h"

#include <cmath>
#include <cstddef>
#include <initializer_list>
#include <map>
#include <optional>
#include <tuple>
#include <vector>

namespace scanner::reader {

/// One picture being read step by step. What is read is masked for the steps that follow, and what several
/// steps need (finders, regions of bars) is sought once. Pictures of any size; large ones are read at half or
/// quarter size.
class FrameReader {
public:
    FrameReader(GreyPicture picture, TagTest isTag);

    /// When it is spent, steps end with what they have.
    void setBudget(const TimeBudget& budget) { m_budget = budget; }
    bool isLate() const { return m_budget.isSpent(); }
    bool isLateAfter(TimeBudget::Duration work) const { return m_budget.isSpentAfter(work); }
    /// For a frame of a stream, which may have no time left later: the step for bent labels is not a step of
    /// its own but follows each fit that was not read, and of the places where finders may be only the
    /// likeliest are looked at.
    void hurry() {
        m_bendsAtOnce = true;
        m_mostPlaces = 400;
    }
    /// Whether QR tags are also read by agreement in the steps that follow, which takes time and only gives
    /// guesses.
    void mendTags(Mending mending) { m_mending = mending; }
    /// Nothing is sought in this quadrilateral (pixels of the picture, clockwise).
    void mask(const Quad& area);
    void run(ReadingStep step);
    /// Looks at the place of a guess from another picture, whose corners are where it lies in this one: a QR
    /// tag or Data Matrix that shows itself there, whatever it says, is among the codes; bent ones after
    /// hurry().
    void tryAgain(const SeenCode& guess);
    /// Whether the time was spent before the last step came to its end.
    bool wasCutOff() const { return m_isCut; }
    /// Where a step that was cut off among its patches or regions stopped, in parts of all of them; the same
    /// step of the next frame may begin there and come to those before it last.
    double stoppedAt() const { return m_stoppedAt; }
    void beginAt(double part) { m_beginAt = part; }

    /// Corners are in pixels of the picture that was given.
    std::vector<SeenCode> codes() const;
    /// Grades the print of what was read.
    void gradePrints();
    /// The picture at the sizes the steps use, and by how much it is smaller than the one given.
    const PictureLevels& picture() const { return m_picture; }
    double reduction() const { return m_reduction; }

private:
    struct Unread {
        GridFit fit;
        bool negative;
    };

    void readWholePicture(Effort effort);
    void readTriples(const ContrastMap& map, const std::vector<Finder>& finders, double scale);
    using GuessMaker = decltype(&guessFromPairs);
    void readGuesses(const ContrastMap& map, const std::vector<Finder>& finders, double scale,
                     GuessMaker from, std::size_t most);
    bool readFlat(const GridFit& fit, int version, bool negative);
    bool readBent(const Unread& unread);
    void readAllBent();
    void readBentMatrices();
    void readPatches(int level, int reach, bool negative);
    void readMatrixIn(const Quad& patch, bool negative, PatchTrust trust);
    void readOtherLabels();
    void readLabels(int level, bool negative);
    bool readQrIn(const Quad& patch, int version, bool negative);
    void readQrInPatches();
    void readQrInFinePatches();
    void readThreeCorners();
    void readBySides();
    std::vector<MatrixPlace> matrixPlaces();
    bool isReadIn(const Quad& region) const;
    const ContrastMap& patchContrast(int level);
    const std::vector<Quad>& patches(int level, int reach, bool negative);
    std::vector<Quad> freePlaces(std::initializer_list<const std::vector<Quad>*> lists) const;
    std::vector<Quad> allDarkPatches();
    std::vector<Quad> halfSizeDarkPatches();
    void readBars(BarEffort effort);
    void readCode128In(const std::vector<BarRegion>& regions, BarEffort effort);
    void readFaintBars();
    void readOtherBars();
    void readCloseUp();
    FinderLimits finderLimits(double reduction) const;
    void seekFinders(); ///< fills m_contrast and m_finders
    const std::vector<BarRegion>& bars();
    const BarCells& barCells();
    bool hasTime();
    template <class Candidates, class Try>
    void tryInTurn(const Candidates& candidates, const Try& attempt);
    bool isTaken(Point p) const;
    void add(SeenCode code);

    double m_reduction = 1;
    PictureLevels m_picture;
    TagTest m_isTag;
    TimeBudget m_budget;
    std::vector<SeenCode> m_codes;
    std::vector<Quad> m_taken;
    std::optional<ContrastMap> m_contrast;
    std::optional<std::vector<Finder>> m_finders;
    std::optional<BarCells> m_barCells;
    std::optional<std::vector<BarRegion>> m_bars;
    std::map<int, ContrastMap> m_patchContrasts; ///< by level
    std::map<std::tuple<int, int, bool>, std::vector<Quad>> m_patches;
    /// Places that were looked at, dark print and light: patches as any, and symbols on labels.
    std::map<bool, std::vector<Quad>> m_tried, m_triedOnLabels;
    bool m_isCut = false; ///< the step that runs
    bool m_bendsAtOnce = false;
    Mending m_mending = Mending::ByAgreementToo;
    std::size_t m_mostPlaces = 1000; ///< where finders may be; gravel gives many more
    double m_beginAt = 0, m_stoppedAt = 0;
    std::vector<Unread> m_unread; ///< version 1 symbols that were found but not read flat
    std::vector<UnreadMatrix> m_unreadMatrices;
};

/// All candidates from the place on where the last frame stopped, those before it at the end.
template <class Candidates, class Try>
void FrameReader::tryInTurn(const Candidates& candidates, const Try& attempt) {
    const std::size_t count = candidates.size();
    const auto first = static_cast<std::size_t>(m_beginAt * static_cast<double>(count));
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t at = (first + i) % count;
        if (!hasTime()) {
            // The time may have run out within the candidate before this one.
            m_stoppedAt = static_cast<double>(i > 1 ? at + count - 1 : at) / static_cast<double>(count);
            m_stoppedAt -= std::floor(m_stoppedAt);
            return;
        }
        attempt(candidates[at]);
    }
}

} // namespace scanner::reader

#include "scanner/reader/live_reader.h"

#include "scanner/reader/added_frames.h"
#include "scanner/reader/frame_reader.h"
#include "scanner/reader/image/quad.h"
#include "scanner/reader/patch_memory.h"

#include <algorithm>
#include <array>
#include <map>

namespace scanner {
namespace {

using reader::FrameReader;
using reader::ReadingStep;

/// In the order of what they read in drawn streams for their time (docs/reader.md). The first ones come again
/// before the last ones come once: another frame may show what this one does not. After the last comes the
/// first again.
constexpr std::array stepOrder{ReadingStep::ThreeFinders,
                               ReadingStep::DataMatrixWideGaps,
                               ReadingStep::Code128,
                               ReadingStep::TwoFinders,
                               ReadingStep::QrInPatches,
                               ReadingStep::DataMatrixWidestGaps,
                               ReadingStep::SymbolsOnLabels,
                               ReadingStep::WholePicture,
                               ReadingStep::Code128Faint,
                               ReadingStep::ThreeFinders,
                               ReadingStep::TwoFinders,
                               ReadingStep::OneFinder,
                               ReadingStep::DataMatrix,
                               ReadingStep::Code128AllBands,
                               ReadingStep::CloseUp,
                               ReadingStep::DataMatrixThreeCorners,
                               ReadingStep::DataMatrixLightOnDark,
                               ReadingStep::SymbolsOnOtherLabels,
                               ReadingStep::QrInFinePatches,
                               ReadingStep::Code128,
                               ReadingStep::DataMatrixWideGaps,
                               ReadingStep::SymbolsOnLabels,
                               ReadingStep::DataMatrixWidestGaps,
                               ReadingStep::WholePicture,
                               ReadingStep::QrInPatches,
                               ReadingStep::DataMatrixBySides,
                               ReadingStep::WholePictureThorough,
                               ReadingStep::OtherLinear};

/// Where the first steps come again.
constexpr std::size_t firstTurn = 9;
static_assert(stepOrder[firstTurn] == stepOrder[0]);

/// What a step does between two looks at the clock, where that takes long: in a 720p frame.
constexpr std::chrono::milliseconds wholeWorkOf(ReadingStep step) {
    switch (step) {
    case ReadingStep::DataMatrixWideGaps:
    case ReadingStep::DataMatrixWidestGaps:
    case ReadingStep::SymbolsOnLabels:
    case ReadingStep::SymbolsOnOtherLabels:
        return std::chrono::milliseconds(2);
    case ReadingStep::Code128:
    case ReadingStep::Code128AllBands:
    case ReadingStep::DataMatrixBySides:
        return std::chrono::milliseconds(4);
    case ReadingStep::DataMatrix:
    case ReadingStep::WholePicture:
        return std::chrono::milliseconds(5);
    case ReadingStep::CloseUp:
    case ReadingStep::DataMatrixLightOnDark:
    case ReadingStep::QrInFinePatches:
    case ReadingStep::DataMatrixThreeCorners:
        return std::chrono::milliseconds(6);
    case ReadingStep::Code128Faint:
        return std::chrono::milliseconds(9);
    case ReadingStep::WholePictureThorough:
        return std::chrono::milliseconds(12);
    default:
        return std::chrono::milliseconds(1);
    }
}

constexpr int readAgainAfter = 15; // frames: following only shifts the outline, reading sets it right
constexpr int forgottenAfter = 3;  // frames in which it was not found
constexpr int triedAgainFor = 4;   // frames: a guess, in its place
constexpr int mostTriedAgain = 3;  // guesses a frame

/// A code that was read in an earlier frame.
struct Known {
    SeenCode code;
    reader::PatchMemory look;
    int age = 0;         ///< frames since it was read
    int missed = 0;      ///< frames since it was found
    bool isSure = false; ///< no guess, or one that another frame told, too

    bool isGuess() const { return code.howRead == HowRead::Guessed; }
    bool isDue() const { return age >= readAgainAfter; } ///< to be read again
};

} // namespace

struct LiveReader::State {
    TagTest isTag;
    std::chrono::milliseconds budget;
    Clock clock;
    std::vector<Known> known;
    std::size_t next = 0;                    ///< step, in the order
    std::map<ReadingStep, double> stopped{}; ///< where a step's last turn was cut off

    reader::AddedFrames added{};

    GreyPicture pictureFor(GreyView view, bool& isAdded);
    std::vector<SeenCode> follow(FrameReader& frame, bool triesAgain);
    void readOn(FrameReader& frame);
    void remember(const FrameReader& frame, const std::vector<SeenCode>& fresh);
};

LiveReader::LiveReader(TagTest isTag, std::chrono::milliseconds budget, Clock clock)
    : m_state(std::make_unique<State>(State{std::move(isTag), budget, clock, {}, 0, {}, {}})) {}

LiveReader::~LiveReader() = default;
LiveReader::LiveReader(LiveReader&&) noexcept = default;
LiveReader& LiveReader::operator=(LiveReader&&) noexcept = default;

/// The frame itself, or, in the dark, the mean of the last ones.
GreyPicture LiveReader::State::pictureFor(GreyView view, bool& isAdded) {
    GreyPicture picture = copyOf(view);
    constexpr long most = 2'600'000; // pixels; a webcam's frame
    isAdded = static_cast<long>(picture.width) * picture.height <= most && reader::isNoisy(picture);
    if (!isAdded) {
        added.clear();
        return picture;
    }
    added.add(picture);
    return added.picture();
}

/// Finds the known codes in the frame and masks them; those that are due are left for reading. A guess is
/// tried again at once: the step that read it may not come again soon. Not among added frames, which share
/// most of what they show.
std::vector<SeenCode> LiveReader::State::follow(FrameReader& frame, bool triesAgain) {
    std::vector<SeenCode> still;
    int left = triesAgain ? mostTriedAgain : 0;
    for (Known& k : known) {
        ++k.age;
        ++k.missed;
        const auto now = k.look.seek(frame.picture(), reader::scaled(k.code.corners, 1 / frame.reduction()));
        if (!now) continue;
        k.code.corners = reader::scaled(*now, frame.reduction());
        k.missed = 0;
        if (k.isSure && !k.isDue()) {
            frame.mask(k.code.corners);
            still.push_back(k.code);
        } else if (k.isGuess() && (k.isDue() || k.age <= triedAgainFor) && left-- > 0)
            frame.tryAgain(k.code);
    }
    std::erase_if(known,
                  [](const Known& k) { return k.missed >= forgottenAfter || k.age > 2 * readAgainAfter; });
    return still;
}

/// A step that was cut off gets the next frame and goes on where it stopped; one that had a frame to itself
/// has had its turn.
void LiveReader::State::readOn(FrameReader& frame) {
    for (std::size_t count = 0; count < stepOrder.size() && !frame.isLate(); ++count) {
        const ReadingStep step = stepOrder[next];
        if (count > 0 && frame.isLateAfter(wholeWorkOf(step))) return;
        frame.beginAt(stopped[step]);
        // A guess must be seen twice: the first steps' first turn is for what is read at once.
        frame.mendTags(next < firstTurn ? reader::Mending::ByCode : reader::Mending::ByAgreementToo);
        frame.run(step);
        stopped[step] = frame.stoppedAt();
        if (frame.wasCutOff() && count > 0) return;
        next = (next + 1) % stepOrder.size();
    }
}

/// A guess of another text does not drive out what was read without one: that is forgotten when it is found
/// no more.
void LiveReader::State::remember(const FrameReader& frame, const std::vector<SeenCode>& fresh) {
    for (const SeenCode& code : fresh) {
        const Point middle = reader::middleOf(code.corners);
        const bool isGuess = code.howRead == HowRead::Guessed;
        const auto isSame = [&](const Known& k) { return k.code.text == code.text; };
        const auto isThere = [&](const Known& k) { return reader::contains(k.code.corners, middle); };
        const auto forbids = [&](const Known& k) {
            return isGuess && !k.isGuess() && !isSame(k) && isThere(k);
        };
        if (std::any_of(known.begin(), known.end(), forbids)) continue;
        const auto isFromBefore = [&](const Known& k) { return k.age > 0 && isSame(k); };
        const bool isSure = !isGuess || std::any_of(known.begin(), known.end(), isFromBefore);
        std::erase_if(known, [&](const Known& k) { return isSame(k) || isThere(k); });
        const Quad corners = reader::scaled(code.corners, 1 / frame.reduction());
        known.push_back({code, reader::PatchMemory(frame.picture(), corners, code.symbology), 0, 0, isSure});
    }
}

std::vector<SeenCode> LiveReader::read(GreyView view) {
    if (view.isEmpty()) return {};
    // A tenth is kept: the pieces of work between two looks at the clock take up to some milliseconds.
    const auto steps = std::chrono::duration_cast<reader::TimeBudget::Duration>(m_state->budget) * 9 / 10;
    const auto budget = m_state->clock == Clock::Wall ? reader::TimeBudget::ofWall(steps)
                                                      : reader::TimeBudget::ofThread(steps);
    bool isAdded = false;
    FrameReader frame(m_state->pictureFor(view, isAdded), m_state->isTag);
    frame.setBudget(budget);
    frame.hurry();
    std::vector<SeenCode> codes = m_state->follow(frame, !isAdded);
    m_state->readOn(frame);
    frame.gradePrints();
    const std::vector<SeenCode> fresh = frame.codes();
    m_state->remember(frame, fresh);
    codes.insert(codes.end(), fresh.begin(), fresh.end());
    if (isAdded)
        for (SeenCode& code : codes)
            code.corners =
                reader::moved(code.corners, m_state->added.shiftAt(reader::middleOf(code.corners)));
    return codes;
}

} // namespace scanner

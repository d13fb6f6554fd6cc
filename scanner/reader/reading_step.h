#pragma once

#include <array>
#include <cstdint>

namespace scanner::reader {

/// What the reader can do with a picture, in the order of what it gives for its time.
enum class ReadingStep : std::uint8_t {
    Triples,         ///< three finders, grid fit, tag decoder
    Plain,           ///< the general decoder on the whole picture
    Bars,            ///< Code 128, two bands a region
    Patches,         ///< Data Matrix in dark patches, gaps of 2 pixels
    WidePatches,     ///< the same with gaps of 4 pixels
    Pairs,           ///< two finders, the third is sought
    Bent,            ///< labels round a cylinder
    CloseUp,         ///< finders and patches of large modules
    WidestPatches,   ///< patches with gaps of 8 pixels
    NegativePatches, ///< Data Matrix light on dark
    AllBars,         ///< more bands, one character guessed
    PlainThorough,   ///< the general decoder, trying harder
    ForeignBars,     ///< the general decoder on straightened rows of bars: EAN and others
};

/// The fast pass, then the rescue pass; the first is a prefix of the whole.
inline constexpr std::array fastSteps{ReadingStep::Triples, ReadingStep::Plain, ReadingStep::Bars};
inline constexpr std::array rescueSteps{ReadingStep::Patches,         ReadingStep::WidePatches,
                                        ReadingStep::Pairs,           ReadingStep::Bent,
                                        ReadingStep::CloseUp,         ReadingStep::WidestPatches,
                                        ReadingStep::NegativePatches, ReadingStep::AllBars,
                                        ReadingStep::PlainThorough,   ReadingStep::ForeignBars};

const char* nameOf(ReadingStep step);

} // namespace scanner::reader

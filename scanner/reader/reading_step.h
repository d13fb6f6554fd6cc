#pragma once

#include <array>
#include <cstdint>

namespace scanner::reader {

/// What the reader can do with a picture, in the order of what it gives for its time.
enum class ReadingStep : std::uint8_t {
    ThreeFinders,           ///< three finders, grid fit, tag decoder
    WholePicture,           ///< the general decoder on the whole picture
    Code128,                ///< Code 128, two bands a region
    DataMatrix,             ///< Data Matrix in dark patches, gaps of 2 pixels
    DataMatrixWideGaps,     ///< the same with gaps of 4 pixels
    TwoFinders,             ///< two finders, the third is sought
    OneFinder,              ///< one finder, both others are sought
    BentLabels,             ///< labels round a cylinder
    CloseUp,                ///< finders and patches of large modules
    SymbolsOnLabels,        ///< QR tags and Data Matrix by the outline of their label
    SymbolsOnOtherLabels,   ///< the same of light print, and on labels that show at full size only
    QrInPatches,            ///< QR tags in dark patches, whatever their finders look like
    QrInFinePatches,        ///< the same in patches that show at full size only
    DataMatrixThreeCorners, ///< Data Matrix in dark patches of which one corner is elsewhere
    DataMatrixBySides,      ///< Data Matrix by two solid sides on labels and in dark patches
    DataMatrixWidestGaps,   ///< patches with gaps of 8 pixels
    DataMatrixLightOnDark,  ///< Data Matrix light on dark
    Code128AllBands,        ///< more bands, one character guessed
    Code128Faint,           ///< Code 128 in regions of faint bars, and of such that run into others
    WholePictureThorough,   ///< the general decoder, trying harder
    OtherLinear,            ///< the general decoder on straightened rows of bars: EAN and others
};

/// The fast pass, then the rescue pass; the first is a prefix of the whole.
inline constexpr std::array fastSteps{ReadingStep::ThreeFinders, ReadingStep::WholePicture,
                                      ReadingStep::Code128, ReadingStep::DataMatrixWideGaps};
inline constexpr std::array rescueSteps{ReadingStep::DataMatrix,
                                        ReadingStep::TwoFinders,
                                        ReadingStep::OneFinder,
                                        ReadingStep::BentLabels,
                                        ReadingStep::CloseUp,
                                        ReadingStep::DataMatrixWidestGaps,
                                        ReadingStep::DataMatrixLightOnDark,
                                        ReadingStep::SymbolsOnLabels,
                                        ReadingStep::SymbolsOnOtherLabels,
                                        ReadingStep::QrInPatches,
                                        ReadingStep::QrInFinePatches,
                                        ReadingStep::DataMatrixThreeCorners,
                                        ReadingStep::DataMatrixBySides,
                                        ReadingStep::Code128AllBands,
                                        ReadingStep::Code128Faint,
                                        ReadingStep::WholePictureThorough,
                                        ReadingStep::OtherLinear};

const char* nameOf(ReadingStep step);

} // namespace scanner::reader

#include "scanner/reader/reading_step.h"

namespace scanner::reader {

const char* nameOf(ReadingStep step) {
    switch (step) {
    case ReadingStep::ThreeFinders:
        return "three finders, grid fit";
    case ReadingStep::WholePicture:
        return "general decoder, whole picture";
    case ReadingStep::Code128:
        return "Code 128, two bands";
    case ReadingStep::DataMatrix:
        return "Data Matrix, gaps of 2 pixels";
    case ReadingStep::DataMatrixWideGaps:
        return "Data Matrix, gaps of 4 pixels";
    case ReadingStep::TwoFinders:
        return "two finders, third sought";
    case ReadingStep::OneFinder:
        return "one finder, the others sought";
    case ReadingStep::BentLabels:
        return "bent labels";
    case ReadingStep::CloseUp:
        return "close-ups";
    case ReadingStep::SymbolsOnLabels:
        return "symbols on labels";
    case ReadingStep::SymbolsOnOtherLabels:
        return "symbols on labels, light or fine";
    case ReadingStep::QrInPatches:
        return "QR in dark patches";
    case ReadingStep::QrInFinePatches:
        return "QR in dark patches, full size";
    case ReadingStep::DataMatrixThreeCorners:
        return "Data Matrix, one corner lost";
    case ReadingStep::DataMatrixBySides:
        return "Data Matrix by its solid sides";
    case ReadingStep::DataMatrixWidestGaps:
        return "Data Matrix, gaps of 8 pixels";
    case ReadingStep::DataMatrixLightOnDark:
        return "Data Matrix, light on dark";
    case ReadingStep::Code128AllBands:
        return "Code 128, all bands";
    case ReadingStep::Code128Faint:
        return "Code 128, faint or beside stripes";
    case ReadingStep::WholePictureThorough:
        return "general decoder, trying harder";
    case ReadingStep::OtherLinear:
        break;
    }
    return "other linear symbols";
}

} // namespace scanner::reader

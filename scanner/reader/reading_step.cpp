#include "scanner/reader/reading_step.h"

namespace scanner::reader {

const char* nameOf(ReadingStep step) {
    switch (step) {
    case ReadingStep::Triples:
        return "three finders, grid fit";
    case ReadingStep::Plain:
        return "general decoder, whole picture";
    case ReadingStep::Bars:
        return "Code 128, two bands";
    case ReadingStep::Patches:
        return "Data Matrix, gaps of 2 pixels";
    case ReadingStep::WidePatches:
        return "Data Matrix, gaps of 4 pixels";
    case ReadingStep::Pairs:
        return "two finders, third sought";
    case ReadingStep::Bent:
        return "bent labels";
    case ReadingStep::CloseUp:
        return "close-ups";
    case ReadingStep::WidestPatches:
        return "Data Matrix, gaps of 8 pixels";
    case ReadingStep::NegativePatches:
        return "Data Matrix, light on dark";
    case ReadingStep::AllBars:
        return "Code 128, all bands";
    case ReadingStep::PlainThorough:
        return "general decoder, trying harder";
    case ReadingStep::ForeignBars:
        break;
    }
    return "other linear symbols";
}

} // namespace scanner::reader

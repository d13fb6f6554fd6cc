#pragma once

#include "scanner/reader/image/grid_sampling.h"
#include "scanner/reader/print_grade.h"
#include "scanner/reader/text_proof.h"

#include <optional>
#include <string>

namespace scanner::reader {

/// A tag read from a version 1-H symbol (ISO/IEC 18004) that holds ten alphanumeric characters.
struct TagReading {
    std::string text;
    int erased = 0; ///< codewords given up before mending
    int errors = 0; ///< codewords mended beside those
    /// More was wrong than the code mends: it is the tag that agrees best with all modules.
    bool byAgreement = false;
    /// So much that a part of another label may be in the symbol: whoever takes it asks its modules
    /// (contradictsTag).
    bool isMuchMended = false;

    /// Of the 17 check codewords fewer than this many were left to prove the reading.
    bool needsGuesswork() const { return byAgreement || erased + 2 * errors > 15 || erased > 8; }
};

/// How far a tag may be mended: by its Reed-Solomon code, and where that fails by agreement too.
enum class Mending { ByCode, ByAgreementToo };

/// Tries thresholds and numbers of erased codewords until the Reed–Solomon code, the bits that every tag
/// shares and `isTag` agree, with the mask that the format information makes likeliest: of joined labels it
/// may be the other's. Tags only: other texts and other levels are left to the general decoder.
std::optional<TagReading> decodeQrTag(const GridSamples& samples, const TagTest& isTag,
                                      Mending mending = Mending::ByAgreementToo);

/// Where more may be wrong than the Reed-Solomon code mends (decodeQrTag tries it last): the word that agrees
/// best with all modules, if it is a tag, little speaks against it, and clearly more against every other
/// word. Always much mended.
std::optional<TagReading> decodeByAgreement(const GridSamples& samples, const TagTest& isTag);

/// Whether the modules of a version 1-H symbol say that it does not hold this tag alone, though it was mended
/// out of them: by most thresholds they object as those of joined labels do, or are of another symbol.
bool contradictsTag(const GridSamples& samples, const std::string& text);

/// A tag's symbol as it was printed, with the mask that these samples show; nullopt when the text is no ten
/// alphanumeric characters or the samples are of another size.
std::optional<PrintedSymbol> printedTag(const GridSamples& samples, const std::string& text);

} // namespace scanner::reader

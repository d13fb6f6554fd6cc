#pragma once

#include "scanner/reader/image/grid_fit.h"
#include "scanner/reader/image/picture_levels.h"
#include "scanner/reader/qr/finder_search.h"
#include "scanner/reader/qr/qr_tag_decoder.h"
#include "scanner/seen_code.h"

#include <optional>

namespace scanner::reader {

/// Reads the QR symbol that lies as the fit says: the tag decoder first, then the general one on a clean
/// drawing of it.
std::optional<SeenCode> readFittedQr(const PictureLevels& picture, const GridFit& fit, int version,
                                     bool negative, const TagTest& isTag,
                                     Mending mending = Mending::ByAgreementToo);

/// The same for a tag on a bent label, from a flat fit that found it but could not read it.
std::optional<SeenCode> readBentQrTag(const PictureLevels& picture, const GridFit& flat, bool negative,
                                      const TagTest& isTag, Mending mending = Mending::ByAgreementToo);

/// A tag where so few known modules show themselves that hardly any fit is right: by the agreement of all its
/// modules alone, which tells such fits from those that lie on a tag.
std::optional<SeenCode> readPoorlyFittedTag(const PictureLevels& picture, const GridFit& fit, bool negative,
                                            const TagTest& isTag);

/// Whether the version 1 symbol that was mended to this tag, by whichever decoder, says something else, too,
/// where it lies best, flat or bent; no where it lies nowhere well as a symbol of that version. `negative`:
/// light on dark.
bool isContradicted(const PictureLevels& picture, const SeenCode& code, bool negative);

} // namespace scanner::reader

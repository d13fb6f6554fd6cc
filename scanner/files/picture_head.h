#pragma once

#include <cstddef>
#include <cstdint>
#include <span>

namespace scanner {

// What is looked at before a picture is decoded, so that a small file cannot ask for all of the memory or all
// day. Only bytes are read; nothing here trusts them.

/// The bytes begin as those of a picture do (PNG, JPEG, GIF, BMP, TIFF, WebP), whole or not: then they are no
/// video.
bool beginsLikePicture(std::span<const std::uint8_t> bytes);

/// What decoding a JPEG takes besides the picture that comes out.
struct JpegCost {
    /// Bytes of the coefficients that a decoder must hold at once: all of them, 16 bits each, where a later
    /// scan refines or completes an earlier one (ITU-T T.81, annex G and B.2.3); else 0.
    double heldBytes = 0;
    int scans = 0; ///< each goes over the whole picture
};

/// Of a JPEG's markers (ITU-T T.81, annex B). Bytes that are none cost nothing.
JpegCost jpegCost(std::span<const std::uint8_t> bytes);

} // namespace scanner

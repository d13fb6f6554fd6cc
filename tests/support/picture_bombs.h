#pragma once

#include <map>
#include <string>

namespace support {

/// Small pictures of each kind that the program reads, by their ending, with other sides written into their
/// heads: what follows is far too little for so many pixels.
std::map<std::string, std::string> pictureBombs(unsigned width, unsigned height);

/// A progressive JPEG of so many grey pixels whose few bytes hold so many scans of nothing (ITU-T T.81, annex
/// G).
std::string jpegOfScans(unsigned width, unsigned height, int scans);

} // namespace support

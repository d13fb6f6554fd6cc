#pragma once

#include "scanner/files/picture_streams.h"

#include <string>
#include <vector>

namespace app {

/// Every stream of the folders, in order, as a live view reads them: 33 ms of processor time a frame. A
/// stream with a gap in its numbers, a number twice or a picture that cannot be read is left out with an
/// error line, as is a folder without streams; `faulty` tells whether there was one.
std::vector<scanner::StreamReading> readStreams(const std::vector<std::string>& folders, bool& faulty);

} // namespace app

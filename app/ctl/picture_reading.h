#pragma once

#include "scanner/read_path.h"

#include <string>
#include <vector>

namespace app {

/// Every picture and video of the paths, in order, with a bar when it takes long. The paths' faults are in
/// the entries.
std::vector<scanner::PathReading> readPictures(const std::vector<std::string>& paths);

/// One error line for each entry that could not be read; whether there was one.
bool reportUnreadable(const std::vector<scanner::PathReading>& readings);

} // namespace app

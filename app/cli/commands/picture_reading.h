#pragma once

#include "scanner/files/read_path.h"

#include <string>
#include <vector>

namespace app {

/// How hard to look at each picture.
struct ReadEffort {
    bool full = true; ///< else the fast pass alone
    double seconds =
        2; ///< a picture; a saved one does not run away, so it gets more time than a camera's frame
};

/// Every picture and video of the paths, in order, with a bar when it takes long. The paths' faults are in
/// the entries.
std::vector<scanner::PathReading> readPictures(const std::vector<std::string>& paths, ReadEffort effort = {});

/// One error line for each entry that could not be read; whether there was one.
bool reportUnreadable(const std::vector<scanner::PathReading>& readings);

} // namespace app

#pragma once

#include "tests/support/fake_cameras.h"

namespace support {

/// The one set of cameras of the process.
inline FakeCameras& fakeCameras() {
    static FakeCameras cameras;
    return cameras;
}

constexpr const char* webcam720 = "YUY2,1280,720,30";

} // namespace support

#pragma once

#include "tests/support/fake_cameras.h"

namespace support {

/// The one set of webcams of the process.
inline FakeCameras& fakeWebcams() {
    static FakeCameras cameras;
    return cameras;
}

} // namespace support

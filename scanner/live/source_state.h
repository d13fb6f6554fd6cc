#pragma once

#include <cstdint>

namespace scanner {

/// How it stands with the source of frames.
enum class SourceState : std::uint8_t {
    Stopped,  ///< none is asked for
    NoCamera, ///< the camera asked for is not there, or was pulled out; it starts by itself when it is
              ///< plugged in
    Starting, ///< opened, no frame has come yet
    Running,  ///< frames come
    Stalled,  ///< the camera is there and sends nothing; it is opened anew from time to time
    Ended,    ///< the recording has been read to its end
};

} // namespace scanner

#include "scanner/grey_picture.h"

#include <algorithm>

namespace scanner {

GreyPicture copyOf(GreyView view) {
    if (view.isEmpty()) return {};
    GreyPicture copy(view.width, view.height);
    for (int y = 0; y < view.height; ++y) {
        const std::uint8_t* from = view.data + static_cast<std::ptrdiff_t>(y) * view.stride;
        std::uint8_t* to = copy.row(y);
        if (view.pixelStride == 1)
            std::copy_n(from, view.width, to);
        else
            for (int x = 0; x < view.width; ++x)
                to[x] = from[static_cast<std::ptrdiff_t>(x) * view.pixelStride];
    }
    return copy;
}

} // namespace scanner

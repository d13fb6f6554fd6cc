#pragma once

#include <cstdint>
#include <vector>

namespace scanner {

/// A borrowed 8-bit grey picture. Rows lie `stride` bytes apart (never negative), pixels `pixelStride` bytes,
/// so that the luma of YUYV (pixelStride 2) needs no copy. Valid while its owner lives. `data` may be null
/// only if empty.
struct GreyView {
    const std::uint8_t* data = nullptr;
    int width = 0;
    int height = 0;
    int stride = 0;
    int pixelStride = 1;

    bool isEmpty() const { return data == nullptr || width <= 0 || height <= 0; }
    std::uint8_t at(int x, int y) const {
        return data[y * static_cast<std::ptrdiff_t>(stride) + x * pixelStride];
    }
};

/// A grey picture that owns its pixels: width × height bytes, no padding.
struct GreyPicture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;

    GreyPicture() = default;
    GreyPicture(int w, int h, std::uint8_t value = 0)
        : width(w)
        , height(h)
        , pixels(static_cast<std::size_t>(w) * static_cast<std::size_t>(h), value) {}

    GreyView view() const { return {pixels.data(), width, height, width, 1}; }
    std::uint8_t* row(int y) { return pixels.data() + static_cast<std::ptrdiff_t>(y) * width; }
    const std::uint8_t* row(int y) const { return pixels.data() + static_cast<std::ptrdiff_t>(y) * width; }
};

/// A packed copy (pixelStride 1, no padding) of the view.
GreyPicture copyOf(GreyView view);

} // namespace scanner

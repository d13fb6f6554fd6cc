#include "scanner/files/picture_head.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace scanner {
namespace {

using namespace std::string_view_literals;

constexpr std::array signatures{
    "\x89PNG\r\n\x1A\n"sv, "\xFF\xD8\xFF"sv, "GIF87a"sv, "GIF89a"sv, "BM"sv, "II*\0"sv, "MM\0*"sv};

bool beginsWith(std::span<const std::uint8_t> bytes, std::string_view text) {
    return bytes.size() >= text.size() &&
           std::equal(text.begin(), text.end(), bytes.begin(),
                      [](char c, std::uint8_t byte) { return static_cast<std::uint8_t>(c) == byte; });
}

/// Frame headers: SOF0 to SOF15 without DHT, JPG and DAC.
bool isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
}

/// Markers that stand alone, without a segment.
bool isBare(int marker) {
    return marker == 0x01 || (marker >= 0xD0 && marker <= 0xD9);
}

constexpr int startOfScan = 0xDA, endOfImage = 0xD9;

/// How many values a pixel has, for some components have fewer than others (annex A.1.1): three bytes each,
/// of which the second has the sampling factors.
double shareOfPixels(std::span<const std::uint8_t> components) {
    double samples = 0;
    int widest = 1, highest = 1;
    for (std::size_t at = 0; at + 2 < components.size(); at += 3) {
        const int across = components[at + 1] >> 4, down = components[at + 1] & 15;
        samples += across * down;
        widest = std::max(widest, across);
        highest = std::max(highest, down);
    }
    return samples / (widest * highest);
}

/// The frame and what its scans ask for, while the markers go by.
class JpegMarkers {
public:
    void take(int marker, std::span<const std::uint8_t> segment) {
        if (isFrame(marker) && segment.size() >= 6) {
            m_isProgressive = (marker & 3) == 2; // SOF2, 6, 10, 14
            m_components = segment[5];
            const double height = segment[1] * 256.0 + segment[2], width = segment[3] * 256.0 + segment[4];
            m_coefficients = width * height * shareOfPixels(segment.subspan(6));
        }
        if (marker == startOfScan && !segment.empty()) {
            ++m_cost.scans;
            if (m_isProgressive || segment[0] < m_components) m_cost.heldBytes = 2 * m_coefficients;
        }
    }
    const JpegCost& cost() const { return m_cost; }

private:
    JpegCost m_cost;
    double m_coefficients = 0;
    int m_components = 0;
    bool m_isProgressive = false;
};

} // namespace

bool beginsLikePicture(std::span<const std::uint8_t> bytes) {
    const bool isWebp =
        beginsWith(bytes, "RIFF"sv) && bytes.size() >= 12 && beginsWith(bytes.subspan(8), "WEBP"sv);
    return isWebp || std::any_of(signatures.begin(), signatures.end(),
                                 [&](std::string_view each) { return beginsWith(bytes, each); });
}

JpegCost jpegCost(std::span<const std::uint8_t> bytes) {
    JpegMarkers markers;
    if (!beginsWith(bytes, "\xFF\xD8"sv)) return {};
    for (std::size_t at = 2; at + 1 < bytes.size();) {
        const int marker = bytes[at + 1];
        if (bytes[at] != 0xFF || marker == 0x00 || marker == 0xFF || isBare(marker)) {
            if (bytes[at] == 0xFF && marker == endOfImage) break;
            ++at; // within the coded data, where a 0xFF is followed by 0x00
            continue;
        }
        if (at + 4 > bytes.size()) break;
        const std::size_t length = std::max<std::size_t>(2, bytes[at + 2] * 256U + bytes[at + 3]);
        const std::size_t end = std::min(at + 2 + length, bytes.size());
        markers.take(marker, bytes.subspan(at + 4, std::max(end, at + 4) - (at + 4)));
        at = end;
    }
    return markers.cost();
}

} // namespace scanner

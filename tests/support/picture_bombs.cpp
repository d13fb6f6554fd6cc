#include "tests/support/picture_bombs.h"

#include <QBuffer>
#include <QImage>
#include <QImageWriter>

#include <algorithm>
#include <cstdint>

namespace support {
namespace {

std::string saved(const char* format, bool isProgressive = false) {
    QImage image(32, 32, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QImageWriter writer(&buffer, format);
    writer.setProgressiveScanWrite(isProgressive);
    writer.setQuality(60); // WebP: with losses, whose head is the plainer
    writer.write(image);
    return bytes.toStdString();
}

std::string big(unsigned value, int bytes) {
    std::string text;
    for (int i = bytes - 1; i >= 0; --i)
        text += static_cast<char>(value >> (8U * static_cast<unsigned>(i)));
    return text;
}

std::string little(unsigned value, int bytes) {
    std::string text = big(value, bytes);
    std::reverse(text.begin(), text.end());
    return text;
}

void put(std::string& bytes, std::size_t at, const std::string& text) {
    bytes.replace(at, text.size(), text);
}

/// PNG (ISO/IEC 15948), annex D.
std::uint32_t crcOf(const std::string& bytes) {
    std::uint32_t crc = 0xFFFFFFFFU;
    for (const char c : bytes) {
        crc ^= static_cast<std::uint8_t>(c);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc & 1U) != 0 ? 0xEDB88320U ^ (crc >> 1U) : crc >> 1U;
    }
    return ~crc;
}

std::string png(unsigned width, unsigned height) {
    std::string bytes = saved("png");
    put(bytes, 16, big(width, 4) + big(height, 4));
    put(bytes, 29, big(crcOf(bytes.substr(12, 17)), 4));
    return bytes;
}

std::string jpeg(unsigned width, unsigned height, bool isProgressive) {
    std::string bytes = saved("jpg", isProgressive);
    const std::size_t frame = bytes.find(isProgressive ? "\xFF\xC2" : "\xFF\xC0");
    put(bytes, frame + 5, big(height, 2) + big(width, 2));
    return bytes;
}

std::string bmp(unsigned width, unsigned height) {
    std::string bytes = saved("bmp");
    put(bytes, 18, little(width, 4) + little(height, 4));
    return bytes;
}

/// TIFF 6.0, section 2: entries of 12 bytes; 256 and 257 are the sides.
std::string tiff(unsigned width, unsigned height) {
    std::string bytes = saved("tiff");
    const auto at = [&](std::size_t from) { return static_cast<std::uint8_t>(bytes[from]); };
    const std::size_t directory = at(4) | at(5) << 8U | at(6) << 16U;
    for (unsigned i = 0; i < at(directory); ++i) {
        const std::size_t entry = directory + 2 + 12 * i;
        const unsigned tag = at(entry) | at(entry + 1) << 8U;
        if (tag != 256 && tag != 257) continue;
        put(bytes, entry + 2, little(4, 2)); // LONG
        put(bytes, entry + 8, little(tag == 256 ? width : height, 4));
    }
    return bytes;
}

/// RFC 9649, 2.5 and RFC 6386, 9.1: 14 bits a side.
std::string webp(unsigned width, unsigned height) {
    std::string bytes = saved("webp");
    put(bytes, 26, little(std::min(width, 16383U), 2) + little(std::min(height, 16383U), 2));
    return bytes;
}

/// GIF89a, sections 18 and 20: one frame with two colours.
std::string gif(unsigned width, unsigned height) {
    using namespace std::string_literals;
    const std::string sides = little(width, 2) + little(height, 2);
    return "GIF89a" + sides + "\0\0\0"s + ",\0\0\0\0"s + sides + "\x80\0\0\0\xFF\xFF\xFF"s +
           "\x02\x02\x4C\x01\0;"s;
}

} // namespace

std::map<std::string, std::string> pictureBombs(unsigned width, unsigned height) {
    const std::string sides = std::to_string(width) + ' ' + std::to_string(height);
    return {{"png", png(width, height)},
            {"jpg", jpeg(width, height, false)},
            {"progressive.jpg", jpeg(width, height, true)},
            {"bmp", bmp(width, height)},
            {"tiff", tiff(width, height)},
            {"webp", webp(width, height)},
            {"gif", gif(width, height)},
            {"ppm", "P6\n" + sides + "\n255\nabc"}};
}

std::string jpegOfScans(unsigned width, unsigned height, int scans) {
    using namespace std::string_literals;
    std::string bytes = "\xFF\xD8\xFF\xDB\0\x43\0"s + std::string(64, '\x01');
    bytes += "\xFF\xC2\0\x0B\x08"s + big(height, 2) + big(width, 2) + "\x01\x01\x11\0"s;
    bytes += "\xFF\xC4\0\x14\x10\x01"s + std::string(15, '\0') +
             "\xE0"s; // one AC code: a run of 2^14 blocks and more
    for (int scan = 0; scan < scans; ++scan)
        bytes += "\xFF\xDA\0\x08\x01\x01\0\x01\x3F\0"s + std::string(64, '\0');
    return bytes + "\xFF\xD9"s;
}

} // namespace support

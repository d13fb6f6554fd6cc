#include "tests/scanner/reader/pictures.h"

#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>
#include <qrencode.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace pictures {

using scanner::GreyPicture;

namespace {

const std::string alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
const std::string minted = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

GreyPicture modulesOf(const ZXing::BitMatrix& bits) {
    GreyPicture picture(bits.width(), bits.height(), 255);
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x)
            if (bits.get(x, y)) picture.row(y)[x] = 0;
    return picture;
}

} // namespace

bool isTag(const std::string& text) {
    if (text.size() != 10 || std::string("KBPCS").find(text[0]) == std::string::npos) return false;
    std::size_t sum = 0;
    for (const char c : text) {
        if (minted.find(c) == std::string::npos) return false;
        sum = (sum * 2 + alphabet.find(c)) % 37;
    }
    return sum == 1;
}

std::string tagCode(unsigned number) {
    for (;; ++number) {
        std::string text = "K";
        unsigned rest = number * 2654435761u;
        for (int i = 0; i < 8; ++i, rest = rest / 32 + number * 97)
            text += minted[rest % 32];
        for (const char check : minted)
            if (isTag(text + check)) return text + check;
    }
}

GreyPicture qrModules(const std::string& text, int version) {
    QRcode* code = QRcode_encodeString(text.c_str(), version, QR_ECLEVEL_H, QR_MODE_8, 1);
    GreyPicture picture(code->width, code->width, 255);
    for (int i = 0; i < code->width * code->width; ++i)
        if (code->data[i] & 1) picture.pixels[static_cast<std::size_t>(i)] = 0;
    QRcode_free(code);
    return picture;
}

GreyPicture dataMatrixModules(const std::string& text) {
    return modulesOf(
        ZXing::MultiFormatWriter(ZXing::BarcodeFormat::DataMatrix).setMargin(0).encode(text, 0, 0));
}

GreyPicture code128Modules(const std::string& text) {
    return modulesOf(ZXing::MultiFormatWriter(ZXing::BarcodeFormat::Code128).setMargin(0).encode(text, 0, 1));
}

GreyPicture shuffled(GreyPicture modules) {
    std::mt19937 random(3);
    std::shuffle(modules.pixels.begin(), modules.pixels.end(), random);
    return modules;
}

GreyPicture noise(int width, int height) {
    std::mt19937 random(7);
    GreyPicture picture(width, height);
    for (auto& pixel : picture.pixels)
        pixel = static_cast<std::uint8_t>(random() % 256);
    return picture;
}

GreyPicture smeared(GreyPicture modules) {
    for (auto& pixel : modules.pixels)
        pixel = pixel ? 200 : 40;
    std::mt19937 random(5);
    for (int hit = 0; hit < 40;) {
        const int x = static_cast<int>(random() % 21), y = static_cast<int>(random() % 21);
        if ((y < 9 && (x < 9 || x > 12)) || (y > 12 && x < 9)) continue; // a finder's
        auto& pixel = modules.row(y)[x];
        pixel = pixel > 120 ? 90 : 150;
        ++hit;
    }
    return modules;
}

GreyPicture enlarged(const GreyPicture& picture, int factor) {
    GreyPicture result(picture.width * factor, picture.height * factor);
    for (int y = 0; y < result.height; ++y)
        for (int x = 0; x < result.width; ++x)
            result.row(y)[x] = picture.row(y / factor)[x / factor];
    return result;
}

GreyPicture stretched(const GreyPicture& row, int height) {
    GreyPicture result(row.width, height);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < row.width; ++x)
            result.row(y)[x] = row.row(0)[x];
    return result;
}

GreyPicture onGround(const GreyPicture& picture, int width, int height, double degrees, std::uint8_t ground) {
    GreyPicture result(width, height, ground);
    const double angle = degrees * std::numbers::pi / 180, c = std::cos(angle), s = std::sin(angle);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            double sum = 0; // four samples a pixel, so that slanted edges are smooth
            for (int i = 0; i < 4; ++i) {
                const double dx = x + 0.25 + 0.5 * (i % 2) - width / 2.0,
                             dy = y + 0.25 + 0.5 * (i / 2) - height / 2.0;
                const double u = c * dx + s * dy + picture.width / 2.0,
                             v = c * dy - s * dx + picture.height / 2.0;
                const bool inside = u >= 0 && v >= 0 && u < picture.width && v < picture.height;
                sum += inside ? picture.row(static_cast<int>(v))[static_cast<int>(u)] : ground;
            }
            result.row(y)[x] = static_cast<std::uint8_t>(sum / 4);
        }
    return result;
}

void paste(GreyPicture& onto, const GreyPicture& picture, int left, int top) {
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x)
            onto.row(top + y)[left + x] = picture.row(y)[x];
}

} // namespace pictures

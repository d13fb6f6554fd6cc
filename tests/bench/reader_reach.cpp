// From how far a tag of each size is read, on drawn scenes, as a table in Markdown:
//   reader_reach [SCENES]     a distance and size; 40
// A scene is what a webcam of 60° horizontal field of view sees of a sharp, still, evenly lit tag near the
// middle: any turn, up to 30° of tilt, lens and sensor blur of 0.7 pixels (sigma), noise of 3 grey levels,
// ink 45 on paper 205. A distance counts when nine of ten scenes are read without a guess, as do all nearer
// ones.

#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <numbers>
#include <random>

namespace {

using scanner::GreyPicture;

constexpr int width = 480, height = 360; // pixels around the tag; the rest of the frame only takes time
constexpr double ink = 45, paper = 205, noise = 3, blur = 0.7;

struct Webcam {
    const char* name;
    int pixels; ///< across
    double focal() const { return pixels / 2.0 / std::tan(std::numbers::pi / 6); }
};

class Scenes {
public:
    explicit Scenes(unsigned seed)
        : m_random(seed) {}

    /// `text` on a symbol of `side` metres, seen from `distance` metres.
    GreyPicture draw(const std::string& text, double side, double distance, double focal) {
        const GreyPicture symbol = pictures::qrModules(text);
        const double turn = between(0, 2 * std::numbers::pi), tilt = between(0, std::numbers::pi / 6),
                     direction = between(0, 2 * std::numbers::pi);
        const double shiftX = between(-0.5, 0.5), shiftY = between(-0.5, 0.5), ground = between(60, 160);
        // The tag's plane: through (0, 0, distance), its normal tilted towards `direction`.
        const double nx = std::sin(tilt) * std::cos(direction), ny = std::sin(tilt) * std::sin(direction),
                     nz = std::cos(tilt);
        std::vector<float> light(static_cast<std::size_t>(width) * height);
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x) {
                double sum = 0;
                constexpr int fine = 4;
                for (int i = 0; i < fine * fine; ++i) {
                    const double dx = (x + shiftX + (i % fine + 0.5) / fine - width / 2.0) / focal,
                                 dy = (y + shiftY + (i / fine + 0.5) / fine - height / 2.0) / focal;
                    const double depth = distance * nz / (nx * dx + ny * dy + nz);
                    const double px = depth * dx, py = depth * dy, pz = depth - distance;
                    // Coordinates in the plane, by the turn that takes the normal to the camera's axis.
                    const double u = px - nx * (px * nx + py * ny + pz * (1 + nz)) / (1 + nz),
                                 v = py - ny * (px * nx + py * ny + pz * (1 + nz)) / (1 + nz);
                    sum += levelAt(symbol, (std::cos(turn) * u - std::sin(turn) * v) / side,
                                   (std::sin(turn) * u + std::cos(turn) * v) / side, ground);
                }
                light[static_cast<std::size_t>(y) * width + x] = static_cast<float>(sum / (fine * fine));
            }
        return developed(light);
    }

private:
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }

    /// `u`, `v`: in parts of the symbol's side from its middle; a quiet zone of four modules around it.
    static double levelAt(const GreyPicture& symbol, double u, double v, double ground) {
        const int n = symbol.width, column = static_cast<int>(std::floor((u + 0.5) * n)),
                  row = static_cast<int>(std::floor((v + 0.5) * n));
        if (column >= 0 && row >= 0 && column < n && row < n) return symbol.row(row)[column] ? paper : ink;
        return column >= -4 && row >= -4 && column < n + 4 && row < n + 4 ? paper : ground;
    }

    GreyPicture developed(const std::vector<float>& light) {
        std::array<float, 7> weight{};
        float all = 0;
        for (int k = -3; k <= 3; ++k)
            all += weight[k + 3] = static_cast<float>(std::exp(-0.5 * k * k / (blur * blur)));
        const auto blurredOnce = [&](const std::vector<float>& in, int step, int x, int y) {
            float sum = 0;
            for (int k = -3; k <= 3; ++k) {
                const int at = step == 1 ? y * width + std::clamp(x + k, 0, width - 1)
                                         : std::clamp(y + k, 0, height - 1) * width + x;
                sum += weight[k + 3] * in[static_cast<std::size_t>(at)];
            }
            return sum / all;
        };
        std::vector<float> across(light.size());
        for (int i = 0; i < width * height; ++i)
            across[i] = blurredOnce(light, 1, i % width, i / width);
        std::normal_distribution<float> grain(0, noise);
        GreyPicture picture(width, height);
        for (int i = 0; i < width * height; ++i)
            picture.pixels[i] = static_cast<std::uint8_t>(std::clamp(
                blurredOnce(across, width, i % width, i / width) + grain(m_random) + 0.5f, 0.0f, 255.0f));
        return picture;
    }

    std::mt19937 m_random;
};

bool isRead(const GreyPicture& picture, const std::string& text) {
    scanner::ReadOptions options;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = pictures::isTag;
    const auto codes = scanner::readSymbols(picture.view(), options);
    return std::any_of(codes.begin(), codes.end(), [&](const scanner::SeenCode& code) {
        return code.text == text && code.howRead != scanner::HowRead::Guessed;
    });
}

/// The furthest distance in metres that counts, to five centimetres.
double reachOf(const Webcam& camera, double side, int scenes) {
    double reach = 0;
    for (int step = 4; step < 100; ++step) {
        const double distance = 0.05 * step;
        if (side / distance * camera.focal() > 200) continue; // it would not fit the picture; no question
        Scenes maker(static_cast<unsigned>(step));
        int read = 0;
        for (int i = 0; i < scenes; ++i) {
            const std::string text = pictures::tagCode(static_cast<unsigned>(1000 * step + i));
            read += isRead(maker.draw(text, side, distance, camera.focal()), text);
        }
        if (read * 10 < scenes * 9) break;
        reach = distance;
    }
    return reach;
}

} // namespace

int main(int argc, char** argv) {
    const int scenes = argc > 1 ? std::max(1, std::atoi(argv[1])) : 40;
    constexpr std::array cameras{Webcam{"720p", 1280}, Webcam{"1080p", 1920}};
    std::printf("| Tag, mm | 720p, m | 1080p, m | pixels a module there |\n| --- | --- | --- | --- |\n");
    for (const int side : {20, 30, 40, 50}) {
        std::array<double, 2> reach{};
        for (std::size_t i = 0; i < cameras.size(); ++i)
            reach[i] = reachOf(cameras[i], side / 1000.0, scenes);
        const auto module = [&](std::size_t i) { return side / 1000.0 / 21 * cameras[i].focal() / reach[i]; };
        std::printf("| %d | %.2f | %.2f | %.1f, %.1f |\n", side, reach[0], reach[1], module(0), module(1));
        std::fflush(stdout);
    }
    return 0;
}

// Pictures that nobody would take, through the whole reader and the live one:
//   reader_fuzz COUNT [SEED]
// Ends with 1 when a text is told that is a tag and was not drawn. Meant for a build with sanitizers.

#include "scanner/reader/live_reader.h"
#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <set>

namespace {

using scanner::GreyPicture;

class PictureMaker {
public:
    explicit PictureMaker(unsigned seed)
        : m_random(seed) {}

    /// A picture of a kind chosen by chance; `drawn` gets the texts of the symbols in it.
    GreyPicture make(std::set<std::string>& drawn) {
        GreyPicture picture = ground();
        const int pastes = static_cast<int>(below(4));
        for (int i = 0; i < pastes; ++i)
            pasteSymbol(picture, drawn);
        if (below(3) == 0) splice(picture);
        if (below(2) == 0) addNoise(picture);
        return picture;
    }

private:
    unsigned below(unsigned n) { return static_cast<unsigned>(m_random() % n); }

    GreyPicture ground() {
        const unsigned kind = below(20);
        if (kind == 0) return noise(static_cast<int>(1 + below(4)), static_cast<int>(1 + below(900)));
        if (kind == 1) return noise(static_cast<int>(1 + below(900)), static_cast<int>(1 + below(4)));
        if (kind == 2) return noise(static_cast<int>(1 + below(40)), static_cast<int>(1 + below(40)));
        if (kind == 3 && below(20) == 0) return pattern(4000 + static_cast<int>(below(2000)), 3000);
        if (kind < 7) return noise(static_cast<int>(60 + below(400)), static_cast<int>(60 + below(300)));
        return pattern(static_cast<int>(60 + below(600)), static_cast<int>(60 + below(400)));
    }

    GreyPicture noise(int width, int height) {
        GreyPicture picture(width, height);
        for (auto& pixel : picture.pixels)
            pixel = static_cast<std::uint8_t>(m_random());
        return picture;
    }

    /// Stripes, slanted stripes, grids or nested squares.
    GreyPicture pattern(int width, int height) {
        GreyPicture picture(width, height);
        const int pitch = 1 + static_cast<int>(below(20)), slant = static_cast<int>(below(5)),
                  kind = static_cast<int>(below(4));
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x) {
                const int ring = std::max(std::abs(x % 40 - 20), std::abs(y % 40 - 20)) / (1 + pitch / 4);
                const int place = kind == 0   ? x / pitch
                                  : kind == 1 ? (x * 4 + y * slant) / (4 * pitch)
                                  : kind == 2 ? x / pitch + y / pitch
                                              : ring;
                picture.row(y)[x] = place % 2 ? 220 : 35;
            }
        return picture;
    }

    void pasteSymbol(GreyPicture& picture, std::set<std::string>& drawn) {
        const std::string text = pictures::tagCode(below(100000));
        const int module = 1 + static_cast<int>(below(6));
        const unsigned kind = below(3);
        GreyPicture symbol =
            kind == 0   ? pictures::enlarged(pictures::qrModules(text), module)
            : kind == 1 ? pictures::enlarged(pictures::dataMatrixModules(text), module)
                        : pictures::stretched(pictures::enlarged(pictures::code128Modules(text), module),
                                              30 * module);
        const int margin = 4 * module;
        symbol = pictures::onGround(symbol, symbol.width + 2 * margin, symbol.height + 2 * margin,
                                    static_cast<double>(below(8)), 240);
        if (symbol.width >= picture.width || symbol.height >= picture.height) return;
        pictures::paste(picture, symbol,
                        static_cast<int>(below(static_cast<unsigned>(picture.width - symbol.width))),
                        static_cast<int>(below(static_cast<unsigned>(picture.height - symbol.height))));
        drawn.insert(text);
    }

    /// The upper and lower parts are joined after a shift.
    void splice(GreyPicture& picture) {
        const int cut = static_cast<int>(below(static_cast<unsigned>(picture.height))),
                  shift = static_cast<int>(below(30));
        for (int y = cut; y < picture.height; ++y)
            for (int x = 0; x + shift < picture.width; ++x)
                picture.row(y)[x] = picture.row(y)[x + shift];
    }

    void addNoise(GreyPicture& picture) {
        const int strength = 1 + static_cast<int>(below(60));
        for (auto& pixel : picture.pixels)
            pixel = static_cast<std::uint8_t>(std::clamp(
                pixel + static_cast<int>(m_random() % static_cast<unsigned>(2 * strength)) - strength, 0,
                255));
    }

    std::mt19937 m_random;
};

int strangeTags(const std::vector<scanner::SeenCode>& codes, const std::set<std::string>& drawn) {
    int strange = 0;
    for (const auto& code : codes)
        if (pictures::isTag(code.text) && !drawn.count(code.text)) {
            ++strange;
            std::printf("not drawn: %s %s\n", code.text.c_str(), scanner::nameOf(code.howRead));
        }
    return strange;
}

} // namespace

int main(int argc, char** argv) {
    const int count = argc > 1 ? std::atoi(argv[1]) : 100;
    const unsigned seed = argc > 2 ? static_cast<unsigned>(std::atoi(argv[2])) : 1;
    PictureMaker maker(seed);
    scanner::ReadOptions options;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = pictures::isTag;
    scanner::LiveReader live(pictures::isTag);
    int strange = 0, drawnTags = 0, readTags = 0;
    std::set<std::string> everDrawn; // the live reader may still follow a tag of the frame before
    for (int i = 0; i < count; ++i) {
        std::set<std::string> drawn;
        const GreyPicture picture = maker.make(drawn);
        const auto codes = scanner::readSymbols(picture.view(), options);
        strange += strangeTags(codes, drawn);
        drawnTags += static_cast<int>(drawn.size());
        readTags += static_cast<int>(codes.size());
        everDrawn.insert(drawn.begin(), drawn.end());
        strange += strangeTags(live.read(picture.view()), everDrawn);
    }
    std::printf("%d pictures: %d tags drawn, %d codes read, %d texts that were not drawn\n", count, drawnTags,
                readTags, strange);
    return strange > 0;
}

// libFuzzer target: any bytes as a grey picture, drawn two pixels a byte so that small inputs make modules.
// The reader must end, and the fast pass must tell nothing that the whole does not.

#include "scanner/reader/symbol_reader.h"

#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    if (size < 3) return 0;
    const int columns = 1 + bytes[0] % 64, factor = 1 + bytes[1] % 4;
    const int rows = static_cast<int>(size - 2) / columns;
    scanner::GreyPicture picture(columns * factor, rows * factor);
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x)
            picture.row(y)[x] = bytes[2 + (y / factor) * columns + x / factor];
    scanner::ReadOptions options;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = [](const std::string& text) { return text.size() == 10 && text[0] == 'K'; };
    const auto whole = scanner::readSymbols(picture.view(), options);
    options.rescue = false;
    const auto fast = scanner::readSymbols(picture.view(), options);
    if (fast.size() > whole.size()) std::abort();
    return 0;
}

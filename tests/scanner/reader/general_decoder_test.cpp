#include "scanner/reader/general_decoder.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>
#include <zint.h>

#include <algorithm>

using namespace scanner;
using namespace scanner::reader;

namespace {

/// Modules by libzint, which shares no code with the decoder.
GreyPicture modulesByZint(int symbology, int mode, const std::string& text) {
    zint_symbol* symbol = ZBarcode_Create();
    symbol->symbology = symbology;
    symbol->input_mode = mode;
    EXPECT_LT(ZBarcode_Encode(symbol, reinterpret_cast<const unsigned char*>(text.c_str()), 0), ZINT_ERROR);
    GreyPicture picture(symbol->width, symbol->rows, 255);
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x)
            if (symbol->encoded_data[y][x / 8] >> (x % 8) & 1) picture.row(y)[x] = 0;
    ZBarcode_Delete(symbol);
    return picture;
}

/// A GS1 QR symbol; identifiers in brackets.
GreyPicture gs1Qr(const std::string& elements) {
    const GreyPicture large = pictures::enlarged(modulesByZint(BARCODE_QRCODE, GS1_MODE, elements), 4);
    return pictures::onGround(large, large.width + 60, large.height + 60);
}

/// What is told of a row of bars.
std::string textOfBars(int symbology, const std::string& text) {
    const GreyPicture bars =
        pictures::stretched(pictures::enlarged(modulesByZint(symbology, DATA_MODE, text), 3), 20);
    const auto code =
        decodeLinearStrip(pictures::onGround(bars, bars.width + 120, bars.height, 0, 255).view());
    return code ? code->text : "";
}

std::vector<std::string> textsByGeneralDecoder(const GreyPicture& picture) {
    std::vector<std::string> texts;
    for (const SeenCode& code : decodeMatrixSymbols(picture.view(), Effort::Quick))
        texts.push_back(code.text);
    return texts;
}

} // namespace

// GS1 General Specifications: FNC1 ends a value of varying length; ISO/IEC 18004 7.4.4: a per cent sign
// stands for FNC1 and is written twice when it is meant.
TEST(GeneralDecoder, neverTellsAGs1TextCutAtAPerCentSign) {
    EXPECT_EQ(textsByGeneralDecoder(gs1Qr("[10]AXBC[21]KRBD7XKM3R")),
              std::vector<std::string>{"10AXBC\x1d"
                                       "21KRBD7XKM3R"});
    for (const std::string& text : textsByGeneralDecoder(gs1Qr("[10]A%BC[21]KRBD7XKM3R")))
        EXPECT_EQ(text, "10A%BC\x1d"
                        "21KRBD7XKM3R");
}

// Interleaved 2 of 5 has no check character of its own and is found in many rows of stripes. The digits of
// EAN and Code 39 are read; 6291041500213 is the worked example of GS1's own calculator page, from memory.
TEST(GeneralDecoder, interleavedTwoOfFiveIsNotToldOtherBarsAre) {
    EXPECT_EQ(textOfBars(BARCODE_EANX, "629104150021"), "6291041500213");
    EXPECT_EQ(textOfBars(BARCODE_CODE39, "1629104150021"), "1629104150021");
    EXPECT_EQ(textOfBars(BARCODE_ITF14, "1629104150021"), "");
    EXPECT_EQ(textOfBars(BARCODE_C25INTER, "16291041500210"), "");
}

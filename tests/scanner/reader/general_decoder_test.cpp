#include "scanner/reader/general_decoder.h"

#include "tests/scanner/reader/pictures.h"

#include <gtest/gtest.h>
#include <zint.h>

#include <algorithm>

using namespace scanner;
using namespace scanner::reader;

namespace {

/// A GS1 QR symbol by libzint, which shares no code with the decoder; identifiers in brackets.
GreyPicture gs1Qr(const std::string& elements) {
    zint_symbol* symbol = ZBarcode_Create();
    symbol->symbology = BARCODE_QRCODE;
    symbol->input_mode = GS1_MODE;
    EXPECT_LT(ZBarcode_Encode(symbol, reinterpret_cast<const unsigned char*>(elements.c_str()), 0),
              ZINT_ERROR);
    GreyPicture picture(symbol->width, symbol->rows, 255);
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x)
            if (symbol->encoded_data[y][x / 8] >> (x % 8) & 1) picture.row(y)[x] = 0;
    ZBarcode_Delete(symbol);
    const GreyPicture large = pictures::enlarged(picture, 4);
    return pictures::onGround(large, large.width + 60, large.height + 60);
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

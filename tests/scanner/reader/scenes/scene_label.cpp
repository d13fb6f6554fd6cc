#include "tests/scanner/reader/scenes/scene_label.h"

#include "tests/scanner/reader/pictures.h"

#include <zint.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace scenes {
namespace {

constexpr double barHeight = 32; // modules

/// Zint's modules of GS1 element strings; bars come as one row.
scanner::GreyPicture gs1Modules(int symbology, const std::string& text) {
    zint_symbol* symbol = ZBarcode_Create();
    symbol->symbology = symbology;
    symbol->input_mode = GS1_MODE;
    if (symbology == BARCODE_DATAMATRIX) symbol->option_3 = DM_SQUARE;
    if (symbology == BARCODE_QRCODE) symbol->option_1 = 2;
    const auto* bytes = reinterpret_cast<const unsigned char*>(text.data());
    if (ZBarcode_Encode(symbol, bytes, static_cast<int>(text.size())) >= ZINT_ERROR) std::abort();
    scanner::GreyPicture modules(symbol->width, symbol->rows, 255);
    for (int y = 0; y < symbol->rows; ++y)
        for (int x = 0; x < symbol->width; ++x)
            if (symbol->encoded_data[y][x / 8] >> (x % 8) & 1) modules.row(y)[x] = 0;
    ZBarcode_Delete(symbol);
    return modules;
}

scanner::GreyPicture modulesOf(Kind kind, const std::string& code) {
    const std::string strings = "[01]04012345678901[21]" + code;
    switch (kind) {
    case Kind::Qr:
        return pictures::qrModules(code);
    case Kind::DataMatrix:
        return pictures::dataMatrixModules(code);
    case Kind::Code128:
        return pictures::code128Modules(code);
    case Kind::Gs1Qr:
        return gs1Modules(BARCODE_QRCODE, strings);
    case Kind::Gs1DataMatrix:
        return gs1Modules(BARCODE_DATAMATRIX, strings);
    case Kind::Gs1Bars:
        break;
    }
    return gs1Modules(BARCODE_GS1_128, strings);
}

} // namespace

const char* nameOf(Kind kind) {
    static constexpr const char* names[] = {"QR", "DM", "C128", "GS1-QR", "GS1-DM", "GS1-128"};
    return names[static_cast<int>(kind)];
}

double Label::levelAt(double u, double v) const {
    if (u < -quiet() || v < -4 || u >= wide() + quiet() || v >= high() + 4) return -1;
    for (const Blot& blot : dirt) {
        const double a = (u - blot.u) / blot.across, b = (v - blot.v) / blot.along;
        if (a * a + b * b < 1) return blot.level;
    }
    const bool inside = u >= 0 && v >= 0 && u < wide() && v < high();
    const int row = std::min(modules.height - 1, static_cast<int>(v / rowHeight));
    const bool light = !inside || modules.row(row)[static_cast<int>(u)] != 0;
    return light != negative ? paper : ink;
}

Label makeLabel(Kind kind, unsigned number) {
    const std::string code = pictures::tagCode(number);
    const bool gs1 = kind == Kind::Gs1Qr || kind == Kind::Gs1DataMatrix || kind == Kind::Gs1Bars;
    Label label;
    label.kind = kind;
    label.text = gs1 ? "010401234567890121" + code : code;
    label.modules = modulesOf(kind, code);
    if (label.modules.height == 1) label.rowHeight = barHeight;
    return label;
}

void soil(Label& label, double share, std::mt19937& random) {
    std::uniform_real_distribution<double> unit(0, 1);
    double left = share * label.wide() * label.high();
    const double most = std::min(label.wide(), label.high()) / 5;
    while (left > 0.3 && label.dirt.size() < 12) {
        const double size = std::min(std::sqrt(left / 3), 0.6 + unit(random) * most);
        const Blot blot{-1 + unit(random) * (label.wide() + 2), -1 + unit(random) * (label.high() + 2),
                        size * (0.6 + 0.8 * unit(random)), size * (0.6 + 0.8 * unit(random)),
                        unit(random) < 0.6 ? label.ink + unit(random) * 60 : label.paper - unit(random) * 60};
        left -= 3.1 * blot.across * blot.along;
        label.dirt.push_back(blot);
    }
}

} // namespace scenes

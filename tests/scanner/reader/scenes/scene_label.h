#pragma once

#include "scanner/grey_picture.h"

#include <random>
#include <string>
#include <vector>

/// Scenes drawn for measuring: printed labels under a moving camera, in good light and in the dark.
namespace scenes {

enum class Kind { Qr, DataMatrix, Code128, Gs1Qr, Gs1DataMatrix, Gs1Bars };

/// As truth.json names it: "QR", "DM", "C128", "GS1-QR", "GS1-DM", "GS1-128".
const char* nameOf(Kind kind);

/// Something that covers a part of a label: an ellipse, in modules.
struct Blot {
    double u, v, across, along;
    double level; ///< grey, 0 to 255
};

/// One printed label. Its symbol comes from libqrencode, ZXing's writer or Zint.
struct Label {
    Kind kind = Kind::Qr;
    std::string text;         ///< element strings without FNC1
    std::string role = "tag"; ///< "nearmiss" when it was destroyed
    std::string damage = "none";
    std::string joinedWith; ///< the other text when two labels were cut and joined
    scanner::GreyPicture modules;
    double rowHeight = 1; ///< modules; bars are higher than wide
    double ink = 45, paper = 205;
    bool negative = false; ///< light on dark
    std::vector<Blot> dirt;

    double wide() const { return modules.width; }                     ///< modules
    double high() const { return modules.height * rowHeight; }        ///< modules
    double quiet() const { return modules.height == 1 ? 10.0 : 4.0; } ///< modules on every side
    /// Grey level at a place in modules from the symbol's top left corner; below 0 beside the label.
    double levelAt(double u, double v) const;
};

/// A whole label with the tag of that number.
Label makeLabel(Kind kind, unsigned number);

/// Blots that leave the symbol within its error correction as a rule: `share` of its area, over borders too.
void soil(Label& label, double share, std::mt19937& random);

} // namespace scenes

#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>

namespace scanner {

/// A point of a picture in pixels; (0, 0) is the outer corner of the top left pixel.
struct Point {
    double x = 0;
    double y = 0;
};

/// Four corners in turn.
using Quad = std::array<Point, 4>;

enum class Symbology : std::uint8_t { Qr, DataMatrix, Code128, Ean13, Ean8, UpcA, UpcE, Code39, Other };

/// Name as the command line prints it: "qr", "data-matrix", "code-128", "ean-13", "ean-8", "upc-a", "upc-e",
/// "code-39"; a symbol of another kind is "other".
const char* nameOf(Symbology symbology);

/// The step of the reader that got the text out; for the picture of what each step adds, and for trust.
enum class HowRead : std::uint8_t {
    Plain,   ///< the general decoder on the frame as it came
    Region,  ///< the general decoder on an enlarged, upright region
    Fitted,  ///< our grid fit, no guesswork
    Guessed, ///< our soft decoder had to guess: believe it only when seen twice
};

/// Name as the command line prints it: "plain", "region", "fitted", "guessed".
const char* nameOf(HowRead howRead);

/// One symbol seen in one picture.
struct SeenCode {
    std::string text; ///< UTF-8; in GS1 element strings FNC1 is the byte 0x1D
    Symbology symbology = Symbology::Other;
    bool gs1 = false; ///< the symbol says that it holds GS1 element strings
    Quad corners{};   ///< top left first, clockwise as the symbol's own reading direction has it
    HowRead howRead = HowRead::Plain;
    /// What is left of its print, 4 (as new) to 0 (about to fail), as far as this picture shows it; of QR
    /// tags and Data Matrix that lie flat. Of several views the best counts: a poor picture is no fault of
    /// the print.
    std::optional<double> printGrade{};
};

/// A tag whose grade is below this is wearing out: a new one should be printed while it can still be read.
inline constexpr double wornPrint = 2;

} // namespace scanner

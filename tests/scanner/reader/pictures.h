#pragma once

#include "scanner/grey_picture.h"

#include <chrono>
#include <string>

/// Pictures for the reader's tests, made by encoders that share no code with the decoders under test.
namespace pictures {

/// What a live reader has for a frame: a camera's 33 ms of processor time, or ten times that in a build with
/// sanitizers, which take about as much.
constexpr std::chrono::milliseconds frameBudget{FRAME_MILLISECONDS};

/// ISO/IEC 7064 MOD 37-2 over ten characters, as the tag design has it.
bool isTag(const std::string& text);
/// A tag code from a number, with its check character; never one of the codes that are not minted.
std::string tagCode(unsigned number);

/// QR level H of ten characters by libqrencode, as all tags of version 1: one byte a module, 0 dark, no quiet
/// zone.
scanner::GreyPicture qrModules(const std::string& text, int version = 1);
/// By ZXing's writer: no quiet zone. "128" gives one row.
scanner::GreyPicture dataMatrixModules(const std::string& text);
scanner::GreyPicture code128Modules(const std::string& text);

/// The same modules in another order: print, but no symbol.
scanner::GreyPicture shuffled(scanner::GreyPicture modules);

/// Any grey value anywhere, the same ones each time.
scanner::GreyPicture noise(int width, int height);

/// Of a QR symbol of version 1: forty modules on the wrong side, less surely than the others are right, which
/// is more than the code mends; the finders are whole.
scanner::GreyPicture smeared(scanner::GreyPicture modules);

/// Each pixel as `factor` × `factor` pixels.
scanner::GreyPicture enlarged(const scanner::GreyPicture& picture, int factor);
/// Rows repeated to a height.
scanner::GreyPicture stretched(const scanner::GreyPicture& row, int height);
/// A light ground with the picture in its middle, turned by degrees.
scanner::GreyPicture onGround(const scanner::GreyPicture& picture, int width, int height, double degrees = 0,
                              std::uint8_t ground = 230);
void paste(scanner::GreyPicture& onto, const scanner::GreyPicture& picture, int left, int top);

} // namespace pictures

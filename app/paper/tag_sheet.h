#pragma once

#include "core/base/result.h"
#include "core/club/club_kit.h"

#include <QString>

#include <filesystem>
#include <functional>
#include <vector>

namespace app {

/// Width of a tag's symbol without its quiet zone, in millimetres, that an A4 sheet can carry and a webcam
/// can read.
inline constexpr double smallestSymbolMm = 8;
inline constexpr double biggestSymbolMm = 120;

/// Writes A4 sheets of tags as PDF: each symbol in vectors at exactly `symbolMm`, its quiet zone, the ten
/// characters in groups beneath, the thing's name and its owner; cut marks, and a bar to measure the print
/// by. Needs a QGuiApplication (any platform). The file is whole or not there: DiskFailed. Returns the number
/// of sheets.
core::Result<int> writeTagSheets(const std::filesystem::path& file, const std::vector<core::TagLabel>& tags,
                                 double symbolMm = 30,
                                 const std::function<void(double share)>& progress = {});

/// From how far a webcam reads a symbol of that width: one sentence, as the sheets' margin has it.
QString tagReachInWords(double symbolMm);

/// The control tags with what each does, to print beside the kit's.
std::vector<core::TagLabel> controlTags();

} // namespace app

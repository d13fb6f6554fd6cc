#pragma once

#include "core/base/result.h"
#include "core/club/club_kit.h"

#include <filesystem>
#include <functional>
#include <vector>

namespace app {

/// Self-adhesive labels on a sheet of A4, by their measures in millimetres. The grid stands in the middle of
/// the sheet, as such papers are cut.
struct LabelPaper {
    double width;  ///< of one label
    double height; ///< of one label
    int columns;
    int rows;
    double acrossPitch; ///< from a label's left edge to the next one's
    double downPitch;   ///< from a label's top edge to the next one's

    int perSheet() const { return columns * rows; }
    double left() const; ///< of the first column
    double top() const;  ///< of the first row
};

/// Common cuts of A4. Common practice, the measures from memory, no source: measure the sheet at hand.
const std::vector<LabelPaper>& labelPapers();

/// The widest symbol (without its quiet zone) that such a label carries with its quiet zone and a millimetre
/// for the printer's aim, in millimetres.
double biggestSymbolOn(const LabelPaper& paper);

/// Writes the tags on label sheets as PDF, symbol, code, name and owner on each label, from the label
/// `firstLabel` (0: top left) on, for a sheet that was begun. The symbol is `symbolMm` wide, at most what the
/// label carries. Needs a QGuiApplication; any thread. The file is whole or as it was: DiskFailed. Returns
/// the number of sheets.
core::Result<int> writeTagsOnLabels(const std::filesystem::path& file,
                                    const std::vector<core::TagLabel>& tags, const LabelPaper& paper,
                                    double symbolMm, int firstLabel = 0,
                                    const std::function<void(double share)>& progress = {});

} // namespace app

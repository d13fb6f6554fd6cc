#pragma once

#include <QFont>
#include <QStringList>

#include <vector>

class QPaintDevice;

namespace app {

struct ListTable;

/// What a column asks for, in the device's dots.
struct ColumnNeed {
    double natural = 0; ///< so that no cell is wrapped
    double least = 0;   ///< so that no usual word is
};

/// Of each column of the table, its heading in bold.
std::vector<ColumnNeed> columnNeeds(const ListTable& table, double points, QPaintDevice* device);
double naturalWidthOf(const std::vector<ColumnNeed>& needs, double gap); ///< with a gap between two

/// The columns' widths within `room`, gaps included: as wide as they ask for, but for the widest, which are
/// cut to one width; none below its least while there is room for that.
std::vector<double> columnWidths(const std::vector<ColumnNeed>& needs, double gap, double room);

/// The text in lines no wider than `width`: between words, and within one that is longer than a line.
QStringList wrappedLines(const QString& text, const QFont& font, QPaintDevice* device, double width);

} // namespace app

#include "app/paper/check_list/sheet_lines.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/lists/list_columns.h"

#include <QFontMetricsF>
#include <QPaintDevice>

#include <algorithm>

namespace app {
namespace {

constexpr std::size_t linesInOnePiece = 8;

constexpr double linePoints = 11, notePoints = 9, headingPoints = 12, titlePoints = 22;
constexpr int boxesInRow = 4;

} // namespace

SheetLines::SheetLines(const Sheet& sheet, QPaintDevice* device, double scale)
    : m_device(device)
    , m_scale(scale)
    , m_mm(device->logicalDpiX() / 25.4)
    , m_side(4 * m_mm * std::max(scale, 0.8)) {
    findBoxes(sheet);
}

/// As wide as the most boxes of one line that stand side by side.
void SheetLines::findBoxes(const Sheet& sheet) {
    int most = 0, mostBehind = 0;
    bool hasBlanks = false;
    for (const SheetEntry& entry : sheet.body) {
        most = std::max(most, std::min(entry.boxes, boxesInRow));
        mostBehind = std::max(mostBehind, std::min(entry.boxesBehind, boxesInRow));
        hasBlanks = hasBlanks || entry.hasBlank || entry.kind == SheetEntry::Kind::Look;
    }
    const double step = m_side + 1.2 * m_mm;
    if (most > 0 || hasBlanks)
        m_before = std::max(most * step, hasBlanks ? (blankMm + 1) * m_mm : 0) + 1.5 * m_mm;
    m_behind = mostBehind * step;
}

double SheetLines::noteSize() const {
    return scaled(notePoints);
}

double SheetLines::heightOf(double points, bool isBold) const {
    return QFontMetricsF(a4::textFont(points, isBold), m_device).lineSpacing() * 1.05;
}

double SheetLines::heightOf(const std::vector<SheetLine>& lines) {
    double height = 0;
    for (const SheetLine& line : lines)
        height += line.above + line.height;
    return height;
}

double SheetLines::widthOf(const QString& words, double points) const {
    return QFontMetricsF(a4::textFont(scaled(points)), m_device).horizontalAdvance(words);
}

SheetLine SheetLines::lineOf(const QString& words, double points, bool isBold) const {
    SheetLine line;
    line.words = words;
    line.points = points;
    line.isBold = isBold;
    line.height = heightOf(points, isBold);
    return line;
}

QStringList SheetLines::wrapped(const QString& words, double points, bool isBold, double width) const {
    return wrappedLines(words, a4::textFont(points, isBold), m_device, width);
}

std::vector<SheetLine> SheetLines::of(const std::vector<SheetEntry>& entries, double width) const {
    std::vector<SheetLine> lines;
    for (const SheetEntry& entry : entries)
        for (SheetLine& line : of(entry, width))
            lines.push_back(std::move(line));
    return lines;
}

std::vector<SheetLine> SheetLines::of(const SheetEntry& entry, double width) const {
    using Kind = SheetEntry::Kind;
    switch (entry.kind) {
    case Kind::Title:
        return plain(entry.words, titlePoints, true, width);
    case Kind::Small:
        return plain(entry.words, smallPoints, false, width);
    case Kind::Heading:
        return heading(entry, width);
    case Kind::ToFill:
        return {toFill(entry)};
    case Kind::Look:
    case Kind::Entry:
        break;
    }
    return entryLines(entry, width);
}

std::vector<SheetLine> SheetLines::plain(const QString& words, double points, bool isBold,
                                         double width) const {
    std::vector<SheetLine> lines;
    for (const QString& each : wrapped(words, points, isBold, width))
        lines.push_back(lineOf(each, points, isBold));
    return lines;
}

std::vector<SheetLine> SheetLines::heading(const SheetEntry& entry, double width) const {
    std::vector<SheetLine> lines = plain(entry.words, scaled(headingPoints), true, width - m_behind);
    for (SheetLine& line : lines)
        line.keepsWithNext = true;
    lines.front().above = 2.6 * m_mm * m_scale;
    lines.back().aside = entry.aside;
    lines.back().hasRule = true;
    lines.back().height += 1.2 * m_mm;
    return lines;
}

SheetLine SheetLines::toFill(const SheetEntry& entry) const {
    SheetLine line = lineOf({}, notePoints);
    line.fields = entry.fields;
    line.above = 3.6 * m_mm;
    return line;
}

/// Its words and its note, which goes behind a short name.
std::vector<SheetLine> SheetLines::texts(const SheetEntry& entry, double width) const {
    std::vector<SheetLine> lines = plain(entry.words, scaled(linePoints), false, width);
    const double both = widthOf(entry.words, linePoints) + noteGap() + widthOf(entry.note, notePoints);
    if (lines.size() == 1 && both <= width) {
        lines.front().behind = entry.note;
        return lines;
    }
    for (const QString& each : wrapped(entry.note, scaled(notePoints), false, width))
        lines.push_back(lineOf(each, scaled(notePoints)));
    return lines;
}

std::vector<SheetLine> SheetLines::entryLines(const SheetEntry& entry, double width) const {
    std::vector<SheetLine> lines =
        texts(entry, width - m_before - (entry.boxesBehind > 0 ? m_behind + m_mm : 0));
    const int boxes = std::max(entry.boxes, entry.boxesBehind);
    while (static_cast<int>(lines.size()) * boxesInRow < boxes)
        lines.push_back(lineOf({}, scaled(linePoints)));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        SheetLine& line = lines[i];
        line.isIndented = true;
        const int above = static_cast<int>(i) * boxesInRow;
        line.boxes = std::clamp(entry.boxes - above, 0, boxesInRow);
        line.boxesBehind = std::clamp(entry.boxesBehind - above, 0, boxesInRow);
        if (line.boxes + line.boxesBehind > 0) line.height = std::max(line.height, m_side + 1.2 * m_mm);
    }
    lines.front().hasBlank = entry.hasBlank;
    lines.front().hasMark = entry.kind == SheetEntry::Kind::Look;
    lines.front().above = 0.9 * m_mm * m_scale;
    // An entry is read in one piece; a very long one only begins so.
    for (std::size_t i = 0; i + 1 < std::min(lines.size(), linesInOnePiece); ++i)
        lines[i].keepsWithNext = true;
    return lines;
}

} // namespace app

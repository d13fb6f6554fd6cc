#pragma once

#include "app/paper/check_list/sheet_flow.h"

#include <QString>
#include <QStringList>

#include <vector>

class QPaintDevice;

namespace app {

/// One line of text on the page, with what stands beside it.
struct SheetLine {
    QString words;
    QString behind = {}; ///< a note that goes into the same line
    double points = 0;
    bool isBold = false;
    double above = 0; ///< dots left free over it
    double height = 0;
    bool keepsWithNext = false;
    int boxes = 0, boxesBehind = 0;
    bool hasBlank = false, hasMark = false, hasRule = false, isIndented = false;
    QString aside = {};
    QStringList fields = {};
};

/// Sets a sheet's entries in lines, in the dots of a device.
class SheetLines {
public:
    static constexpr double smallPoints = 7.5;
    static constexpr double blankMm = 15; ///< the line for a value

    SheetLines(const Sheet& sheet, QPaintDevice* device, double scale);

    std::vector<SheetLine> of(const std::vector<SheetEntry>& entries, double width) const;
    /// Words alone.
    std::vector<SheetLine> plain(const QString& words, double points, bool isBold, double width) const;
    static double heightOf(const std::vector<SheetLine>& lines);

    double mm() const { return m_mm; }
    double boxSide() const { return m_side; }
    double before() const { return m_before; } ///< room for boxes and values before an entry
    double noteGap() const { return 3 * m_mm * m_scale; }
    double noteSize() const; ///< points

private:
    void findBoxes(const Sheet& sheet);
    double scaled(double points) const { return points * m_scale; }
    double heightOf(double points, bool isBold = false) const;
    double widthOf(const QString& words, double points) const;
    SheetLine lineOf(const QString& words, double points, bool isBold = false) const;
    QStringList wrapped(const QString& words, double points, bool isBold, double width) const;
    std::vector<SheetLine> of(const SheetEntry& entry, double width) const;
    std::vector<SheetLine> heading(const SheetEntry& entry, double width) const;
    SheetLine toFill(const SheetEntry& entry) const;
    std::vector<SheetLine> texts(const SheetEntry& entry, double width) const;
    std::vector<SheetLine> entryLines(const SheetEntry& entry, double width) const;

    QPaintDevice* m_device;
    double m_scale;
    double m_mm;                       ///< dots
    double m_side;                     ///< of a box
    double m_before = 0, m_behind = 0; ///< room for boxes
};

} // namespace app

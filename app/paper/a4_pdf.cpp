#include "app/paper/a4_pdf.h"

#include "app/paper/whole_file.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <cmath>

namespace app::a4 {

QFont font(const QString& family, double heightMm) {
    QFont chosen(family);
    chosen.setPixelSize(std::max(1, static_cast<int>(std::lround(heightMm * dotsPerMm))));
    return chosen;
}

QByteArray pdf(const QString& title, const std::function<void(QPdfWriter&)>& draw) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(dotsPerInch);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Tholepin"));
        draw(writer);
    } // the file is finished when the writer goes
    return bytes;
}

QFont textFont(double points, bool bold) {
    // A PDF knows no letters of the glyphs by which Inter draws "3:00" and "2 × 3", nor plain ones of
    // ligatures: nobody could search or copy them.
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setStretch(QFont::SemiCondensed);
    font.setLetterSpacing(QFont::PercentageSpacing, 100.5); // with any, there are no ligatures
    font.setPointSizeF(points);
    font.setBold(bold);
    return font;
}

bool paintPages(QPagedPaintDevice& device, const std::function<void(QPainter&)>& draw, Turned turned) {
    device.setPageSize(QPageSize(QPageSize::A4));
    device.setPageOrientation(turned == Turned::Yes ? QPageLayout::Landscape : QPageLayout::Portrait);
    device.setPageMargins(QMarginsF(sideMargin, topMargin, sideMargin, footMargin), QPageLayout::Millimeter);
    QPainter painter;
    if (!painter.begin(&device)) return false;
    {
        const RoomForFonts room;
        draw(painter);
    }
    return painter.end();
}

bool savePages(const QString& file, const QString& title,
               const std::function<bool(QPagedPaintDevice&)>& paint) {
    bool isPainted = false;
    const QByteArray bytes = pdf(title, [&](QPdfWriter& writer) { isPainted = paint(writer); });
    return isPainted && writeWholeFile(file.toStdString(), bytes, Paper::Sheet);
}

} // namespace app::a4

#include "app/paper/a4_pdf.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPageSize>
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

} // namespace app::a4

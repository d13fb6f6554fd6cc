#include "app/desk/camera/camera_view.h"

#include "app/desk/look/dress.h"
#include "app/desk/look/palette.h"
#include "app/desk/look/type_scale.h"

#include <QPainter>

#include <algorithm>

namespace app {

CameraView::CameraView(QWidget* parent)
    : QWidget(parent) {
    setObjectName("cameraView");
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setSizePolicy(policy);
    setMinimumSize(240, 135);
    setAccessibleName(tr("camera picture"));
}

QSize CameraView::sizeHint() const {
    return {640, 360};
}

void CameraView::setPicture(const QImage& picture) {
    m_picture = picture;
    update();
}

void CameraView::setOutlines(std::vector<TagOutline> outlines) {
    m_outlines = std::move(outlines);
    update();
}

void CameraView::setMirrored(bool mirrored) {
    m_mirrored = mirrored;
    update();
}

void CameraView::setMessage(const QString& title, const QString& text) {
    m_title = title;
    m_text = text;
    setAccessibleDescription(title + QLatin1Char(' ') + text);
    update();
}

void CameraView::setAdvice(const QString& advice) {
    m_advice = advice;
    setAccessibleDescription(advice);
    update();
}

void CameraView::clearPicture() {
    m_picture = QImage();
    m_advice.clear();
    m_outlines.clear();
    update();
}

QRectF CameraView::pictureRect() const {
    QSizeF size = m_picture.size();
    size.scale(QSizeF(width(), height()), Qt::KeepAspectRatio);
    return {QPointF((width() - size.width()) / 2, 0), size};
}

void CameraView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (m_picture.isNull()) {
        paintMessage(painter);
        return;
    }
    const QRectF picture = pictureRect();
    painter.save();
    if (m_mirrored) {
        painter.translate(2 * picture.center().x(), 0);
        painter.scale(-1, 1);
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(picture, m_picture);
    painter.restore();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const TagOutline& outline : m_outlines)
        paintOutline(painter, outline, picture);
    if (!m_advice.isEmpty()) paintAdvice(painter);
}

void CameraView::paintAdvice(QPainter& painter) const {
    const Palette& palette = currentPalette();
    const QFont font = fontOf(TextRole::Remark);
    const QFontMetrics metrics(font);
    const int inset = 2 * spaceUnit;
    const int side = metrics.capHeight();
    const QRect line(0, height() - metrics.height() - inset, width(), metrics.height() + inset);
    painter.fillRect(line, palette.panel);
    paintMark(painter, Mark::Look, QRectF(inset, line.center().y() - side / 2.0, side, side), palette.look);
    painter.setFont(font);
    painter.setPen(palette.ink);
    const QRect words = line.adjusted(2 * inset + side, 0, -inset, 0);
    painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft,
                     metrics.elidedText(m_advice, Qt::ElideRight, words.width()));
}

void CameraView::paintMessage(QPainter& painter) const {
    const Palette& palette = currentPalette();
    painter.fillRect(rect(), palette.panel);
    const QRect inner = rect().adjusted(3 * spaceUnit, 2 * spaceUnit, -3 * spaceUnit, -2 * spaceUnit);
    painter.setPen(palette.ink);
    painter.setFont(fontOf(TextRole::Heading));
    const QRect title = painter.boundingRect(inner, Qt::TextWordWrap, m_title);
    painter.drawText(inner, Qt::TextWordWrap, m_title);
    painter.setPen(palette.quiet);
    painter.setFont(fontOf(TextRole::Remark));
    painter.drawText(inner.adjusted(0, title.height() + spaceUnit, 0, 0), Qt::TextWordWrap, m_text);
}

void CameraView::paintOutline(QPainter& painter, const TagOutline& outline, const QRectF& picture) const {
    // Always the light theme's deep tones on white: the picture, not the theme, is the ground here.
    const Palette& palette = paletteOf("light");
    QPolygonF corners;
    for (const QPointF& corner : outline.corners) {
        const double x = m_mirrored ? 1 - corner.x() : corner.x();
        corners << QPointF(picture.left() + x * picture.width(),
                           picture.top() + corner.y() * picture.height());
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, 7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolygon(corners);
    painter.setPen(QPen(toneOf(outline.mark, palette), 4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolygon(corners);
    if (outline.label.isEmpty()) return;

    QFont font = fontOf(TextRole::Footnote);
    font.setBold(true);
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    const double markSide = metrics.capHeight();
    const QSizeF size(metrics.horizontalAdvance(outline.label) + markSide + 26, metrics.height() + 6);
    const QRectF bounds = corners.boundingRect();
    QRectF label(QPointF(bounds.center().x() - size.width() / 2, bounds.bottom() + 4), size);
    label.moveLeft(
        std::clamp(label.left(), picture.left(), std::max(picture.left(), picture.right() - size.width())));
    label.moveBottom(std::min(label.bottom(), picture.bottom()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::white);
    painter.drawRect(label);
    const QRectF mark(label.left() + 8, label.center().y() - markSide / 2, markSide, markSide);
    paintMark(painter, outline.mark, mark, toneOf(outline.mark, palette));
    painter.setPen(palette.ink);
    painter.drawText(label.adjusted(markSide + 16, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, outline.label);
}

} // namespace app

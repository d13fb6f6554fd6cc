#include "app/gui/camera/camera_view.h"

#include "app/gui/camera/label_places.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QLineF>
#include <QPainter>

#include <algorithm>

namespace app {
namespace {

/// Always the light theme's deep tones on white: the picture, not the theme, is the ground of an outline.
const Palette& outlinePalette() {
    return paletteOf("light");
}

/// A line with a white edge, so that it is seen on any picture.
template <class Draw>
void paintEdged(QPainter& painter, const QColor& tone, double width, Draw draw) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, width + 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    draw();
    painter.setPen(QPen(tone, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    draw();
}

/// Where the words stand that are there instead of a picture.
QRect innerOf(const QRect& view) {
    return view.adjusted(3 * spaceUnit, spaceUnit, -3 * spaceUnit, -spaceUnit);
}

/// The box with what a tag is, and its mark.
class LabelPainter {
public:
    explicit LabelPainter(QPainter& painter)
        : m_painter(painter)
        , m_font(boldFootnote())
        , m_metrics(m_font) {}

    QSizeF sizeOf(const QString& label) const {
        if (label.isEmpty()) return {};
        return {m_metrics.horizontalAdvance(label) + m_metrics.capHeight() + 26, m_metrics.height() + 6};
    }

    void paint(const QRectF& box, const TagOutline& outline) const {
        const Palette& palette = outlinePalette();
        const double side = m_metrics.capHeight();
        m_painter.fillRect(box, Qt::white);
        paintMark(m_painter, outline.mark, QRectF(box.left() + 8, box.center().y() - side / 2, side, side),
                  toneOf(outline.mark, palette));
        m_painter.setFont(m_font);
        m_painter.setPen(palette.ink);
        m_painter.drawText(box.adjusted(side + 16, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, outline.label);
    }

private:
    static QFont boldFootnote() {
        QFont font = fontOf(TextRole::Footnote);
        font.setBold(true);
        return font;
    }

    QPainter& m_painter;
    QFont m_font;
    QFontMetricsF m_metrics;
};

} // namespace

CameraView::CameraView(QWidget* parent)
    : QWidget(parent) {
    setObjectName("cameraView");
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setSizePolicy(policy);
    setMinimumSize(240, 96);
    setAccessibleName(tr("camera picture"));
}

QSize CameraView::sizeHint() const {
    return {640, 360};
}

int CameraView::heightForWidth(int width) const {
    // On a small screen the picture gives way to what stands about it, and words become smaller.
    constexpr int mostOfLeast = 120, mostOfWords = 180;
    if (!m_picture.isNull()) return std::min(mostOfLeast, width * 9 / 16);
    const QRect inner = innerOf(QRect(0, 0, width, QWIDGETSIZE_MAX));
    const auto heightOf = [&](TextRole role, const QString& words) {
        return QFontMetrics(fontOf(role)).boundingRect(inner, Qt::TextWordWrap, words).height();
    };
    const int words = heightOf(TextRole::Heading, m_title) + heightOf(TextRole::Remark, m_text);
    return std::min(mostOfWords, words + 3 * spaceUnit);
}

void CameraView::setPicture(const QImage& picture) {
    const bool isOther = m_picture.isNull() != picture.isNull();
    m_picture = picture;
    if (isOther) updateGeometry(); // words need another height
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
    updateGeometry();
    update();
}

void CameraView::setAdvice(const QString& advice) {
    m_advice = advice;
    setAccessibleDescription(advice);
    update();
}

void CameraView::clearPicture() {
    m_advice.clear();
    m_outlines.clear();
    setPicture({});
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
    paintOutlines(painter, picture);
    if (!m_advice.isEmpty()) paintAdvice(painter);
}

int CameraView::adviceHeight() const {
    return m_advice.isEmpty() ? 0 : QFontMetrics(fontOf(TextRole::Remark)).height() + 2 * spaceUnit;
}

void CameraView::paintAdvice(QPainter& painter) const {
    const Palette& palette = currentPalette();
    const QFont font = fontOf(TextRole::Remark);
    const QFontMetrics metrics(font);
    const int inset = 2 * spaceUnit;
    const int side = metrics.capHeight();
    const QRect line(0, height() - adviceHeight(), width(), adviceHeight());
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
    const QRect inner = innerOf(rect());
    painter.setPen(palette.ink);
    painter.setFont(fontOf(TextRole::Heading));
    const QRect title = painter.boundingRect(inner, Qt::TextWordWrap, m_title);
    painter.drawText(inner, Qt::TextWordWrap, m_title);
    painter.setPen(palette.quiet);
    const QRect room = inner.adjusted(0, title.height() + spaceUnit, 0, 0);
    painter.setFont(fontOf(TextRole::Remark));
    if (!room.contains(painter.boundingRect(room, Qt::TextWordWrap, m_text)))
        painter.setFont(fontOf(TextRole::Footnote)); // in a small window
    painter.drawText(room, Qt::TextWordWrap, m_text);
}

QPolygonF CameraView::cornersOf(const TagOutline& outline, const QRectF& picture) const {
    QPolygonF corners;
    for (const QPointF& corner : outline.corners) {
        const double x = m_mirrored ? 1 - corner.x() : corner.x();
        corners << QPointF(picture.left() + x * picture.width(),
                           picture.top() + corner.y() * picture.height());
    }
    return corners;
}

/// All outlines first, for no label may hide under one.
void CameraView::paintOutlines(QPainter& painter, const QRectF& picture) const {
    const Palette& palette = outlinePalette();
    const LabelPainter labels(painter);
    std::vector<LabelledTag> tags;
    for (const TagOutline& outline : m_outlines) {
        tags.push_back({cornersOf(outline, picture), labels.sizeOf(outline.label)});
        paintEdged(painter, toneOf(outline.mark, palette), 4,
                   [&] { painter.drawPolygon(tags.back().corners); });
    }
    const QRectF room(picture.topLeft(), QSizeF(picture.width(), picture.height() - adviceHeight()));
    const std::vector<QRectF> places = labelPlaces(tags, room);
    for (std::size_t i = 0; i < tags.size(); ++i) {
        const QLineF leader = places[i].isNull() ? QLineF() : leaderOf(places[i], tags[i].corners);
        if (!leader.isNull())
            paintEdged(painter, toneOf(m_outlines[i].mark, palette), 3, [&] { painter.drawLine(leader); });
    }
    for (std::size_t i = 0; i < tags.size(); ++i)
        if (!places[i].isNull()) labels.paint(places[i], m_outlines[i]);
}

} // namespace app

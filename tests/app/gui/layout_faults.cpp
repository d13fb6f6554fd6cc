#include "tests/app/gui/layout_faults.h"

#include "tests/app/gui/shown_texts.h"

#include <QAbstractScrollArea>
#include <QHeaderView>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QTextEdit>

namespace support {
namespace {

constexpr double slack = 1.5; ///< pixels that nobody sees: rounding, and the soft edges of letters

/// Hears of each text and draws nothing.
class TextEngine : public QPaintEngine {
public:
    explicit TextEngine(QList<PaintedText>& texts)
        : QPaintEngine(AllFeatures)
        , m_texts(texts) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    Type type() const override { return User; }
    void updateState(const QPaintEngineState&) override {}
    void drawRects(const QRect*, int) override {}
    void drawRects(const QRectF*, int) override {}
    void drawLines(const QLine*, int) override {}
    void drawLines(const QLineF*, int) override {}
    void drawEllipse(const QRect&) override {}
    void drawEllipse(const QRectF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPoints(const QPoint*, int) override {}
    void drawPoints(const QPointF*, int) override {}
    void drawPolygon(const QPoint*, int, PolygonDrawMode) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawTiledPixmap(const QRectF&, const QPixmap&, const QPointF&) override {}
    void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        const QString words = item.text().trimmed();
        if (words.isEmpty()) return;
        const QTransform onto = painter()->combinedTransform();
        const QRectF ink = QFontMetricsF(item.font()).tightBoundingRect(item.text()).translated(at);
        const QRectF everywhere(-1e6, -1e6, 2e6, 2e6);
        m_texts << PaintedText{words, onto.mapRect(ink),
                               painter()->hasClipping() ? onto.mapRect(painter()->clipBoundingRect())
                                                        : everywhere};
    }

private:
    QList<PaintedText>& m_texts;
};

class TextDevice : public QPaintDevice {
public:
    TextDevice(QSize size, QList<PaintedText>& texts)
        : m_size(size)
        , m_engine(texts) {}
    QPaintEngine* paintEngine() const override { return &m_engine; }

protected:
    int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
        case PdmWidth:
            return m_size.width();
        case PdmHeight:
            return m_size.height();
        case PdmWidthMM:
            return m_size.width() * 254 / 960;
        case PdmHeightMM:
            return m_size.height() * 254 / 960;
        case PdmNumColors:
            return 0;
        case PdmDepth:
            return 32;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        default:
            return 96;
        }
    }

private:
    QSize m_size;
    mutable TextEngine m_engine;
};

/// The scroll area whose window on its content that is; null: it is none.
const QAbstractScrollArea* areaOf(const QWidget& viewport) {
    const auto* area = qobject_cast<const QAbstractScrollArea*>(viewport.parentWidget());
    return area && area->viewport() == &viewport ? area : nullptr;
}

bool scrolls(const QScrollBar& bar) {
    return bar.minimum() < bar.maximum();
}

/// What of the widget can come into view: in a direction that is scrolled, all of it.
QRectF reachableOf(const QWidget& widget) {
    QRectF room = widget.rect();
    const auto* area = areaOf(widget);
    if (!area || qobject_cast<const QScrollArea*>(area)) return room;
    const auto* table = qobject_cast<const QHeaderView*>(area)
                            ? qobject_cast<const QAbstractScrollArea*>(area->parentWidget())
                            : area;
    if (scrolls(*table->horizontalScrollBar())) room.adjust(-1e6, 0, 1e6, 0);
    if (scrolls(*area->verticalScrollBar())) room.adjust(0, -1e6, 0, 1e6);
    return room;
}

QString nameOf(const QWidget& widget) {
    const QWidget* named = &widget;
    while (named->objectName().isEmpty() || named->objectName().startsWith("qt_"))
        if (!(named = named->parentWidget())) return widget.metaObject()->className();
    return QString(widget.metaObject()->className()) + ' ' + named->objectName();
}

/// Somebody's own words in a field scroll as they are written.
bool isWritten(const QWidget& widget) {
    if (qobject_cast<const QTextEdit*>(widget.parentWidget())) return true; // a document in pages of its own
    const auto* field = qobject_cast<const QLineEdit*>(&widget);
    return field && !field->text().isEmpty();
}

/// Where a view scrolls, what is let through is its place on the screen, not an edge of the words.
bool isCut(const PaintedText& text, const QRectF& reachable, const QRectF& widget) {
    QRectF room = text.room;
    if (reachable.width() > widget.width()) room.adjust(-1e6, 0, 1e6, 0);
    if (reachable.height() > widget.height()) room.adjust(0, -1e6, 0, 1e6);
    return !room.intersected(reachable).adjusted(-slack, -slack, slack, slack).contains(text.box);
}

/// Dots where the text that is meant has more, and no tool tip says the rest. A table's row opens what it is
/// of.
bool isShortened(const QString& words, const QStringList& meant, const QWidget& widget) {
    const auto dots = words.indexOf(QChar(0x2026));
    if (dots < 0 || (dots >= 7 && qobject_cast<const QTableView*>(widget.parentWidget()))) return false;
    if (widget.toolTip().startsWith(words.left(dots))) return false;
    return std::none_of(meant.begin(), meant.end(),
                        [&](const QString& each) { return each.contains(words); });
}

bool areOver(const QRectF& a, const QRectF& b) {
    const QRectF both = a.intersected(b);
    return both.width() > 2 * slack && both.height() > 2 * slack;
}

void collectOutside(const QWidget& widget, QStringList& faults) {
    const QWidget* parent = widget.parentWidget();
    if (parent->objectName() == "columnMeanings") return; // follows a table that is scrolled
    if (areaOf(*parent) || widget.size().isEmpty() || parent->rect().contains(widget.geometry())) return;
    faults << nameOf(widget) + " reaches out of " + nameOf(*parent);
}

void collectSideways(const QWidget& widget, QStringList& faults) {
    const auto* area = qobject_cast<const QScrollArea*>(&widget);
    if (area && scrolls(*area->horizontalScrollBar()))
        faults << QStringLiteral("%1 must be scrolled sideways by %2")
                      .arg(nameOf(*area))
                      .arg(area->horizontalScrollBar()->maximum());
}

QString inWords(const PaintedText& text) {
    const auto words = [](const QRectF& box) {
        return QStringLiteral("%1 to %2, %3 to %4")
            .arg(box.left(), 0, 'f', 0)
            .arg(box.right(), 0, 'f', 0)
            .arg(box.top(), 0, 'f', 0)
            .arg(box.bottom(), 0, 'f', 0);
    };
    return " (" + words(text.box) + " in " + words(text.room) + ')';
}

/// A label or button that got no room at all paints nothing.
void collectSqueezed(const QWidget& widget, QStringList& faults) {
    const auto* label = qobject_cast<const QLabel*>(&widget);
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    const QString words = label ? label->text() : button ? button->text() : QString();
    if (!words.isEmpty() && widget.size().isEmpty()) faults << nameOf(widget) + " has no room: " + words;
}

QRectF inView(const QWidget& widget, const QRectF& box, const QWidget& root) {
    QRectF seen = box.intersected(widget.rect());
    for (const QWidget* at = &widget; at != &root; at = at->parentWidget()) {
        seen.translate(at->pos());
        seen = seen.intersected(at->parentWidget()->rect());
    }
    return seen;
}

} // namespace

QList<PaintedText> textsPaintedBy(QWidget& widget) {
    QList<PaintedText> texts;
    TextDevice device(widget.size(), texts);
    widget.render(&device, QPoint(), QRegion(), QWidget::RenderFlags{});
    return texts;
}

QStringList layoutFaultsIn(QWidget& root) {
    QStringList faults;
    const QStringList meant = textsIn(root);
    QList<PaintedText> seen;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->isWindow() || widget->window() != root.window()) continue;
        if (qobject_cast<QScrollBar*>(widget)) continue;
        collectOutside(*widget, faults);
        collectSideways(*widget, faults);
        collectSqueezed(*widget, faults);
        if (widget->size().isEmpty()) continue;
        for (const PaintedText& text : textsPaintedBy(*widget)) {
            if (!isWritten(*widget) && isCut(text, reachableOf(*widget), widget->rect()))
                faults << nameOf(*widget) + " is cut: " + text.words + inWords(text);
            if (!isWritten(*widget) && isShortened(text.words, meant, *widget))
                faults << nameOf(*widget) + " is shortened: " + text.words;
            if (qobject_cast<const QTextEdit*>(widget->parentWidget())) continue;
            const QRectF box = inView(*widget, text.box, root);
            for (const PaintedText& other : seen)
                if (areOver(box, other.box) && !(box == other.box && text.words == other.words))
                    faults << nameOf(*widget) + " stands over another text: " + text.words + " | " +
                                  other.words;
            seen << PaintedText{text.words, box, {}};
        }
    }
    faults.removeDuplicates();
    return faults;
}

} // namespace support

#include "app/gui/board/boat_strip.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace app {
namespace {

constexpr int markColumn = 56;
constexpr int inset = 3 * spaceUnit;
constexpr int mostReasons = 3;
constexpr int leastWords = 240; ///< with less beside them what comes next stands beneath them

} // namespace

struct BoatStrip::Layout {
    QRect name;
    QRect next;
    QRect condition;
    QRect reasons;
    int height = 0;
};

BoatStrip::BoatStrip(const BoatWords& words, QWidget* parent)
    : QAbstractButton(parent)
    , m_words(words) {
    setObjectName("boatStrip " + words.boat);
    setText(words.boat);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("%1: %2. Opens: %3").arg(words.boat, words.condition, words.next));
    setAccessibleDescription(words.reasons.join(' '));
}

QStringList BoatStrip::shownReasons() const {
    if (m_words.reasons.size() <= mostReasons) return m_words.reasons;
    QStringList shown = m_words.reasons.mid(0, mostReasons - 1);
    shown << tr("and %1 more").arg(m_words.reasons.size() - shown.size());
    return shown;
}

BoatStrip::Layout BoatStrip::layOut(int width) const {
    const QFontMetrics name(fontOf(TextRole::BoatName));
    const QFontMetrics condition(fontOf(TextRole::KitLine));
    const QFontMetrics remark(fontOf(TextRole::Remark));
    const int left = inset + markColumn;
    const int nextWidth = remark.horizontalAdvance(m_words.next) + 5 * spaceUnit;
    const bool isNextBeneath = width - left - nextWidth - 2 * inset < leastWords;
    const int textWidth = width - left - (isNextBeneath ? inset : nextWidth + 2 * inset);
    Layout layout;
    int y = 2 * spaceUnit;
    layout.name = QRect(left, y, textWidth, name.height());
    y += name.height();
    const auto tall = [&](const QFontMetrics& metrics, const QString& text) {
        return metrics.boundingRect(QRect(0, 0, textWidth, 4000), Qt::TextWordWrap, text).height();
    };
    layout.condition = QRect(left, y, textWidth, tall(condition, m_words.condition));
    y += layout.condition.height();
    const QString reasons = shownReasons().join('\n');
    if (!reasons.isEmpty()) {
        y += spaceUnit / 2;
        layout.reasons = QRect(left, y, textWidth, tall(remark, reasons));
        y += layout.reasons.height();
    }
    layout.height = std::max(y + 2 * spaceUnit, fingerHeight() + 4 * spaceUnit);
    layout.next = QRect(width - inset - nextWidth, 0, nextWidth, layout.height);
    if (isNextBeneath) {
        layout.next = QRect(left, layout.height - 2 * spaceUnit, width - left - inset, fingerHeight() / 2);
        layout.height += fingerHeight() / 2;
    }
    return layout;
}

QSize BoatStrip::sizeHint() const {
    return {800, layOut(800).height};
}

void BoatStrip::resizeEvent(QResizeEvent* event) {
    QAbstractButton::resizeEvent(event);
    setFixedHeight(layOut(width()).height); // words wrap to the width
}

void BoatStrip::paintEvent(QPaintEvent*) {
    const Palette& palette = currentPalette();
    const Layout layout = layOut(width());
    QPainter painter(this);
    painter.fillRect(rect(), underMouse() || isDown() ? palette.ground : palette.panel);
    const QRectF mark(inset, layout.name.center().y() - 13, 28, 28);
    paintMark(painter, m_words.mark, mark, toneOf(m_words.mark, palette));
    painter.setPen(palette.ink);
    painter.setFont(fontOf(TextRole::BoatName));
    painter.drawText(layout.name, Qt::AlignLeft | Qt::AlignVCenter, m_words.boat);
    painter.setFont(fontOf(TextRole::KitLine));
    painter.setPen(m_words.mark == Mark::Look ? palette.look : palette.ink);
    painter.drawText(layout.condition, Qt::TextWordWrap, m_words.condition);
    painter.setFont(fontOf(TextRole::Remark));
    painter.setPen(palette.quiet);
    painter.drawText(layout.reasons, Qt::TextWordWrap, shownReasons().join('\n'));
    painter.setPen(palette.ink);
    QFont next = fontOf(TextRole::Remark);
    next.setUnderline(true);
    painter.setFont(next);
    painter.drawText(layout.next, Qt::AlignRight | Qt::AlignVCenter, m_words.next);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(hasFocus() ? palette.focus : palette.line, hasFocus() ? 3 : 1));
    painter.drawRect(hasFocus() ? rect().adjusted(1, 1, -2, -2) : rect().adjusted(0, 0, -1, -1));
}

} // namespace app

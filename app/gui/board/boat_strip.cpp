#include "app/gui/board/boat_strip.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int markColumn = 56;
constexpr int inset = 3 * spaceUnit;
constexpr int mostLines = 2;    ///< of a reason until the rest is asked for
constexpr int leastWords = 240; ///< with less beside them what comes next stands beneath them

int heightOf(const QFontMetrics& metrics, const QString& text, int width) {
    return metrics.boundingRect(QRect(0, 0, width, 4000), Qt::TextWordWrap, text).height();
}

bool isLong(const QString& reason, int width) {
    const QFontMetrics metrics(fontOf(TextRole::Remark));
    return 2 * heightOf(metrics, reason, width) > (2 * mostLines + 1) * metrics.lineSpacing();
}

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
    , m_words(words)
    , m_more(new QToolButton(this)) {
    setObjectName("boatStrip " + words.boat);
    setText(words.boat);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_Hover);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("%1: %2. Opens: %3").arg(words.boat, words.condition, words.next));
    setAccessibleDescription(words.reasons.join(' '));
    m_more->setObjectName("boatReasonsButton");
    m_more->setFocusPolicy(Qt::StrongFocus);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, inset, spaceUnit);
    layout->addStretch(1);
    layout->addWidget(m_more, 0, Qt::AlignRight);
    connect(m_more, &QToolButton::clicked, this, [this] { setOpen(!m_isOpen); });
    setOpen(false);
}

void BoatStrip::setOpen(bool open) {
    m_isOpen = open;
    const auto rest = m_words.reasons.size() - 1;
    m_more->setText(open ? tr("Less") : rest > 0 ? tr("and %1 more").arg(rest) : tr("All of it"));
    m_more->setAccessibleName(open ? tr("%1: only the first reason").arg(m_words.boat)
                                   : tr("%1: all reasons").arg(m_words.boat));
    fit();
    update();
}

bool BoatStrip::hasMore(int width) const {
    if (m_words.reasons.size() != 1) return m_words.reasons.size() > 1;
    return isLong(m_words.reasons.front(), width);
}

QString BoatStrip::shownReasons(int width) const {
    if (m_isOpen || m_words.reasons.isEmpty()) return m_words.reasons.join('\n');
    const QString& first = m_words.reasons.front();
    if (!isLong(first, width)) return first;
    const int mostly = (mostLines - 1) * width + width / 2; // a line may end before its last word
    return QFontMetrics(fontOf(TextRole::Remark)).elidedText(first, Qt::ElideRight, mostly);
}

BoatStrip::Layout BoatStrip::layOut(int width) const {
    const QFontMetrics name(fontOf(TextRole::BoatName));
    const QFontMetrics condition(fontOf(TextRole::KitLine));
    const QFontMetrics remark(fontOf(TextRole::Remark));
    const int left = inset + markColumn;
    const int nextWidth = std::max(remark.horizontalAdvance(m_words.next) + spaceUnit,
                                   m_more->sizeHint().width() + 2 * spaceUnit);
    const bool isNextBeneath = width - left - nextWidth - 2 * inset < leastWords;
    const int textWidth = width - left - (isNextBeneath ? inset : nextWidth + 2 * inset);
    Layout layout;
    int y = 2 * spaceUnit;
    layout.name = QRect(left, y, textWidth, name.height());
    y += name.height();
    layout.condition = QRect(left, y, textWidth, heightOf(condition, m_words.condition, textWidth));
    y += layout.condition.height();
    const QString reasons = shownReasons(textWidth);
    if (!reasons.isEmpty()) {
        y += spaceUnit / 2;
        layout.reasons = QRect(left, y, textWidth, heightOf(remark, reasons, textWidth));
        y += layout.reasons.height();
    }
    layout.height = std::max(y + 2 * spaceUnit, fingerHeight() + 4 * spaceUnit);
    const int more = hasMore(textWidth) ? m_more->sizeHint().height() + spaceUnit : 0;
    if (isNextBeneath) {
        layout.next = QRect(left, layout.height - 2 * spaceUnit, width - left - inset, fingerHeight() / 2);
        layout.height += fingerHeight() / 2 + more;
        return layout;
    }
    layout.height = std::max(layout.height, more + fingerHeight());
    layout.next = QRect(width - inset - nextWidth, 0, nextWidth, layout.height - more);
    return layout;
}

QSize BoatStrip::sizeHint() const {
    return {800, layOut(800).height};
}

void BoatStrip::resizeEvent(QResizeEvent* event) {
    QAbstractButton::resizeEvent(event);
    fit();
}

/// Words wrap to the width.
void BoatStrip::fit() {
    const Layout layout = layOut(width());
    m_more->setVisible(hasMore(layout.condition.width()));
    setFixedHeight(layout.height);
}

void BoatStrip::keyPressEvent(QKeyEvent* event) {
    const bool more = event->key() == Qt::Key_Right;
    if (more || event->key() == Qt::Key_Left) return setOpen(more);
    QAbstractButton::keyPressEvent(event);
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
    painter.drawText(layout.reasons, Qt::TextWordWrap, shownReasons(layout.reasons.width()));
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

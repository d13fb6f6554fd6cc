#include "app/gui/gear/tags/tag_ruler.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/paper/tag_symbol.h"
#include "app/text/words.h"

#include <QPainter>

#include <algorithm>

namespace app {

TagRuler::TagRuler(QWidget* parent)
    : QWidget(parent) {
    setObjectName("tagRuler");
    setMinimumSize(260, 280);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void TagRuler::setTag(const std::string& code, double symbolMm) {
    m_code = code;
    m_symbolMm = symbolMm;
    setAccessibleName(
        tr("a tag as printed: the symbol is %1 mm wide, with its white border %2 mm")
            .arg(numberInWords(symbolMm), QString::number(symbolMm * zoneModules / symbolModules, 'f', 1)));
    update();
}

void TagRuler::paintEvent(QPaintEvent*) {
    if (m_code.empty()) return;
    const Palette& palette = currentPalette();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double ruler = 64, letters = 34;
    const double side = std::min<double>(width() - 8, height() - ruler - letters - 8);
    const double perMm = side * symbolModules / zoneModules / m_symbolMm;
    const double module = m_symbolMm / symbolModules * perMm;
    const QRectF paper((width() - side) / 2, 4, side, side + letters);
    // A tag is black on white in every theme, as on paper.
    painter.fillRect(paper, Qt::white);
    painter.setPen(QPen(palette.line, 1));
    painter.drawRect(paper);
    drawSymbol(painter, paper.topLeft(), module, m_code);
    painter.setPen(Qt::black);
    painter.setFont(fontOf(TextRole::Code));
    painter.drawText(QRectF(paper.left(), paper.top() + side - 6, side, letters), Qt::AlignCenter,
                     codeInWords(m_code));
    // Beneath, the symbol's width in millimetres.
    const double left = paper.left() + quietModules * module, top = paper.bottom() + 10;
    painter.setPen(QPen(palette.ink, 2));
    painter.drawLine(QPointF(left, top), QPointF(left + m_symbolMm * perMm, top));
    for (int mm = 0; mm <= static_cast<int>(m_symbolMm); ++mm) {
        const double x = left + mm * perMm;
        painter.drawLine(QPointF(x, top), QPointF(x, top + (mm % 10 == 0 ? 16 : mm % 5 == 0 ? 11 : 6)));
    }
    painter.setFont(fontOf(TextRole::Footnote));
    painter.drawText(QRectF(left - 40, top + 18, m_symbolMm * perMm + 80, 28), Qt::AlignCenter,
                     tr("%1 mm").arg(numberInWords(m_symbolMm)));
}

} // namespace app

#include "app/gui/widgets/plain_header.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/cell_painter.h"
#include "app/gui/widgets/plain_table.h"

#include <QPainter>

#include <algorithm>

namespace app {
namespace {

constexpr int sortMark = 20; ///< its width

/// As the cells', in bold.
QFont headingFont(const QWidget* table) {
    if (!static_cast<const PlainTable*>(table)->isSmall()) return fontOf(TextRole::Heading);
    QFont font = fontOf(TextRole::Footnote);
    font.setBold(true);
    return font;
}

/// A triangle that points to the smaller end.
void drawSorted(QPainter& painter, const QRect& rect, bool isBackwards) {
    const QPointF middle(rect.right() - 12, rect.center().y());
    const double up = isBackwards ? -1 : 1;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(currentPalette().ink);
    painter.drawPolygon(
        QPolygonF({middle + QPointF(-7, 5 * up), middle + QPointF(7, 5 * up), middle + QPointF(0, -6 * up)}));
}

} // namespace

PlainHeader::PlainHeader(QWidget* parent)
    : QHeaderView(Qt::Horizontal, parent) {
    setSectionsClickable(false);
    setHighlightSections(false);
    setFocusPolicy(Qt::NoFocus);
}

bool PlainHeader::setWrapped(bool wrapped) {
    if (m_isWrapped == wrapped) return false;
    m_isWrapped = wrapped;
    headerDataChanged(Qt::Horizontal, 0, count() - 1); // forgets its height
    return true;
}

void PlainHeader::setSorted(int section, bool isBackwards) {
    m_sorted = section;
    m_isBackwards = isBackwards;
    viewport()->update();
}

int PlainHeader::widthOf(int section, bool wrapped) const {
    const QFontMetrics metrics(headingFont(parentWidget()));
    const QString words = model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString();
    int width = 0;
    for (const QString& part : wrapped ? words.split(' ') : QStringList{words})
        width = std::max(width, metrics.horizontalAdvance(part));
    return width + 2 * CellPainter::margin + 4 + (sectionsClickable() ? sortMark : 0);
}

void PlainHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
    const Palette& palette = currentPalette();
    painter->save();
    painter->fillRect(rect, palette.ground);
    painter->setPen(palette.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    painter->setFont(headingFont(parentWidget()));
    painter->setPen(palette.quiet);
    painter->drawText(rect.adjusted(CellPainter::margin, 0, -CellPainter::margin, 0),
                      model()->headerData(section, Qt::Horizontal, Qt::TextAlignmentRole).toInt() |
                          (m_isWrapped ? Qt::TextWordWrap : 0),
                      model()->headerData(section, Qt::Horizontal, Qt::DisplayRole).toString());
    if (section == m_sorted) drawSorted(*painter, rect, m_isBackwards);
    painter->restore();
}

QSize PlainHeader::sectionSizeFromContents(int section) const {
    const int oneLine = static_cast<const PlainTable*>(parentWidget())->isSmall() ? 32 : 40;
    return {widthOf(section, m_isWrapped),
            m_isWrapped ? oneLine + QFontMetrics(headingFont(parentWidget())).lineSpacing() : oneLine};
}

} // namespace app

#include "app/gui/gear/office/page_names.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"

#include <QEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace app {
namespace {

constexpr int highest = 60;
constexpr int lowest = 36;

/// The page shown has a bar before its name and bold type; the ring is the keyboard's.
class NamePainter : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Palette& palette = currentPalette();
        const auto* names = static_cast<const QListWidget*>(parent());
        const bool isShown = index.row() == names->currentRow();
        painter->save();
        if (isShown) {
            painter->fillRect(option.rect, palette.ground);
            painter->fillRect(QRect(option.rect.topLeft(), QSize(6, option.rect.height())), palette.ink);
        }
        QRect box = option.rect.adjusted(2 * spaceUnit, 0, -spaceUnit, 0);
        painter->setFont(fontOf(TextRole::Footnote));
        painter->setPen(palette.quiet);
        painter->drawText(box, Qt::AlignRight | Qt::AlignVCenter, index.data(PageNames::KeysRole).toString());
        painter->setFont(fontOf(isShown ? TextRole::Heading : TextRole::Remark));
        painter->setPen(palette.ink);
        painter->drawText(box, Qt::AlignLeft | Qt::AlignVCenter, index.data().toString());
        if (isShown && names->hasFocus()) {
            painter->setPen(QPen(palette.focus, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            painter->drawRect(option.rect.adjusted(2, 2, -3, -3));
        }
        painter->restore();
    }

    /// As high as lets all names be seen at once.
    QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const auto* names = static_cast<const QListWidget*>(parent());
        const int share = names->viewport()->height() / std::max(1, index.model()->rowCount());
        return {names->viewport()->width(), std::clamp(share, lowest, highest)};
    }
};

} // namespace

PageNames::PageNames(QWidget* parent)
    : QListWidget(parent) {
    setItemDelegate(new NamePainter(this));
    setSelectionMode(QAbstractItemView::NoSelection);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setResizeMode(QListView::Adjust);
}

void PageNames::changeEvent(QEvent* event) {
    QListWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) viewport()->update();
}

void PageNames::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    scheduleDelayedItemsLayout();
}

} // namespace app

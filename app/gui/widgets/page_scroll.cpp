#include "app/gui/widgets/page_scroll.h"

#include <QEvent>
#include <QScrollBar>

namespace app {
namespace {

constexpr QSize leastPlace(320, 240);

} // namespace

PageScroll::PageScroll(QWidget* page, QWidget* parent)
    : QScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus); // what the page holds has the keyboard, and is scrolled to
    setWidget(page);
}

QSize PageScroll::minimumSizeHint() const {
    return leastPlace;
}

/// Each bar takes room from the other direction.
void PageScroll::fit() {
    const QSize least = widget()->minimumSizeHint();
    QSize place = maximumViewportSize();
    if (least.height() > place.height()) place.rwidth() -= verticalScrollBar()->sizeHint().width();
    if (least.width() > place.width()) place.rheight() -= horizontalScrollBar()->sizeHint().height();
    widget()->resize(least.expandedTo(place));
}

bool PageScroll::eventFilter(QObject* watched, QEvent* event) {
    if (watched == widget() && event->type() == QEvent::LayoutRequest) fit();
    return QScrollArea::eventFilter(watched, event);
}

void PageScroll::resizeEvent(QResizeEvent* event) {
    fit();
    QScrollArea::resizeEvent(event);
}

} // namespace app

#include "app/gui/gear/manifests/side_scroll.h"

#include <QApplication>
#include <QEvent>
#include <QLayout>
#include <QResizeEvent>
#include <QScrollBar>

#include <algorithm>

namespace app {
namespace {

constexpr int leastHeight = 120; ///< a field and the next one's edge

} // namespace

SideScroll::SideScroll(QWidget* held, QWidget* parent)
    : QScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus); // what it holds has the keyboard, and is scrolled to
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    setWidget(held);
}

int SideScroll::heightOfHeld() const {
    const QLayout* layout = widget()->layout();
    return layout->hasHeightForWidth() ? layout->totalHeightForWidth(viewport()->width())
                                       : layout->totalSizeHint().height();
}

QSize SideScroll::sizeHint() const {
    return {minimumSizeHint().width(), heightOfHeld()};
}

QSize SideScroll::minimumSizeHint() const {
    // With room for the bar, so that nothing is cut at its side when it comes.
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
            std::min(leastHeight, heightOfHeld())};
}

bool SideScroll::eventFilter(QObject* watched, QEvent* event) {
    if (watched == widget() && event->type() == QEvent::LayoutRequest) updateGeometry();
    return QScrollArea::eventFilter(watched, event);
}

void SideScroll::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) updateGeometry();
    if (event->size().height() >= event->oldSize().height()) return;
    QWidget* typed = QApplication::focusWidget(); // what is said beneath must not hide it
    if (typed != nullptr && widget()->isAncestorOf(typed)) ensureWidgetVisible(typed);
}

} // namespace app

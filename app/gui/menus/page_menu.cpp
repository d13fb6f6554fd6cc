#include "app/gui/menus/page_menu.h"

#include <QApplication>
#include <QEvent>
#include <QPushButton>
#include <QTimer>

namespace app {
namespace {

/// F10 opens menus by custom, and Shift+F10 that of the place; the others type nothing, so that neither a
/// code nor a number is meant.
constexpr int functionKeys[] = {1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 12};

/// As its tooltip, unless it has one of its own; anew when the page got other buttons before it.
void tellKeys(QPushButton& button, const QKeySequence& keys) {
    constexpr const char* told = "toldKeys";
    if (!button.toolTip().isEmpty() && button.toolTip() != button.property(told).toString()) return;
    button.setToolTip(keys.toString(QKeySequence::NativeText));
    button.setProperty(told, button.toolTip());
}

} // namespace

PageMenu::PageMenu(QWidget* parent)
    : QMenu(tr("This &page"), parent) {
    setObjectName("pageMenu");
    qApp->installEventFilter(this);
    connect(this, &QMenu::aboutToShow, this, &PageMenu::refresh);
    refresh();
}

void PageMenu::showPage(QWidget* page) {
    m_page = page;
    refresh();
    refreshSoon(); // a page that is about to be shown has its buttons in view then
}

QKeySequence PageMenu::keysOf(std::size_t place) {
    constexpr std::size_t count = std::size(functionKeys);
    if (place >= 2 * count) return {};
    return QKeySequence(QStringLiteral("%1F%2")
                            .arg(place < count ? QStringLiteral("Shift+") : QStringLiteral("Ctrl+Shift+"))
                            .arg(functionKeys[place % count]));
}

bool PageMenu::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::Show:
    case QEvent::Hide:
    case QEvent::EnabledChange:
    case QEvent::Paint: // of new words, among others: a text tells no event of its own
        if (const auto* button = qobject_cast<QPushButton*>(watched);
            button && m_page && m_page->isAncestorOf(button))
            refreshSoon();
        break;
    default:
        break;
    }
    return false;
}

/// Once for all that happens together.
void PageMenu::refreshSoon() {
    if (m_isStale) return;
    m_isStale = true;
    QTimer::singleShot(0, this, &PageMenu::refresh);
}

std::vector<PageMenu::Line> PageMenu::linesOfPage() const {
    std::vector<Line> lines;
    if (!m_page) return lines;
    std::size_t place = 0;
    for (QWidget* at = m_page->nextInFocusChain(); at != m_page; at = at->nextInFocusChain()) {
        auto* button = qobject_cast<QPushButton*>(at);
        if (!button || !m_page->isAncestorOf(button)) continue;
        const QKeySequence keys = keysOf(place++);
        if (button->isVisible()) lines.push_back({button, keys});
    }
    return lines;
}

void PageMenu::refresh() {
    m_isStale = false;
    const std::vector<Line> lines = linesOfPage();
    if (lines != m_lines) build(lines);
    const QList<QAction*> lineActions = actions();
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        QAction* action = lineActions[static_cast<qsizetype>(i)];
        action->setText(m_lines[i].button->text());
        action->setEnabled(m_lines[i].button->isEnabled());
    }
    menuAction()->setEnabled(!m_lines.empty());
}

void PageMenu::build(const std::vector<Line>& lines) {
    for (QAction* action : actions()) {
        removeAction(action);
        action->deleteLater(); // it may be what is being done just now
    }
    m_lines = lines;
    for (const Line& line : lines) {
        QAction* action = addAction(line.button->text());
        action->setShortcut(line.keys);
        connect(action, &QAction::triggered, line.button, [button = line.button] {
            if (!button || !button->isVisible() || !button->isEnabled()) return;
            button->setFocus(Qt::ShortcutFocusReason); // as a press does, and pages go on from there
            button->click();
        });
        tellKeys(*line.button, line.keys);
        connect(line.button, &QObject::destroyed, this, &PageMenu::refreshSoon, Qt::UniqueConnection);
    }
}

} // namespace app

#include "app/gui/help/help_page.h"

#include "app/gui/help/help_places.h"
#include "app/gui/theme/language.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"

#include <QAbstractTextDocumentLayout>
#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>
#include <QTextBlock>
#include <QTextBrowser>
#include <QTimer>
#include <QUrl>
#include <QVBoxLayout>

#include <utility>

namespace app {

HelpPage::HelpPage(QWidget* parent)
    : QWidget(parent)
    , m_text(new QTextBrowser(this))
    , m_said(new SaidLabel("helpSaidLabel", this)) {
    setObjectName("helpPage");
    build();
    connect(m_text, &QTextBrowser::anchorClicked, this, &HelpPage::follow);
    auto* escape = new QShortcut(Qt::Key_Escape, this);
    escape->setContext(Qt::WidgetWithChildrenShortcut);
    connect(escape, &QShortcut::activated, this, &HelpPage::leaveWanted);
}

void HelpPage::build() {
    constexpr int widestText = 900; // pixels: lines that an eye can follow
    m_text->setObjectName("helpText");
    m_text->setAccessibleName(tr("the help of the page"));
    m_text->setFont(fontOf(TextRole::Footnote));
    m_text->setOpenLinks(false);
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setMaximumWidth(widestText);
    auto* back = wordsButton(this, tr("Back"), "helpBackButton", true);
    connect(back, &QPushButton::clicked, this, &HelpPage::leaveWanted);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_said, 1);
    foot->addWidget(back);
    auto* middle = new QHBoxLayout;
    middle->addStretch(1);
    middle->addWidget(m_text, 100);
    middle->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(3 * spaceUnit, 2 * spaceUnit, 3 * spaceUnit, spaceUnit);
    column->setSpacing(spaceUnit);
    column->addLayout(middle, 1);
    column->addLayout(foot);
    setFocusProxy(m_text);
}

void HelpPage::showPage(const QString& id) {
    const HelpPlace place = helpOf(id, spokenLanguage());
    open(place.document, slugOf(place.heading));
}

void HelpPage::sayOfScan(const QString& sentence) {
    m_said->say(sentence, true);
}

void HelpPage::open(const QString& document, const QString& heading) {
    m_said->say({});
    if (document != m_document) m_text->setMarkdown(helpDocument(document));
    m_document = document;
    m_heading = heading;
    if (isVisible()) scroll();
}

/// Links have the tone that the theme had when the text was taken in.
void HelpPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::PaletteChange || m_document.isEmpty()) return;
    open(std::exchange(m_document, {}), m_heading);
}

/// The text has its width, and so its lines, only when it is in view.
void HelpPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    QTimer::singleShot(0, this, &HelpPage::scroll);
}

void HelpPage::scroll() {
    const QTextBlock block = blockOf(m_heading);
    m_text->setTextCursor(QTextCursor(block));
    m_text->verticalScrollBar()->setValue(
        static_cast<int>(m_text->document()->documentLayout()->blockBoundingRect(block).top()));
}

/// The first block when no heading is called so.
QTextBlock HelpPage::blockOf(const QString& heading) const {
    for (QTextBlock block = m_text->document()->begin(); block.isValid(); block = block.next())
        if (block.blockFormat().headingLevel() > 0 && slugOf(block.text()) == heading) return block;
    return m_text->document()->begin();
}

QString HelpPage::heading() const {
    return m_text->textCursor().block().text();
}

void HelpPage::follow(const QUrl& link) {
    const QString document = link.path().isEmpty() ? m_document : link.path();
    if (!link.scheme().isEmpty() || helpDocument(document).isEmpty())
        return m_said->say(tr("%1 is not part of the help.").arg(link.toString()), true);
    open(document, link.fragment());
}

} // namespace app

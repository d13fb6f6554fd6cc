#include "app/gui/check/log_panel.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLayoutItem>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int mostOfWindow = 3; // a third of it

} // namespace

LogPanel::LogPanel(QWidget* parent)
    : QFrame(parent)
    , m_lines(new QWidget(this))
    , m_done(wordsLabel(nullptr, "quiet", "logDoneLabel"))
    , m_scroll(new QScrollArea(this))
    , m_summary(wordsLabel(this, "quiet", "logSummaryLabel"))
    , m_readButton(new QPushButton(this)) {
    setObjectName("logPanel");
    setProperty("role", "panel");
    setAccessibleName(tr("the boat's log"));
    m_readButton->setObjectName("logReadButton");
    m_readButton->setProperty("role", "plain");
    m_lineLayout = new QVBoxLayout(m_lines);
    m_lineLayout->setContentsMargins(0, 0, 0, 0);
    m_lineLayout->setSpacing(0);

    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, spaceUnit, 0);
    column->setSpacing(0);
    column->addWidget(m_lines);
    column->addWidget(m_done);
    m_scroll->setObjectName("logScroll");
    m_scroll->setAccessibleName(tr("the boat's log"));
    m_scroll->setWidget(inside);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->viewport()->setAutoFillBackground(false);
    inside->setAutoFillBackground(false);

    auto* foot = new QHBoxLayout;
    foot->addWidget(m_summary, 1);
    foot->addWidget(m_readButton);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(3 * spaceUnit, spaceUnit, spaceUnit, 0);
    layout->setSpacing(0);
    layout->addWidget(m_scroll);
    layout->addLayout(foot);
    connect(m_readButton, &QPushButton::clicked, this, [this] { setRead(!m_read); });
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
}

void LogPanel::addLine(const QString& text, const char* role) {
    auto* label = new QLabel(text, m_lines);
    label->setProperty("role", role);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    m_lineLayout->addWidget(label);
}

void LogPanel::addEntry(const core::LogEntry& entry) {
    const QString text = app::text(entry.text);
    const QString by = app::text(entry.by);
    addLine(text, "heading");
    QString written = by.isEmpty() ? tr("Written %1.").arg(inWords(entry.day))
                                   : tr("Written %1, %2.").arg(inWords(entry.day), by);
    if (entry.severity == core::Severity::Stop)
        written += QLatin1Char(' ') + tr("It stops the boat until it is closed.");
    addLine(written, "quiet");
}

void LogPanel::setEntries(const std::vector<core::LogEntry>& entries) {
    const auto same = [](const core::LogEntry& a, const core::LogEntry& b) {
        return a.id == b.id && a.closed == b.closed;
    };
    if (!m_entries.empty() &&
        std::equal(entries.begin(), entries.end(), m_entries.begin(), m_entries.end(), same))
        return;
    m_entries = entries;
    while (QLayoutItem* item = m_lineLayout->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_open = static_cast<int>(std::count_if(entries.begin(), entries.end(),
                                            [](const core::LogEntry& entry) { return !entry.closed; }));
    for (int i = 0; i < m_open; ++i)
        addEntry(entries[static_cast<std::size_t>(i)]);
    m_done->setText(lastDoneInWords());
    setRead(m_open == 0);
}

QString LogPanel::summaryInWords() const {
    if (m_open == 0) return tr("The boat's log: no open entry.");
    return tr("The boat's log: %1.")
        .arg(counted(m_open, QT_TRANSLATE_N_NOOP("Words", "%n open entry"),
                     QT_TRANSLATE_N_NOOP("Words", "%n open entries")));
}

/// What was done about the entry that was closed last.
QString LogPanel::lastDoneInWords() const {
    if (static_cast<std::size_t>(m_open) >= m_entries.size()) return {};
    const core::LogEntry& last = m_entries[static_cast<std::size_t>(m_open)];
    return tr("Done %1: %2").arg(last.closed ? inWords(*last.closed) : QString(), text(last.closing));
}

void LogPanel::setRead(bool read) {
    m_read = read;
    m_lines->setVisible(!read);
    m_done->setVisible(!m_done->text().isEmpty());
    m_summary->setText(read ? summaryInWords() : QString());
    m_readButton->setText(read ? tr("Show") : tr("Read"));
    m_readButton->setAccessibleName(read ? tr("Show the boat's log") : tr("I have read the boat's log"));
    m_readButton->setVisible(!m_entries.empty());
    fit();
    update();
}

/// As high as its words, up to a part of the window; what is beyond is scrolled to, also by the keyboard.
void LogPanel::fit() {
    QWidget* inside = m_scroll->widget();
    inside->layout()->activate();
    const int least = inside->layout()->isEmpty() ? 0 : inside->layout()->heightForWidth(m_scroll->width());
    const int all = m_lines->isHidden() && m_done->isHidden() ? 0 : std::max(least, 0);
    const int most = std::max(window()->height() / mostOfWindow, 4 * fontMetrics().height());
    m_scroll->setFixedHeight(std::min(all, most));
    m_scroll->setFocusPolicy(all > most ? Qt::StrongFocus : Qt::NoFocus);
}

void LogPanel::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    fit();
}

void LogPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), currentPalette().panel);
    if (m_open > 0) painter.fillRect(0, 0, 7, height(), currentPalette().look);
}

} // namespace app

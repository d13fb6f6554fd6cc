#include "app/gui/check/log_panel.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/marks.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QLayoutItem>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int mostOpen = 2;

/// One line of it, however long the text.
class ElidedLabel : public QLabel {
public:
    explicit ElidedLabel(QWidget* parent)
        : QLabel(parent) {
        setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(currentPalette().quiet);
        painter.setFont(fontOf(TextRole::Remark));
        painter.drawText(rect(), Qt::AlignVCenter | Qt::AlignLeft,
                         QFontMetrics(painter.font()).elidedText(text(), Qt::ElideRight, width()));
    }
};

} // namespace

LogPanel::LogPanel(QWidget* parent)
    : QFrame(parent)
    , m_lines(new QWidget(this))
    , m_summary(new ElidedLabel(this))
    , m_readButton(new QPushButton(this)) {
    setObjectName("logPanel");
    setProperty("role", "panel");
    setAccessibleName(tr("the boat's log"));
    m_readButton->setObjectName("logReadButton");
    m_readButton->setProperty("role", "plain");
    m_lineLayout = new QVBoxLayout(m_lines);
    m_lineLayout->setContentsMargins(0, 0, 0, 0);
    m_lineLayout->setSpacing(0);

    auto* foot = new QHBoxLayout;
    foot->addWidget(m_summary, 1);
    foot->addWidget(m_readButton);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(3 * spaceUnit, spaceUnit, spaceUnit, 0);
    layout->setSpacing(0);
    layout->addWidget(m_lines);
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
    for (int i = 0; i < std::min(m_open, mostOpen); ++i)
        addEntry(entries[i]);
    if (m_open > mostOpen)
        addLine(counted(m_open - mostOpen, QT_TRANSLATE_N_NOOP("Words", "and %n more, in the boat's log"),
                        QT_TRANSLATE_N_NOOP("Words", "and %n more, in the boat's log")),
                "quiet");
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
    const QString summary = read ? summaryInWords() : lastDoneInWords();
    m_summary->setText(summary);
    m_summary->setToolTip(summary);
    m_readButton->setText(read ? tr("Show") : tr("Read"));
    m_readButton->setAccessibleName(read ? tr("Show the boat's log") : tr("I have read the boat's log"));
    m_readButton->setVisible(!m_entries.empty());
    updateGeometry();
    update();
}

void LogPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), currentPalette().panel);
    if (m_open > 0) painter.fillRect(0, 0, 7, height(), currentPalette().look);
}

} // namespace app

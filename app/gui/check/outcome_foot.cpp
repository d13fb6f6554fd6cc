#include "app/gui/check/outcome_foot.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/marks.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/text/sentences.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QStyle>

#include <algorithm>

namespace app {
namespace {

constexpr int leastSentence = 360; ///< with less beside the buttons it stands above them

/// One mark and the sentence beside it, in at most two lines: what does not fit is counted.
class Sentence : public QLabel {
public:
    explicit Sentence(QWidget* parent)
        : QLabel(parent) {
        setTextFormat(Qt::PlainText);
        setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
        setMinimumHeight(2 * QFontMetrics(fontOf(TextRole::Outcome)).height());
    }

    QSize sizeHint() const override { return {leastSentence, minimumHeight()}; }
    QSize minimumSizeHint() const override { return sizeHint(); }

    Mark mark = Mark::StillToFind;

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        const QRect box = rect().adjusted(44, 0, 0, 0);
        QFont font = fontOf(TextRole::Outcome);
        QString shown = fitted(QFontMetrics(font), box.width());
        if (!isWithin(QFontMetrics(font), box.width(),
                      shown)) { // in a narrow window, in a language of long words
            font = fontOf(TextRole::Heading);
            shown = fitted(QFontMetrics(font), box.width());
        }
        const QFontMetrics metrics(font);
        const QRect used = metrics.boundingRect(box, Qt::TextWordWrap | Qt::AlignVCenter, shown);
        const double line = metrics.height();
        paintMark(painter, mark, QRectF(4, used.top() + (line - 24) / 2, 24, 24),
                  toneOf(mark, currentPalette()));
        painter.setFont(font);
        painter.setPen(currentPalette().ink);
        painter.drawText(box, Qt::TextWordWrap | Qt::AlignVCenter, shown);
    }

private:
    static bool isWithin(const QFontMetrics& metrics, int width, const QString& words) {
        const QRect used = metrics.boundingRect(QRect(0, 0, width, 1000), Qt::TextWordWrap, words);
        return used.height() <= 2 * metrics.height() + 2 && used.width() <= width;
    }

    QString fitted(const QFontMetrics& metrics, int width) const {
        QStringList parts = text().split(QStringLiteral(", "));
        const auto all = parts.size();
        QString words = text();
        while (parts.size() > 1 && !isWithin(metrics, width, words)) {
            parts.removeLast();
            words = OutcomeFoot::tr("%1 and %2 more")
                        .arg(parts.join(QStringLiteral(", ")))
                        .arg(all - parts.size());
        }
        return words;
    }
};

void setRole(QPushButton& button, const char* role) {
    button.setProperty("role", role);
    button.style()->unpolish(&button);
    button.style()->polish(&button);
}

} // namespace

OutcomeFoot::OutcomeFoot(QWidget* parent)
    : QWidget(parent)
    , m_sentence(new Sentence(this))
    , m_sign(new QPushButton(this))
    , m_later(new QPushButton(tr("Save for later"), this))
    , m_letGo(new QPushButton(this)) {
    setObjectName("outcomeFoot");
    m_sentence->setObjectName("outcomeLabel");
    m_sign->setObjectName("signButton");
    m_later->setObjectName("saveForLaterButton");
    m_letGo->setObjectName("letGoButton");
    m_letGo->setProperty("role", "plain");
    setTouched(false);
    auto* layout = new FlowLayout(this);
    layout->setContentsMargins(2 * spaceUnit, spaceUnit, 2 * spaceUnit, spaceUnit);
    layout->addExpanding(m_sentence);
    QHBoxLayout* buttons = layout->addRow();
    for (QPushButton* button : {m_sign, m_later, m_letGo})
        buttons->addWidget(button);
    connect(m_sign, &QPushButton::clicked, this, &OutcomeFoot::signPressed);
    connect(m_later, &QPushButton::clicked, this, &OutcomeFoot::saveForLaterPressed);
    connect(m_letGo, &QPushButton::clicked, this, &OutcomeFoot::letGoPressed);
}

void OutcomeFoot::setAnswer(const core::CheckAnswer& answer) {
    static_cast<Sentence*>(m_sentence)->mark =
        answer.outcome == core::CheckOutcome::Complete ? Mark::Found : Mark::Look;
    m_sentence->setText(outcomeOf(answer).replace(QStringLiteral(" × "), QStringLiteral("\u00a0×\u00a0")));
    m_sentence->setAccessibleName(outcomeOf(answer));
    m_sentence->setToolTip(outcomeOf(answer));
    m_sentence->update();
    const bool incomplete = answer.outcome == core::CheckOutcome::Incomplete;
    const bool urgent = incomplete && answer.phase == core::Phase::Launch;
    m_sign->setText(urgent ? tr("Urgent: launch incomplete…") : tr("Sign…"));
    // The usual way carries the weight: a check that is short waits, a complete one is signed.
    setRole(*m_sign, incomplete ? "other" : "usual");
    setRole(*m_later, incomplete ? "usual" : "other");
}

void OutcomeFoot::setTouched(bool isTouched) {
    // Short, for the sentence beside it is what counts; the panel that it opens says the rest.
    m_letGo->setText(isTouched ? tr("Close…") : tr("Discard"));
    m_letGo->setToolTip(isTouched ? tr("Close unsigned, for a reason")
                                  : tr("Nothing is recorded in it yet: leave it"));
    m_letGo->setAccessibleDescription(m_letGo->toolTip());
}

void OutcomeFoot::showButtons(bool shown) {
    m_sign->setVisible(shown);
    m_later->setVisible(shown);
    m_letGo->setVisible(shown);
}

void OutcomeFoot::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), currentPalette().panel);
}

} // namespace app

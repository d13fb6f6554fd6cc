#include "app/desk/check/outcome_foot.h"

#include "app/common/sentences.h"
#include "app/desk/look/dress.h"
#include "app/desk/look/marks.h"
#include "app/desk/look/palette.h"
#include "app/desk/look/type_scale.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStyle>

namespace app {
namespace {

/// A box that shows one mark.
class MarkBox : public QWidget {
public:
    explicit MarkBox(QWidget* parent) : QWidget(parent) { setFixedSize(32, 32); }

    Mark mark = Mark::StillToFind;

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        paintMark(painter, mark, QRectF(rect()).adjusted(4, 4, -4, -4), toneOf(mark, currentPalette()));
    }
};

void setRole(QPushButton& button, const char* role) {
    button.setProperty("role", role);
    button.style()->unpolish(&button);
    button.style()->polish(&button);
}

Mark markOf(const core::CheckAnswer& answer) {
    return answer.outcome == core::CheckOutcome::Complete ? Mark::Found : Mark::Look;
}

} // namespace

OutcomeFoot::OutcomeFoot(QWidget* parent)
    : QWidget(parent)
    , m_sentence(new QLabel(this))
    , m_markBox(new MarkBox(this))
    , m_sign(new QPushButton(this))
    , m_later(new QPushButton(tr("Save for later"), this)) {
    setObjectName("outcomeFoot");
    m_sentence->setObjectName("outcomeLabel");
    m_sentence->setProperty("role", "outcome");
    m_sentence->setWordWrap(true);
    m_sentence->setTextFormat(Qt::PlainText);
    m_sign->setObjectName("signButton");
    m_later->setObjectName("saveForLaterButton");
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(3 * spaceUnit, spaceUnit, 3 * spaceUnit, spaceUnit);
    layout->setSpacing(2 * spaceUnit);
    layout->addWidget(m_markBox);
    layout->addWidget(m_sentence, 1);
    layout->addWidget(m_sign);
    layout->addWidget(m_later);
    connect(m_sign, &QPushButton::clicked, this, &OutcomeFoot::signPressed);
    connect(m_later, &QPushButton::clicked, this, &OutcomeFoot::saveForLaterPressed);
    setMinimumHeight(fingerHeight() + 4 * spaceUnit);
}

void OutcomeFoot::setAnswer(const core::CheckAnswer& answer) {
    static_cast<MarkBox*>(m_markBox)->mark = markOf(answer);
    m_markBox->update();
    m_sentence->setText(outcomeOf(answer));
    m_sentence->setAccessibleName(outcomeOf(answer));
    const bool incomplete = answer.outcome == core::CheckOutcome::Incomplete;
    const bool urgent = incomplete && answer.phase == core::Phase::Launch;
    m_sign->setText(urgent ? tr("Urgent: launch short…") : tr("Sign…"));
    // The usual way carries the weight: a launch that is short waits, everything else is signed.
    setRole(*m_sign, urgent ? "other" : "usual");
    setRole(*m_later, urgent ? "usual" : "other");
}

void OutcomeFoot::showButtons(bool shown) {
    m_sign->setVisible(shown);
    m_later->setVisible(shown);
}

QString OutcomeFoot::sentence() const {
    return m_sentence->text();
}

void OutcomeFoot::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), currentPalette().panel);
}

} // namespace app

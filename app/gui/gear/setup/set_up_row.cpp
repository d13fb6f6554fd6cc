#include "app/gui/gear/setup/set_up_row.h"

#include "app/gui/gear/setup/set_up_words.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/marks.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QStyle>

namespace app {
namespace {

constexpr int markColumn = 48;
constexpr int markSide = 24;

} // namespace

SetUpRow::SetUpRow(core::SetUpStep step, QWidget* parent)
    : QWidget(parent)
    , m_tick{step}
    , m_title(wordsLabel(this, "heading", "setUpTitleLabel"))
    , m_state(wordsLabel(this, "quiet", "setUpStateLabel"))
    , m_button(wordsButton(this, pressInWords(step), "setUpStepButton")) {
    setObjectName(QStringLiteral("setUpRow %1").arg(static_cast<int>(step)));
    m_button->setObjectName(QStringLiteral("setUpButton %1").arg(static_cast<int>(step)));
    m_button->setMinimumWidth(240); // the buttons stand in a column
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(m_title);
    words->addWidget(m_state);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(markColumn, spaceUnit / 2, 0, spaceUnit / 2);
    row->setSpacing(2 * spaceUnit);
    row->addLayout(words, 1);
    row->addWidget(m_button);
    connect(m_button, &QPushButton::clicked, this, &SetUpRow::pressed);
}

void SetUpRow::setTick(const core::SetUpTick& tick) {
    m_tick = tick;
    const QString step = withCapital(stepInWords(tick.step));
    m_title->setText(tick.isDone ? tr("%1: done").arg(step) : tr("%1: still to do").arg(step));
    m_state->setText(stateInWords(tick));
    update();
}

void SetUpRow::setUsual(bool isUsual) {
    m_button->setProperty("role", isUsual ? "usual" : "");
    m_button->style()->unpolish(m_button);
    m_button->style()->polish(m_button);
}

void SetUpRow::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Palette& palette = currentPalette();
    const Mark mark = m_tick.isDone ? Mark::Found : Mark::StillToFind;
    paintMark(painter, mark, QRectF(0, m_title->geometry().center().y() - markSide / 2.0, markSide, markSide),
              toneOf(mark, palette));
    painter.setPen(palette.line);
    painter.drawLine(rect().bottomLeft(), rect().bottomRight());
}

} // namespace app

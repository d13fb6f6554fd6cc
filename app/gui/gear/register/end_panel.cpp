#include "app/gui/gear/register/end_panel.h"

#include "app/gui/gear/register/written_cell.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {
namespace {

/// The day that was typed, by the description of the column that it is written to.
std::optional<core::CalendarDay> dayTyped(core::Named named, const QString& typed) {
    return core::CalendarDay::parse(asInSheet(*core::sheetOf(named), "until", typed));
}

} // namespace

EndPanel::EndPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "endPanel", parent)
    , m_question(wordsLabel(this, "remark", "endQuestionLabel"))
    , m_day(wordsEdit(this, "endDayEdit", tr("its last day here")))
    , m_understood(wordsLabel(this, "footnote", "endDayUnderstoodLabel"))
    , m_keep(wordsButton(this, tr("It stays"), "endKeepButton"))
    , m_end(wordsButton(this, tr("No longer here"), "endButton", true)) {
    build();
    connect(m_day, &QLineEdit::textChanged, this, &EndPanel::adapt);
    connect(m_day, &QLineEdit::returnPressed, this, [this] { m_end->setFocus(Qt::TabFocusReason); });
    connect(m_keep, &QPushButton::clicked, this, &EndPanel::kept);
    connect(m_end, &QPushButton::clicked, this, &EndPanel::end);
    hide();
}

void EndPanel::build() {
    auto* about = wordsLabel(this, "quiet", "endAboutLabel");
    about->setText(
        tr("From the day after it is in no list to choose from, on no board and in no plan. What is "
           "recorded stays. Empty “here until” to bring it back."));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    buttons->addWidget(m_keep);
    buttons->addStretch(1);
    buttons->addWidget(m_end);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_question);
    layout->addWidget(m_day);
    layout->addWidget(m_understood);
    layout->addWidget(about);
    layout->addWidget(saidLabel("endSaidLabel"));
    layout->addLayout(buttons);
    layout->addStretch(1);
}

bool EndPanel::isFor(core::SheetId sheet) {
    return core::sheet(sheet).indexOf("until") >= 0;
}

void EndPanel::ask(core::SheetId sheet, const core::Cells& row) {
    m_named = *core::namedIn(core::sheet(sheet), 0);
    m_name = row[0];
    m_question->setText(tr("Which is the last day of “%1”?").arg(text(m_name)));
    m_day->setText(text(today().iso()));
    say({});
    adapt();
    show();
    m_day->setFocus(Qt::OtherFocusReason);
    m_day->selectAll();
}

void EndPanel::adapt() {
    m_understood->setText(understoodDay(m_day->text()));
    m_end->setEnabled(dayTyped(m_named, m_day->text()).has_value());
}

void EndPanel::end() {
    const auto day = dayTyped(m_named, m_day->text());
    if (!day) return;
    write([named = m_named, name = m_name,
           day = *day](core::Club& club, const std::string& by,
                       core::Moment moment) { return club.register_().end(named, name, day, by, moment); },
          [this, day = *day](const std::string& name) {
              emit ended(tr("“%1” is here until %2.").arg(text(name), inWords(day)));
          });
}

void EndPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit kept();
    else
        GearPart::keyPressEvent(event);
}

} // namespace app

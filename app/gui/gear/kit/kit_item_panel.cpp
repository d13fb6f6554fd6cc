#include "app/gui/gear/kit/kit_item_panel.h"

#include "app/gui/gear/kit/item_record_panel.h"
#include "app/gui/gear/kit/kit_change_panel.h"
#include "app/gui/gear/kit/tag_delivery.h"
#include "app/gui/gear/kit/write_off_choice.h"
#include "app/gui/gear/manifests/side_scroll.h"
#include "app/gui/gear/photos/photo_strip.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/part_stack.h"
#include "app/gui/widgets/reason_form.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/cautions.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

namespace app {
namespace {

/// From this width on there is room for what can be done beside the lines.
constexpr int widthForBoth = 840;

} // namespace

std::optional<ItemAnswer> readItem(const core::Club& club, const std::string& code, core::CalendarDay today) {
    auto record = club.kit().itemRecord(code);
    if (!record) return std::nullopt;
    ItemAnswer answer{std::move(*record), {}, {}, {}, {}};
    const std::string& own = answer.record.item.id;
    for (const core::KitType& kitType : club.register_().kitTypes())
        if (kitType.name == answer.record.item.kitType)
            answer.dues = core::dueDatesOf(answer.record, kitType, today);
    if (const auto log = club.log().entries())
        for (const core::LogEntry& entry : *log)
            if (entry.item.id == own && !entry.closed) answer.openLog.push_back(entry);
    if (auto history = club.answers().history(own)) answer.history = std::move(history).value();
    if (const auto labels = club.kit().tagLabels({own}); labels && !labels->empty())
        answer.print = labels->front().print;
    return answer;
}

KitItemPanel::KitItemPanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "kitItemPanel", parent)
    , m_name(wordsLabel(this, "heading", "kitNameLabel"))
    , m_tag(wordsLabel(this, "remark", "kitTagLabel"))
    , m_state(wordsLabel(this, "remark", "kitStateLabel"))
    , m_about(wordsLabel(this, "quiet", "kitAboutLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_views(new PartStack(this))
    , m_body(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_changing(new KitChangePanel(tools(), m_views))
    , m_change(wordsButton(this, tr("Change…"), "kitChangeButton"))
    , m_print(wordsButton(this, tr("Its tag as PDF…"), "kitPrintButton"))
    , m_newTag(wordsButton(this, tr("New tag"), "kitNewTagButton"))
    , m_releaseCaution(wordsLabel(this, "footnote", "kitReleaseCautionLabel"))
    , m_release(wordsButton(this, tr("Release: it was put right"), "kitReleaseButton", true))
    , m_writeOff(new WriteOffChoice("kitWriteOff", this))
    , m_reinstate(new ReasonForm("kitReinstate",
                                 tr("Written off by mistake, or found again? Say why it is back."),
                                 tr("Reinstate it"), this))
    , m_record(new ItemRecordPanel(tools(), this))
    , m_photos(new PhotoStrip(tools(), this)) {
    build();
    connect(m_record, &ItemRecordPanel::settled, this, &KitItemPanel::settle);
    connect(m_record, &ItemRecordPanel::said, this, &KitItemPanel::say);
    connect(m_photos, &PhotoStrip::settled, this, &KitItemPanel::settle);
    connect(m_photos, &PhotoStrip::said, this, &KitItemPanel::say);
    connect(m_change, &QPushButton::clicked, this, &KitItemPanel::change);
    connect(m_changing, &KitChangePanel::left, this, [this] {
        closeForm();
        m_change->setFocus(Qt::OtherFocusReason);
    });
    connect(m_changing, &KitChangePanel::changed, this, &KitItemPanel::settle);
    connect(m_print, &QPushButton::clicked, this, [this] {
        saveTags(tools(), *this, {m_code.toStdString()},
                 [this](const core::Result<QString>& saved) { sayDone(saved); });
    });
    connect(m_newTag, &QPushButton::clicked, this, &KitItemPanel::replaceTag);
    connect(m_release, &QPushButton::clicked, this, &KitItemPanel::release);
    connect(m_writeOff, &WriteOffChoice::writeOffPressed, this, &KitItemPanel::writeOff);
    connect(m_reinstate, &ReasonForm::pressed, this, &KitItemPanel::reinstate);
}

void KitItemPanel::build() {
    m_tag->setFont(fontOf(TextRole::Code));
    m_tag->setWordWrap(false);
    m_list->setObjectName("kitItemList");
    m_list->setAccessibleName(tr("dates, parts, log and history of this item"));
    m_views->addWidget(buildView());
    m_views->addWidget(m_changing);
    m_views->setCurrentWidget(m_views->widget(0));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_views);
}

QWidget* KitItemPanel::buildView() {
    auto* head = new QHBoxLayout;
    head->addWidget(m_name, 1);
    head->addWidget(m_tag);
    m_releaseCaution->setText(serviceCaution());
    auto* view = new QWidget(m_views);
    auto* layout = new QVBoxLayout(view);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit / 2);
    layout->addLayout(head);
    layout->addWidget(m_state);
    layout->addWidget(m_about);
    m_body->setSpacing(2 * spaceUnit);
    m_body->addWidget(m_list, 10);
    m_body->addWidget(new SideScroll(buildActs(), view), 12);
    layout->addLayout(m_body, 1);
    layout->addWidget(saidLabel("kitSaidLabel"));
    return view;
}

QWidget* KitItemPanel::buildActs() {
    auto* acts = new QWidget;
    auto* tags = new FlowLayout;
    for (QPushButton* button : {m_change, m_print, m_newTag})
        tags->addWidget(button);
    for (QPushButton* button : m_photos->addButtons())
        tags->addWidget(button);
    auto* column = new QVBoxLayout(acts);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spaceUnit);
    column->addLayout(tags);
    column->addWidget(m_photos);
    column->addWidget(m_record);
    column->addWidget(m_releaseCaution);
    column->addWidget(m_release, 0, Qt::AlignLeft);
    column->addWidget(m_writeOff);
    column->addWidget(m_reinstate);
    column->addStretch(1);
    return acts;
}

void KitItemPanel::resizeEvent(QResizeEvent* event) {
    m_body->setDirection(width() >= widthForBoth ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    GearPart::resizeEvent(event);
}

void KitItemPanel::change() {
    m_views->setCurrentWidget(m_changing);
    m_changing->open(m_code.toStdString());
}

void KitItemPanel::closeForm() {
    m_changing->close();
    m_views->setCurrentWidget(m_views->widget(0));
}

void KitItemPanel::open(const QString& code) {
    if (m_code != code) {
        say({});
        m_writeOff->clear();
        m_reinstate->begin();
        closeForm();
    }
    m_code = code;
    refresh();
}

void KitItemPanel::refresh() {
    read([code = m_code.toStdString(),
          today = today()](core::Club& club) { return readItem(club, code, today); },
         [this](std::optional<ItemAnswer> answer) { take(std::move(answer)); });
}

void KitItemPanel::take(std::optional<ItemAnswer> answer) {
    m_answer = std::move(answer);
    if (!m_answer) {
        emit gone();
        return;
    }
    const core::Item& item = m_answer->record.item;
    m_name->setText(kitName(item));
    m_tag->setText(codeInWords(item.tag));
    const QString wornTag = withCapital(wornTagInWords(m_answer->print));
    m_state->setText(withCapital(stateOf(item, m_answer->dues)) + '.' +
                     (wornTag.isEmpty() ? QString() : ' ' + wornTag + '.'));
    const bool isSound = item.state == core::ItemState::Serviceable && wornTag.isEmpty();
    m_state->setProperty("role", isSound ? "remark" : "look");
    m_state->style()->unpolish(m_state);
    m_state->style()->polish(m_state);
    m_about->setText(aboutOf(item));
    m_lines->setRows(linesOf(*m_answer, today()));
    m_record->open(m_code);
    m_photos->showItem(m_code);
    const bool isInUse = item.state != core::ItemState::WrittenOff;
    m_release->setVisible(item.state == core::ItemState::Unserviceable);
    m_releaseCaution->setVisible(item.state == core::ItemState::Unserviceable);
    m_writeOff->setVisible(isInUse);
    m_reinstate->setVisible(!isInUse);
    m_newTag->setEnabled(isInUse);
    m_print->setEnabled(isInUse);
}

void KitItemPanel::settle(const QString& sentence) {
    say(sentence);
    refresh();
    emit changed();
}

void KitItemPanel::replaceTag() {
    write(
        [code = m_code.toStdString()](core::Club& club, const std::string& by, core::Moment moment) {
            return club.kit().replaceTag(code, by, moment);
        },
        [this](const std::string& tag) {
            settle(tr("The new tag is %1. Print and fix it; the old tag no longer works.")
                       .arg(codeInWords(tag)));
        });
}

void KitItemPanel::release() {
    write([code = m_code.toStdString()](core::Club& club, const std::string& by,
                                        core::Moment moment) { return club.kit().release(code, by, moment); },
          [this](core::Done) {
              settle(tr("Released: it counts again. An open log entry about it is closed on the page Log."));
          });
}

void KitItemPanel::reinstate(const QString& why) {
    write([code = m_code.toStdString(), why = why.toStdString()](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.kit().reinstate(code, why, by, moment); },
          [this](core::Done) {
              m_reinstate->begin();
              settle(tr("Reinstated: it is what it was before. %1").arg(reinstatedCaution()));
          });
}

void KitItemPanel::writeOff(const QString& why) {
    write([code = m_code.toStdString(), why = why.toStdString()](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.kit().writeOff(code, why, by, moment); },
          [this](core::Done) {
              settle(tr("Written off. Take it out of the boats and destroy its tag; its history stays."));
          });
}

} // namespace app

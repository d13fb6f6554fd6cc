#include "app/gui/gear/log/log_page.h"

#include "app/gui/camera/held_field.h"
#include "app/gui/gear/photos/photo_strip.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/drafts.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/part_stack.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
LogPage::LogPage(GearTools tools, QWidget* parent)
    : GearPage(std::move(tools), "logPage", parent)
    , m_newDraft(new Drafts(this))
    , m_closingDraft(new Drafts(this))
    , m_summary(wordsLabel(this, "heading", "logSummaryLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_side(new PartStack(this)) {
    m_new = buildNew();
    m_one = buildOne();
    m_newDraft->keep(*m_code);
    m_newDraft->keep(*m_text);
    m_closingDraft->keep(*m_closing);
    build();
    connect(m_list, &RowList::rowPressed, this, &LogPage::choose);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { choose(m_list->currentKey()); });
}

void LogPage::build() {
    m_list->setObjectName("clubLogList");
    m_list->setAccessibleName(tr("the log, open entries first"));
    m_side->addWidget(m_new);
    m_side->addWidget(m_one);
    auto* newEntry = wordsButton(this, tr("New entry…"), "newLogEntryButton");
    connect(newEntry, &QPushButton::clicked, this, &LogPage::beginNew);
    auto* head = new QHBoxLayout;
    head->addWidget(m_summary, 1);
    head->addWidget(listButton([](const core::Club& club, core::CalendarDay today) {
        return readList(club, ClubList::Log, today);
    }));
    head->addWidget(newEntry);
    auto* body = new QHBoxLayout;
    body->setSpacing(4 * spaceUnit);
    body->addWidget(m_list, 12);
    body->addWidget(m_side, 10);
    QVBoxLayout& layout = column(2 * spaceUnit);
    layout.addLayout(head);
    layout.addLayout(body, 1);
    layout.addWidget(saidLabel("logSaidLabel"));
}

QWidget* LogPage::buildNew() {
    auto* panel = new QWidget(this);
    m_about = new ChoiceBox(panel);
    m_about->setObjectName("logAboutBox");
    m_about->takeRoom(10);
    m_about->setAccessibleName(tr("boat that the entry is about"));
    m_code =
        wordsEdit(panel, "logCodeEdit", tr("tag code of the item it is about"), tr("or an item: its code"));
    m_code->setFont(fontOf(TextRole::Code));
    askForCode(*m_code);
    m_text = wordsEdit(panel, "logTextEdit", tr("what is the matter"), tr("what is the matter"));
    m_severity = new ChoiceBox(panel);
    m_severity->setObjectName("logSeverityBox");
    m_severity->takeRoom(10);
    m_severity->setAccessibleName(tr("how much it matters"));
    m_severity->addItem(tr("a remark, to be read"), 0);
    m_severity->addItem(tr("it stops the boat or item until closed"), 1);
    m_write = wordsButton(panel, tr("Write it into the log"), "writeLogButton", true);
    auto* heading = wordsLabel(panel, "heading", "newLogLabel");
    heading->setText(tr("A new entry"));
    auto* layout = new QVBoxLayout(panel);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    for (QWidget* part : std::initializer_list<QWidget*>{heading, m_about, m_code, m_text, m_severity})
        layout->addWidget(part);
    layout->addWidget(m_write, 0, Qt::AlignRight);
    layout->addStretch(1);
    const auto adapt = [this] {
        const bool isAbout = m_about->currentIndex() > 0 || !m_code->text().trimmed().isEmpty();
        m_write->setEnabled(isAbout && !m_text->text().trimmed().isEmpty());
    };
    connect(m_about, &QComboBox::currentIndexChanged, this, adapt);
    connect(m_code, &QLineEdit::textChanged, this, adapt);
    connect(m_text, &QLineEdit::textChanged, this, adapt);
    connect(m_text, &QLineEdit::returnPressed, this, [this] { m_write->setFocus(Qt::TabFocusReason); });
    connect(m_write, &QPushButton::clicked, this, &LogPage::writeEntry);
    adapt();
    return panel;
}

QWidget* LogPage::buildOne() {
    auto* panel = new QWidget(this);
    m_oneAbout = wordsLabel(panel, "heading", "logAboutLabel");
    m_oneText = wordsLabel(panel, "remark", "logTextLabel");
    m_closing = wordsEdit(panel, "closingEdit", tr("what was done about it"), tr("what was done about it"));
    m_close = wordsButton(panel, tr("Close this entry"), "closeLogButton", true);
    auto* layout = new QVBoxLayout(panel);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    for (QWidget* part : std::initializer_list<QWidget*>{m_oneAbout, m_oneText, m_closing})
        layout->addWidget(part);
    layout->addWidget(m_close, 0, Qt::AlignRight);
    m_photos = new PhotoStrip(tools(), panel);
    layout->addWidget(m_photos);
    layout->addStretch(1);
    connect(m_photos, &PhotoStrip::settled, this, [this](const QString& sentence) { say(sentence); });
    connect(m_photos, &PhotoStrip::said, this, &LogPage::say);
    connect(m_closing, &QLineEdit::textChanged, this,
            [this](const QString& text) { m_close->setEnabled(!text.trimmed().isEmpty()); });
    connect(m_closing, &QLineEdit::returnPressed, this, [this] { m_close->setFocus(Qt::TabFocusReason); });
    connect(m_close, &QPushButton::clicked, this, &LogPage::closeEntry);
    return panel;
}

void LogPage::refresh() {
    read(
        [today = today()](core::Club& club) {
            Read read;
            if (const auto entries = club.log().entries())
                for (const core::LogEntry& entry : *entries) {
                    const auto item = entry.item.id.empty() ? std::nullopt : club.kit().item(entry.item.id);
                    read.log.push_back({entry, item ? item->kitType : std::string()});
                }
            for (const core::Boat& boat : club.register_().boatsHere(today))
                read.boats << text(boat.name);
            return read;
        },
        [this](Read read) { take(std::move(read)); });
}

void LogPage::take(Read read) {
    openNewDraft();
    m_log = std::move(read.log);
    m_summary->setText(summaryOf(m_log));
    fillBox(*m_about, tr("which boat?"), read.boats);
    m_lines->setRows(linesOf(m_log));
    if (m_lines->indexOfKey(m_chosen) < 0)
        beginNew();
    else
        choose(m_chosen);
}

void LogPage::choose(const QString& id) {
    const auto logged = std::find_if(m_log.begin(), m_log.end(), [&](const LoggedEntry& each) {
        return each.entry.id == id.toStdString();
    });
    if (logged == m_log.end()) return;
    if (m_chosen != id) {
        m_closingDraft->close();
        m_closing->clear();
        m_closingDraft->open(draftPlace() + "/closing/" + id);
    }
    m_chosen = id;
    m_photos->showEntry(id);
    const core::LogEntry& entry = logged->entry;
    m_oneAbout->setText(aboutInWords(*logged));
    m_oneText->setText(
        entry.closed
            ? tr("%1\nClosed %2: %3").arg(text(entry.text), inWords(*entry.closed), text(entry.closing))
            : text(entry.text));
    m_closing->setVisible(!entry.closed);
    m_close->setVisible(!entry.closed);
    m_close->setEnabled(!m_closing->text().trimmed().isEmpty());
    m_side->setCurrentWidget(m_one);
}

QString LogPage::draftPlace() const {
    return draftsOf(QString::fromStdString(tools().club.file().string()), QStringLiteral("log"));
}

/// Once for each club.
void LogPage::openNewDraft() {
    const QString place = draftPlace() + "/new";
    if (m_newDraft->place() == place) return;
    m_newDraft->close();
    m_code->clear();
    m_text->clear();
    m_newDraft->open(place);
}

void LogPage::beginNew() {
    m_chosen.clear();
    m_side->setCurrentWidget(m_new);
    if (isVisible() && !m_list->hasFocus()) m_about->setFocus(Qt::OtherFocusReason);
}

bool LogPage::takeScan(const QString& text, core::SeenBy /*how*/) {
    if (m_side->currentWidget() != m_new) return false;
    m_code->setText(text);
    say(tr("%1 was scanned: the new entry is about it.").arg(codeInWords(text.toStdString())));
    return true;
}

void LogPage::writeEntry() {
    const QString about =
        m_code->text().trimmed().isEmpty() ? m_about->currentData().toString() : m_code->text().trimmed();
    write([about = about.toStdString(), text = m_text->text().trimmed().toStdString(),
           severity = m_severity->currentIndex() == 1 ? core::Severity::Stop : core::Severity::Remark](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.log().add(about, text, severity, by, moment); },
          [this](const core::LogEntry& entry) {
              say(tr("Written: %1").arg(text(entry.text)));
              m_text->clear();
              m_code->clear();
              m_severity->setCurrentIndex(0);
              refresh();
          });
}

void LogPage::closeEntry() {
    write([entry = m_chosen.toStdString(), closing = m_closing->text().trimmed().toStdString()](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.log().close(entry, closing, by, moment); },
          [this](core::Done) {
              m_closing->clear();
              say(tr("Closed. An item that was withdrawn counts again once it is released on its page "
                     "under Kit."));
              refresh();
          });
}

} // namespace app

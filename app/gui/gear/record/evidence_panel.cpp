#include "app/gui/gear/record/evidence_panel.h"

#include "app/gui/gear/record/evidence_photos.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_register.h"

#include <QDateTime>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

std::optional<core::Instant> instantOfText(const QString& text) {
    const QString typed = text.simplified();
    QDateTime at = QDateTime::fromString(typed, QStringLiteral("yyyy-MM-dd HH:mm"));
    if (!at.isValid())
        at = QDateTime(QDate::fromString(typed, QStringLiteral("yyyy-MM-dd")), QTime(23, 59, 59, 999));
    if (!at.isValid()) return std::nullopt;
    return core::Instant::fromMillis(at.toMSecsSinceEpoch());
}

EvidencePanel::EvidencePanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "evidencePanel", parent)
    , m_boats(new ChoiceBox(this))
    , m_when(new QLineEdit(this))
    , m_lookButton(wordsButton(this, tr("Look it up"), "evidenceButton", true))
    , m_saveButton(wordsButton(this, tr("Save as PDF…"), "evidenceSaveButton"))
    , m_printButton(wordsButton(this, tr("Print…"), "evidencePrintButton"))
    , m_answer(wordsLabel(this, "outcome", "evidenceAnswerLabel"))
    , m_more(wordsLabel(this, "remark", "evidenceMoreLabel"))
    , m_proof(wordsLabel(this, "footnote", "evidenceProofLabel"))
    , m_said(wordsLabel(this, "quiet", "evidenceSaidLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this)) {
    build();
    connect(m_lookButton, &QPushButton::clicked, this, &EvidencePanel::look);
    connect(m_when, &QLineEdit::returnPressed, this, &EvidencePanel::look);
    connect(m_saveButton, &QPushButton::clicked, this, &EvidencePanel::save);
    connect(m_printButton, &QPushButton::clicked, this, &EvidencePanel::print);
    const core::Instant now = tools().time().at;
    m_when->setText(
        QDateTime::fromMSecsSinceEpoch(now.millis()).toString(QStringLiteral("yyyy-MM-dd HH:mm")));
    refuse({});
}

void EvidencePanel::build() {
    m_boats->setObjectName("evidenceBoatBox");
    m_when->setObjectName("evidenceWhenEdit");
    m_when->setFixedWidth(280);
    m_list->setObjectName("evidenceList");
    m_list->setAccessibleName(tr("what was aboard"));
    m_proof->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* ask = new QHBoxLayout;
    ask->setSpacing(spaceUnit);
    addWithWord(*ask, tr("boat"), m_boats);
    addWithWord(*ask, tr("day and time"), m_when);
    m_when->setAccessibleName(tr("day and time, like 2026-03-14 06:40"));
    ask->addWidget(m_lookButton);
    ask->addStretch(1);
    auto* give = new QHBoxLayout;
    give->setSpacing(spaceUnit);
    give->addWidget(m_said, 1);
    give->addWidget(m_saveButton);
    give->addWidget(m_printButton);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, spaceUnit, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addLayout(ask);
    for (QLabel* label : {m_answer, m_more})
        layout->addWidget(label);
    layout->addWidget(m_list, 1);
    layout->addLayout(give);
    layout->addWidget(m_proof);
}

void EvidencePanel::refresh() {
    ask([](core::Club& club) { return club.register_().boats(); },
        [this](const std::vector<core::Boat>& boats) {
            const QString before = m_boats->currentText();
            m_boats->clear();
            for (const core::Boat& boat : boats)
                m_boats->addItem(text(boat.name));
            m_boats->setCurrentIndex(std::max(0, m_boats->findText(before)));
        });
}

void EvidencePanel::look() {
    const auto on = instantOfText(m_when->text());
    if (!on) {
        refuse(tr("Write the day and the time like 2026-03-14 06:40."));
        return;
    }
    using Answer = core::Result<EvidencePrintout>;
    read(
        [boat = m_boats->currentText().toStdString(), on = *on, today = today()](core::Club& club) {
            const auto evidence = club.answers().evidence(boat, on);
            if (!evidence) return Answer(evidence.error());
            EvidencePrintout printout = evidencePrintoutOf(*evidence, text(club.name()), today);
            printout.photos = photosOf(club, *evidence, today);
            return Answer(std::move(printout));
        },
        [this](const Answer& printout) {
            if (printout)
                take(*printout);
            else
                refuse(errorSentence(printout.error()));
        });
}

void EvidencePanel::take(const EvidencePrintout& printout) {
    m_printout = printout;
    m_answer->setText(printout.answer);
    m_more->setText(printout.more.join('\n'));
    m_proof->setText(printout.proof.join('\n'));
    m_said->clear();
    std::vector<ListRow> rows = printout.rows;
    if (!printout.photos.empty())
        rows.push_back(headingRow("photographs", tr("photographs, which are on the sheet"),
                                  QString::number(printout.photos.size())));
    for (std::size_t i = 0; i < printout.photos.size(); ++i)
        rows.push_back(plainRow(QStringLiteral("photograph %1").arg(i), Mark::NotAsked, {},
                                printout.photos[i].title, withCapital(printout.photos[i].remark)));
    m_lines->setRows(rows);
    m_list->scrollToTop();
    for (QPushButton* button : {m_saveButton, m_printButton})
        button->setEnabled(true);
}

void EvidencePanel::refuse(const QString& sentence) {
    m_answer->setText(sentence);
    for (QLabel* label : {m_more, m_proof, m_said})
        label->clear();
    m_lines->setRows({});
    for (QPushButton* button : {m_saveButton, m_printButton})
        button->setEnabled(false);
}

void EvidencePanel::save() {
    const QString proposed = tr("%1 aboard %2.pdf").arg(m_printout.boat, m_when->text().left(10));
    const QString file = fileToSave(tools().choosers, this, proposed);
    if (file.isEmpty()) return;
    m_said->setText(saveEvidence(file, m_printout) ? tr("Saved: %1").arg(file)
                                                   : tr("The sheet could not be written to %1.").arg(file));
}

void EvidencePanel::print() {
    QPrinter printer(QPrinter::HighResolution);
    if (!tools().choosers.printer || !tools().choosers.printer(this, printer)) return;
    m_said->setText(paintEvidence(printer, m_printout) ? tr("The sheet was sent to the printer.")
                                                       : tr("The printer did not take the sheet."));
}

} // namespace app

#include "app/gui/gear/bench/bench_page.h"

#include "app/gui/theme/sounds.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

BenchPage::BenchPage(GearTools tools, QWidget* parent)
    : CameraPage(std::move(tools), "benchPage", parent)
    , m_rule(new ChoiceBox(this))
    , m_day(new QLineEdit(this))
    , m_by(new ChoiceBox(this))
    , m_note(new QLineEdit(this))
    , m_summary(wordsLabel(this, "remark", "benchSummaryLabel"))
    , m_rearm(wordsLabel(this, "look", "benchRearmLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_takeBack(wordsButton(this, tr("Take back the last"), "benchTakeBackButton"))
    , m_record(wordsButton(this, {}, "benchRecordButton", true)) {
    build();
    connectParts();
    m_day->setText(text(today().iso()));
    showRound();
}

BenchPage::~BenchPage() = default;

void BenchPage::build() {
    m_list->setObjectName("benchList");
    m_list->setAccessibleName(tr("kit shown at the bench; a press makes it failed, or passed again"));
    auto* right = new QVBoxLayout;
    right->setSpacing(spaceUnit);
    right->addWidget(m_summary);
    m_rearm->setText(rearmCaution());
    right->addWidget(m_rearm);
    right->addWidget(m_list, 1);
    right->addLayout(buildFoot());
    layOut(buildOrder(), right, "benchCautionLabel",
           tr("A scan shows that the tag was here, not that the thing works: inspect and test each "
              "one by its maker's manual before it is recorded.") +
               QLatin1Char(' ') + serviceCaution());
}

QLayout* BenchPage::buildOrder() {
    for (ChoiceBox* box : {m_rule, m_by})
        box->takeRoom(6);
    m_rule->setObjectName("benchRuleBox");
    m_day->setObjectName("benchDayEdit");
    m_day->setPlaceholderText(tr("2026-03-14"));
    m_by->setObjectName("benchByBox");
    m_note->setObjectName("benchNoteEdit");
    m_note->setPlaceholderText(tr("a word for the record"));
    auto* grid = new QGridLayout;
    grid->setVerticalSpacing(spaceUnit / 2);
    grid->setHorizontalSpacing(2 * spaceUnit);
    grid->setColumnStretch(1, 1);
    const auto add = [&](int row, const QString& word, QWidget* field) {
        auto* label = new QLabel(word, this);
        label->setProperty("role", "quiet");
        label->setBuddy(field);
        field->setAccessibleName(word);
        grid->addWidget(label, row, 0);
        grid->addWidget(field, row, 1);
    };
    add(0, tr("Rule"), m_rule);
    add(1, tr("On"), m_day);
    add(2, tr("By"), m_by);
    add(3, tr("Note"), m_note);
    return grid;
}

QLayout* BenchPage::buildFoot() {
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_takeBack);
    foot->addStretch(1);
    foot->addWidget(m_record);
    return foot;
}

void BenchPage::connectParts() {
    connect(m_rule, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_isDone) showRound();
    });
    connect(m_by, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_isDone) showRound();
    });
    connect(m_list, &RowList::rowPressed, this, [this](const QString& key) {
        if (m_isDone) return;
        m_round.toggle(m_lines->codeOf(key));
        showRound();
    });
    connect(m_takeBack, &QPushButton::clicked, this, [this] {
        m_round.takeBackLast();
        showRound();
    });
    connect(m_record, &QPushButton::clicked, this, &BenchPage::record);
}

void BenchPage::refresh() {
    read(
        [today = today()](core::Club& club) {
            return Read{club.register_().kitTypes(), club.register_().peopleHere(today)};
        },
        [this](Read read) { take(std::move(read)); });
}

void BenchPage::take(Read read) {
    m_kitTypes = std::move(read.kitTypes);
    QStringList people;
    for (const core::Person& person : read.people)
        people << text(person.name);
    fillBox(*m_rule, tr("which rule?"), recordedRulesOf(m_kitTypes));
    fillBox(*m_by, tr("who did it?"), people);
    if (m_by->currentIndex() <= 0) m_by->setCurrentIndex(std::max(0, m_by->findData(tools().officer())));
    if (!m_isDone) showRound();
}

void BenchPage::scan(const core::ScannedText& seen, core::SeenBy) {
    ask(
        [text = seen.text, today = today()](core::Club& club) {
            const auto item = club.kit().itemOfScan(text, today);
            return item ? BenchScan{text, item->name(), item->kitType, item->size}
                        : BenchScan{text, {}, {}, {}};
        },
        [this](const BenchScan& scan) { showScan(scan); });
}

void BenchPage::showScan(const BenchScan& scan) {
    if (m_isDone) m_round.clear();
    m_isDone = false;
    const QString name = QStringLiteral("%1 %2").arg(text(scan.kitType), codeInWords(scan.item.tag));
    if (!m_round.add(scan)) {
        say(tr("%1 is in the list already; it counts once.")
                .arg(scan.item.id.empty() ? text(scan.text) : name));
    } else if (scan.item.id.empty()) {
        tools().sounds.play(Sound::LookAtThis);
        say(tr("%1 is not this club's kit.").arg(codeInWords(scan.text)), true);
    } else {
        tools().sounds.play(Sound::NewAndFine);
        say(tr("In the list: %1.").arg(name));
    }
    showRound();
    m_lines->markChanged("scan " + text(scan.text));
    emit taken();
}

void BenchPage::showRound() {
    const QString rule = m_rule->currentData().toString();
    m_rearm->setVisible(isRearm(rule));
    m_lines->setRows(m_round.lines(m_kitTypes, rule));
    const int passed = m_round.countOf(false, m_kitTypes, rule);
    const int failed = m_round.countOf(true, m_kitTypes, rule);
    m_summary->setText(
        m_round.scans().empty()
            ? tr("Show the kit to the camera, tag after tag, or type its codes. A press on a line makes it "
                 "failed.")
            : tr("%1 passed, %2 failed. A press on a line changes that.").arg(passed).arg(failed));
    m_record->setText(failed ? tr("Record %1 passed, %2 failed").arg(passed).arg(failed)
                             : tr("Record %1 as passed").arg(passed));
    m_record->setEnabled(passed + failed > 0 && m_by->currentIndex() > 0);
    m_takeBack->setEnabled(!m_round.scans().empty());
}

void BenchPage::record() {
    const auto day = core::CalendarDay::parse(m_day->text().trimmed().toStdString());
    if (!day) return say(tr("“%1” is no day: write it like 2026-03-14.").arg(m_day->text()), true);
    const auto orderOf = [&](bool failed) {
        return core::ServiceOrder{m_rule->currentData().toString().toStdString(), *day,
                                  m_by->currentData().toString().toStdString(),   !failed,
                                  m_note->text().trimmed().toStdString(),         m_round.textsOf(failed)};
    };
    m_record->setEnabled(false);
    doAct(
        [passed = orderOf(false), failed = orderOf(true),
         moment = tools().time()](core::Club& club) -> core::Result<BenchOutcome> {
            BenchOutcome outcome;
            for (const core::ServiceOrder* order : {&failed, &passed}) {
                if (order->scans.empty()) continue;
                auto round = club.kit().recordService(*order, moment);
                if (!round) return round.error();
                (order->passed ? outcome.passed : outcome.failed) = std::move(round).value();
            }
            return outcome;
        },
        [this](const core::Result<BenchOutcome>& outcome) { takeOutcome(outcome); });
}

void BenchPage::takeOutcome(const core::Result<BenchOutcome>& outcome) {
    if (!outcome) {
        sayError(outcome.error());
        showRound();
        emit recorded();
        return;
    }
    m_isDone = true;
    m_round.clear();
    m_lines->setRows(linesOf(*outcome));
    m_list->scrollToTop();
    m_summary->setText(summaryOf(*outcome));
    say(tr("Recorded. The next tag begins a new round."));
    m_record->setEnabled(false);
    m_takeBack->setEnabled(false);
    emit recorded();
}

} // namespace app

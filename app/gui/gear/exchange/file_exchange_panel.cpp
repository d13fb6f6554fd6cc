#include "app/gui/gear/exchange/file_exchange_panel.h"

#include "app/gui/gear/exchange/exchange_words.h"
#include "app/gui/gear/exchange/look_leads.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/club/club_copy.h"
#include "core/club/club_record.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

using Forks = core::ClubExchange::Forks;

QString fileNameOf(const std::filesystem::path& file) {
    return text(file.filename().string());
}

} // namespace

FileExchangePanel::FileExchangePanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "fileExchangePanel", parent)
    , m_clubFile(tools().club.file())
    , m_again(wordsButton(this, tr("Look again"), "exchangeAgainButton"))
    , m_byHand(wordsButton(this, tr("Choose a file…"), "exchangeChooseButton"))
    , m_fileLines(new RowListModel(this))
    , m_files(new RowList(*m_fileLines, this))
    , m_hint(wordsLabel(this, "remark", "exchangeHintLabel"))
    , m_progress(new QProgressBar(this))
    , m_answer(wordsLabel(this, "heading", "exchangeAnswerLabel"))
    , m_more(wordsLabel(this, "remark", "exchangeMoreLabel"))
    , m_lookLines(new RowListModel(this))
    , m_looks(new RowList(*m_lookLines, this))
    , m_copy(wordsButton(this, tr("Take a copy along…"), "exchangeCopyButton"))
    , m_asNewMachine(wordsButton(this, tr("As a new machine…"), "exchangeNewMachineButton"))
    , m_go(wordsButton(this, {}, "exchangeGoButton", true)) {
    build();
    connectParts();
    adapt();
}

void FileExchangePanel::build() {
    m_files->setObjectName("exchangeFiles");
    m_files->setAccessibleName(tr("club files on sticks"));
    m_looks->setObjectName("exchangeLooks");
    m_looks->setAccessibleName(tr("what somebody must look at"));
    m_progress->setObjectName("exchangeProgress");
    m_progress->setAccessibleName(tr("the two files are being looked through"));
    m_progress->setRange(0, 0); // how long it takes is not known beforehand
    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    head->addWidget(wordsIn("quiet", tr("Club files on sticks"), this), 1);
    head->addWidget(m_again, 0, Qt::AlignTop);
    head->addWidget(m_byHand, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, spaceUnit, 0, 0);
    column->setSpacing(spaceUnit);
    QVBoxLayout& page = *column;
    page.addLayout(head);
    page.addWidget(m_files);
    page.addWidget(m_hint);
    page.addWidget(m_progress);
    page.addWidget(m_answer);
    page.addWidget(m_more);
    page.addWidget(m_looks, 1);
    page.addStretch(0);
    page.addWidget(saidLabel("exchangeSaidLabel"));
    page.addLayout(buildFoot());
}

QLayout* FileExchangePanel::buildFoot() {
    auto* foot = new QHBoxLayout;
    foot->setSpacing(spaceUnit);
    foot->addWidget(m_copy);
    foot->addStretch(1);
    foot->addWidget(m_asNewMachine);
    foot->addWidget(m_go);
    return foot;
}

void FileExchangePanel::connectParts() {
    connect(m_again, &QPushButton::clicked, this, [this] { look(Found::Chosen); });
    connect(m_byHand, &QPushButton::clicked, this, &FileExchangePanel::chooseByHand);
    connect(m_files, &RowList::rowPressed, this, &FileExchangePanel::press);
    connect(m_looks, &RowList::rowPressed, this, [this](const QString& key) {
        if (const std::size_t at = key.toUInt(); at < m_lookAt.size()) lookAt(m_lookAt[at], tools(), *this);
    });
    connect(m_copy, &QPushButton::clicked, this, &FileExchangePanel::copyByHand);
    connect(m_asNewMachine, &QPushButton::clicked, this, [this] { plan(Forks::AsNewMachine); });
    connect(m_go, &QPushButton::clicked, this, [this] {
        if (m_next == Next::Copy)
            copyTo(m_file);
        else
            perform();
    });
}

/// What was found for another club is not this one's. What is proposed may have changed meanwhile.
void FileExchangePanel::refresh() {
    if (m_clubFile != tools().club.file()) {
        m_clubFile = tools().club.file();
        ++m_turn; // what was asked of the other club is not answered any more
        m_isBusy = false;
        m_found.clear();
        m_fileLines->setRows({});
        forget();
        say({});
    }
    if (!m_isBusy) look(Found::Chosen);
}

void FileExchangePanel::forget() {
    m_file.clear();
    m_plan.reset();
    m_isForked = false;
    m_next = Next::Nothing;
    show({}, {}, {});
}

void FileExchangePanel::begin(const QString& doing) {
    m_isBusy = true;
    say(doing);
    adapt();
}

void FileExchangePanel::look(Found alone) {
    if (m_isBusy || !tools().choosers.sticks) return adapt();
    m_isBusy = true;
    adapt();
    ask(
        [sticks = tools().choosers.sticks, own = m_clubFile](core::Club& club) {
            const auto origin = club.record().origin();
            return filesOnSticks(sticks(), own, origin ? origin->fact : std::string());
        },
        [this, alone, turn = m_turn](std::vector<FoundFile> found) {
            if (turn != m_turn) return;
            m_isBusy = false;
            takeFound(std::move(found), alone);
        });
}

/// One file alone needs no choice.
void FileExchangePanel::takeFound(std::vector<FoundFile> found, Found alone) {
    m_found = std::move(found);
    m_fileLines->setRows(rowsOf(m_found, today()));
    adapt();
    const auto isOurs = [](const FoundFile& each) { return each.kind == FoundFile::Kind::OfThisClub; };
    const bool isOnlyOne = std::count_if(m_found.begin(), m_found.end(), isOurs) == 1;
    if (m_plan && m_next == Next::Exchange) {
        plan(m_plan->isAsNewMachine ? Forks::AsNewMachine : Forks::Refused);
    } else if (alone == Found::Chosen && m_file.empty() && isOnlyOne) {
        choose(std::find_if(m_found.begin(), m_found.end(), isOurs)->file);
    }
    emit shown();
}

void FileExchangePanel::press(const QString& key) {
    const auto found = std::find_if(m_found.begin(), m_found.end(), [&](const FoundFile& each) {
        return QString::fromStdString(each.file.string()) == key;
    });
    if (m_isBusy || found == m_found.end()) return;
    if (found->kind == FoundFile::Kind::NoneYet)
        proposeCopy(*found);
    else
        choose(found->file);
}

void FileExchangePanel::chooseByHand() {
    const QString file = tools().choosers.otherClub ? tools().choosers.otherClub(window()) : QString();
    if (!file.isEmpty()) choose(file.toStdString());
}

void FileExchangePanel::choose(const std::filesystem::path& file) {
    if (m_isBusy) return;
    forget();
    std::error_code unknown;
    if (std::filesystem::equivalent(file, m_clubFile, unknown))
        return say(tr("That is the file that is open here. Choose that of the other machine."), true);
    m_file = file;
    plan(Forks::Refused);
}

void FileExchangePanel::plan(Forks forks) {
    if (m_isBusy) return;
    begin(tr("%1 is being looked through; nothing is written yet…").arg(fileNameOf(m_file)));
    ask([file = m_file, forks](core::Club& club) { return planExchange(club, file, forks); },
        [this, turn = m_turn](const core::Result<ExchangePlan>& plan) {
            if (turn == m_turn) takePlan(plan);
        });
}

void FileExchangePanel::takePlan(const core::Result<ExchangePlan>& plan) {
    m_isBusy = false;
    m_isForked = !plan && plan.error().code == core::ErrorCode::RecordForked;
    m_plan = plan ? std::optional(*plan) : std::nullopt;
    m_next = plan && !plan->isIdle() ? Next::Exchange : Next::Nothing;
    if (plan) {
        say(plan->isIdle() ? tr("%1: nothing is to be exchanged.").arg(fileNameOf(m_file))
                           : tr("%1: nothing is written yet.").arg(fileNameOf(m_file)));
        show(comingInWords(*plan), goingInWords(*plan), plan->cameIn.lookAt);
        if (m_next == Next::Exchange) m_go->setFocus(Qt::OtherFocusReason);
    } else {
        say(tr("%1: nothing was taken in.").arg(fileNameOf(m_file)), true);
        show(hindranceOf(plan.error()), wayOnFrom(plan.error()), {});
    }
    emit shown();
}

void FileExchangePanel::proposeCopy(const FoundFile& place) {
    forget();
    say({});
    m_file = place.file;
    m_next = Next::Copy;
    show(tr("There is no file of this club on %1 yet.").arg(nameOfStick(place.stick)),
         tr("A copy, %1, is made there, to be opened on another machine. It holds all that this file holds, "
            "people's measures too: keep it as you keep this file.")
             .arg(fileNameOf(place.file)),
         {});
    m_go->setFocus(Qt::OtherFocusReason);
}

void FileExchangePanel::perform() {
    if (m_isBusy || !m_plan) return;
    begin(tr("The two files are being exchanged: leave the stick in…"));
    doAct([file = m_file, plan = *m_plan](core::Club& club) { return exchange(club, file, plan); },
          [this, turn = m_turn](const core::Result<Exchanged>& done) {
              if (turn == m_turn) takeDone(done);
          });
}

void FileExchangePanel::takeDone(const core::Result<Exchanged>& done) {
    m_isBusy = false;
    if (!done && done.error().code == core::ErrorCode::PinNeeded) { // nobody gave one: as before
        sayError(done.error());
        return adapt();
    }
    m_next = Next::Nothing;
    m_isForked = !done && done.error().code == core::ErrorCode::RecordForked;
    if (!done) {
        say(tr("%1: nothing was taken in.").arg(fileNameOf(m_file)), true);
        show(hindranceOf(done.error()), wayOnFrom(done.error()), {});
    } else {
        const bool isHalf = done->went && !*done->went;
        say(isHalf ? tr("Only one way was done.") : tr("Done: the stick can be taken out."), isHalf);
        show(cameInSentence(*done), wentInWords(*done, *m_plan), done->cameIn.lookAt);
        if (tools().readPeople) tools().readPeople();
    }
    emit shown();
}

void FileExchangePanel::copyByHand() {
    const QString to =
        fileToSave(tools().choosers, window(), QString::fromStdString(m_clubFile.filename().string()));
    if (!to.isEmpty()) copyTo(to.toStdString());
}

void FileExchangePanel::copyTo(const std::filesystem::path& to) {
    if (m_isBusy) return;
    begin(tr("The copy is being made: leave the stick in…"));
    ask([own = m_clubFile, to](core::Club&) { return core::copyClub(own, to, false); },
        [this, to, turn = m_turn](const core::Result<core::Verification>& made) {
            if (turn != m_turn) return;
            m_isBusy = false;
            if (!made) {
                sayError(made.error());
                return adapt();
            }
            forget();
            say(tr("A copy was made, and looked through: %1. Open it on the other machine.")
                    .arg(text(to.string())));
            look(Found::Listed);
        });
}

void FileExchangePanel::show(const QString& answer, const QString& more, std::vector<core::LookAt> lookAt) {
    m_answer->setText(answer);
    m_more->setText(more);
    m_lookAt = std::move(lookAt);
    std::vector<ListRow> rows;
    if (!m_lookAt.empty()) addSection(rows, "look", tr("to look at"), rowsOf(m_lookAt));
    m_lookLines->setRows(rows);
    adapt();
}

void FileExchangePanel::adapt() {
    constexpr int lineHeight = 72;
    constexpr std::size_t mostLines = 2;
    const int lines = static_cast<int>(std::min(mostLines, m_found.size()));
    m_files->setVisible(lines > 0);
    m_files->setFixedHeight(lines * lineHeight + (m_found.size() > mostLines ? lineHeight / 2 : spaceUnit));
    m_files->setEnabled(!m_isBusy);
    m_hint->setText(
        tr("No stick is in. Put one in and press “Look again”, or choose the file of another machine, "
           "in a shared folder say. What it holds comes in, and what is recorded here goes there: "
           "afterwards both files hold both. Before anything is written the page says what it would "
           "be.\n\nFor a machine that has no file of this club yet, take a copy along."));
    m_hint->setVisible(m_found.empty() && m_file.empty() && !m_isBusy);
    m_progress->setVisible(m_isBusy);
    for (QPushButton* button : {m_again, m_byHand, m_copy})
        button->setEnabled(!m_isBusy);
    m_answer->setVisible(!m_answer->text().isEmpty());
    m_more->setVisible(!m_more->text().isEmpty());
    m_looks->setVisible(!m_lookAt.empty());
    m_asNewMachine->setVisible(m_isForked);
    m_asNewMachine->setEnabled(!m_isBusy);
    const bool isOneWay = m_plan && (m_plan->isReadOnly || m_plan->isAsNewMachine);
    m_go->setText(m_next == Next::Copy               ? tr("Take a copy along")
                  : m_plan && m_plan->isAsNewMachine ? tr("Take it in as a new machine")
                  : isOneWay                         ? tr("Take it in")
                                                     : tr("Exchange both ways"));
    m_go->setVisible(m_next != Next::Nothing);
    m_go->setEnabled(!m_isBusy);
}

} // namespace app

#include "app/gui/gear/ready/ready_page.h"

#include "app/gui/camera/camera_panel.h"
#include "app/gui/camera/code_capture.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/printout/shown_list.h"
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
#include "core/club/club_plans.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace app {

ReadyPage::ReadyPage(GearTools tools, QWidget* parent)
    : GearPage(std::move(tools), "readyPage", parent)
    , m_places(new ChoiceBox(this))
    , m_planButton(wordsButton(this, tr("Make a plan"), "readyPlanButton", true))
    , m_progress(new QProgressBar(this))
    , m_answer(wordsLabel(this, "outcome", "readyAnswerLabel"))
    , m_goals(wordsLabel(this, "quiet", "readyGoalsLabel"))
    , m_boats(new RowListModel(this))
    , m_boatList(new RowList(*m_boats, this))
    , m_camera(new CameraPanel(this))
    , m_left(new QStackedWidget(this))
    , m_cameraButton(wordsButton(this, {}, "readyCameraButton"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_code(new QLineEdit(this)) {
    build();
    connectParts();
    showCamera(false);
    m_answer->setText(tr("Which boats can be made complete with what is here?"));
}

void ReadyPage::build() {
    m_places->setObjectName("readyPlaceBox");
    m_progress->setObjectName("readyProgress");
    m_progress->setAccessibleName(tr("a plan is being made"));
    m_progress->setRange(0, 0);
    m_progress->setVisible(false);
    m_boatList->setObjectName("readyBoatList");
    m_boatList->setAccessibleName(tr("boats, with what is short"));
    m_list->setObjectName("readyMoveList");
    m_list->setAccessibleName(tr("what to carry where; a press ticks it off"));
    m_code->setObjectName("readyCodeEdit");
    m_code->setAccessibleName(tr("tag code of what was carried"));
    m_code->setPlaceholderText(tr("scan what you carry, or type its code"));
    // One field for codes on the page is enough.
    m_camera->codeEdit().setVisible(false);
    m_left->addWidget(m_boatList);
    m_left->addWidget(m_camera);

    auto* head = new QHBoxLayout;
    head->setSpacing(spaceUnit);
    addWithWord(*head, tr("with kit at"), m_places);
    head->addWidget(m_planButton);
    head->addWidget(m_progress, 1);
    head->addStretch(1);
    head->addWidget(shownListButton([this] {
        std::vector<ListRow> rows = m_boats->rows();
        rows.insert(rows.end(), m_lines->rows().begin(), m_lines->rows().end());
        return tableOf(tr("Make ready"), m_answer->text() + QLatin1Char(' ') + m_goals->text(), rows);
    }));
    auto* body = new QHBoxLayout;
    body->setSpacing(3 * spaceUnit);
    body->addWidget(m_left, 10);
    body->addWidget(m_list, 12);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(spaceUnit);
    foot->addWidget(m_cameraButton);
    foot->addWidget(m_code, 1);
    QVBoxLayout& layout = column(spaceUnit);
    layout.addLayout(head);
    layout.addWidget(m_answer);
    layout.addWidget(m_goals);
    layout.addLayout(body, 1);
    layout.addWidget(saidLabel("readySaidLabel"));
    layout.addLayout(foot);
    addCaution(layout, "readyCautionLabel",
               tr("Ticks are for whoever carries; what is aboard is recorded by the launch check.") +
                   QLatin1Char(' ') + makeReadyCaution() + QLatin1Char(' ') + launchCaution());
}

void ReadyPage::connectParts() {
    connect(m_planButton, &QPushButton::clicked, this, &ReadyPage::makePlan);
    connect(m_cameraButton, &QPushButton::clicked, this,
            [this] { showCamera(m_left->currentWidget() != m_camera); });
    connect(m_camera, &CameraPanel::codeSeen, this,
            [this](const core::ScannedText& scan) { takeCode(text(scan.text)); });
    auto* capture = new CodeCapture(*this, *m_code);
    connect(capture, &CodeCapture::codeTyped, this, &ReadyPage::takeCode);
    connect(m_list, &RowList::rowPressed, this, [this](const QString& code) {
        m_moves.toggle(code);
        showMoves();
    });
}

void ReadyPage::refresh() {
    read([today = today()](core::Club& club) { return club.register_().placesHere(today); },
         [this](const std::vector<std::string>& places) {
             fillBox(*m_places, tr("every place"), texts(places));
         });
}

void ReadyPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    showCamera(false);
}

void ReadyPage::makePlan() {
    core::MakeReadyQuestion question;
    if (const QString place = m_places->currentData().toString(); !place.isEmpty())
        question.places = {place.toStdString()};
    m_planButton->setEnabled(false);
    m_progress->setVisible(true);
    ask([question, today = today()](core::Club& club) { return club.plans().makeReady(question, today); },
        [this](const core::Result<core::MakeReadyPlan>& plan) { take(plan); });
}

void ReadyPage::take(const core::Result<core::MakeReadyPlan>& plan) {
    m_planButton->setEnabled(true);
    m_progress->setVisible(false);
    m_moves.setPlan(plan ? *plan : core::MakeReadyPlan());
    m_answer->setText(plan ? answerInWords(*plan) : errorSentence(plan.error()));
    m_goals->setText(plan ? goalsInWords(*plan) : QString());
    m_boats->setRows(plan ? linesOf(plan->boats) : std::vector<ListRow>());
    showMoves();
    say(QString());
    emit planned();
}

void ReadyPage::showMoves() {
    m_lines->setRows(m_moves.lines());
    if (m_moves.total() > 0 && m_moves.done() == m_moves.total())
        say(tr("All is carried. Now do the launch checks."));
    else
        say(m_moves.done() == 0 ? QString()
                                : tr("%1 of %2 carried.").arg(m_moves.done()).arg(m_moves.total()));
}

bool ReadyPage::takeScan(const QString& text, core::SeenBy /*how*/) {
    takeCode(text);
    return true;
}

/// The register is asked what the tag or the maker's label stands for.
void ReadyPage::takeCode(const QString& typed) {
    ask([text = typed.toStdString(),
         today = today()](core::Club& club) { return club.kit().itemOfScan(text, today); },
        [this, typed](const std::optional<core::Item>& item) {
            if (item)
                tick(item->name());
            else
                say(tr("%1 is no item of this club.").arg(codeInWords(typed.toStdString())), true);
            emit codeTaken(typed);
        });
}

void ReadyPage::tick(const core::ItemName& item) {
    const QString code = text(item.id), shown = codeInWords(item.tag);
    switch (m_moves.tick(code)) {
    case MoveList::Ticked::Now:
        showMoves();
        m_lines->markChanged(code);
        tools().sounds.play(Sound::NewAndFine);
        break;
    case MoveList::Ticked::Before:
        say(tr("%1 is ticked already; it goes to %2.").arg(shown, m_moves.goesTo(code)));
        break;
    case MoveList::Ticked::NotInPlan:
        say(tr("%1 is not part of this plan: leave it where it is.").arg(shown), true);
        tools().sounds.play(Sound::LookAtThis);
        break;
    }
}

void ReadyPage::showCamera(bool camera) {
    m_left->setCurrentWidget(camera ? static_cast<QWidget*>(m_camera) : m_boatList);
    m_cameraButton->setText(camera ? tr("Show the boats") : tr("Use the camera"));
    if (!camera)
        m_camera->stop();
    else if (!tools().isCameraWanted || tools().isCameraWanted())
        m_camera->startCamera();
}

} // namespace app

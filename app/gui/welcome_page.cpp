#include "app/gui/welcome_page.h"

#include "app/gui/club/import_run.h"
#include "app/gui/new_club_form.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/text/errors.h"
#include "app/text/words.h"
#include "core/exchange/csv_import.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

namespace app {

WelcomePage::WelcomePage(Choosers choosers, QWidget* parent)
    : QWidget(parent)
    , m_title(wordsLabel(this, "boatName", "welcomeTitleLabel"))
    , m_said(wordsIn("look", {}, this))
    , m_back(wordsButton(this, tr("Back to the boats"), "welcomeBackButton"))
    , m_open(wordsButton(this, tr("Open the club's file…"), "openClubButton", true))
    , m_new(new NewClubForm(std::move(choosers), this)) {
    setObjectName("welcomePage");
    m_said->setObjectName("welcomeSaidLabel");
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout(inside);
    layout->setContentsMargins(4 * spaceUnit, 2 * spaceUnit, 4 * spaceUnit, 2 * spaceUnit);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_title);
    layout->addWidget(m_said);
    auto* open = new QHBoxLayout;
    open->setSpacing(2 * spaceUnit);
    open->addWidget(m_back);
    open->addWidget(m_open);
    open->addWidget(wordsIn("remark", tr("One file holds a club's boats, kit and record."), this), 1);
    layout->addLayout(open);
    layout->addSpacing(2 * spaceUnit);
    layout->addWidget(wordsIn("heading", tr("Or start a new club file"), this));
    layout->addWidget(m_new);
    layout->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(inside);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins({});
    whole->addWidget(scroll);
    connect(m_back, &QPushButton::clicked, this, &WelcomePage::backPressed);
    connect(m_open, &QPushButton::clicked, this, &WelcomePage::openPressed);
    connect(m_new, &NewClubForm::changed, this, &WelcomePage::adapt);
    connect(m_new, &NewClubForm::startPressed, this, [this] {
        m_new->setMaking(true);
        emit newPressed(m_new->wanted());
    });
    tabAsLaidOut(*this);
    setFocusProxy(m_open); // the usual way has the keyboard
    setOpenClub({});
}

void WelcomePage::setOpenClub(const QString& club) {
    m_title->setText(club.isEmpty() ? tr("No club file is open.")
                                    : tr("“%1” is open until another file is.").arg(club));
    m_back->setVisible(!club.isEmpty());
}

void WelcomePage::say(const QString& sentence) {
    m_said->setText(sentence);
    m_said->setVisible(!sentence.isEmpty());
}

void WelcomePage::takeMade(const NewClub& wanted, const core::Result<core::ImportPlan>& plan) {
    m_new->setMaking(false);
    if (plan && plan->rejected.empty()) return m_new->clear();
    if (plan) return m_new->sayOfRegister(rejectedInWords(*plan));
    // A folder that cannot be read is named in the error; all else is about the file that was to be made.
    const bool isOfFolder =
        wanted.begins == NewClub::Begins::Folder && plan.error().where == wanted.folder.toStdString();
    if (isOfFolder)
        m_new->sayOfRegister(errorSentence(plan.error()));
    else
        m_new->sayOfFile(plan.error());
}

void WelcomePage::beginNew() {
    m_new->findChild<QLineEdit*>("clubNameEdit")->setFocus(Qt::OtherFocusReason);
}

/// One button is the usual one: whoever has begun to write a name does not open another file.
void WelcomePage::adapt() {
    m_open->setProperty("role", m_new->isBegun() ? "" : "usual");
    m_open->style()->unpolish(m_open);
    m_open->style()->polish(m_open);
}

} // namespace app

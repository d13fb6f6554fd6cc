#include "app/gui/gear/office/gear_office.h"

#include "app/gui/gear/office/page_names.h"
#include "app/gui/theme/tab_order.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/page_scroll.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeySequence>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int namesWidth = 256;

} // namespace

GearOffice::GearOffice(QWidget* parent)
    : QWidget(parent)
    , m_names(new PageNames(this))
    , m_officerLabel(new QLabel(tr("Recorded as done by"), this))
    , m_officer(new ChoiceBox(this))
    , m_stack(new QStackedWidget(this)) {
    setObjectName("gearOffice");
    build();
    connect(m_names, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0) showPage(m_pages[static_cast<std::size_t>(row)].id);
    });
}

void GearOffice::build() {
    m_names->setObjectName("gearPageNames");
    m_names->setAccessibleName(tr("pages of the gear officer"));
    m_officerLabel->setProperty("role", "quiet");
    m_officerLabel->setBuddy(m_officer);
    m_officer->setObjectName("officerBox");
    m_officer->setAccessibleName(tr("whose name is recorded"));
    setPeople({}, {});

    auto* left = new QWidget(this);
    left->setProperty("role", "panel");
    left->setAttribute(Qt::WA_StyledBackground);
    left->setFixedWidth(namesWidth);
    auto* names = new QVBoxLayout(left);
    names->setContentsMargins(spaceUnit, spaceUnit, spaceUnit, spaceUnit);
    names->setSpacing(0);
    names->addWidget(m_names, 1);
    names->addWidget(m_officerLabel);
    names->addWidget(m_officer);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(left);
    layout->addWidget(m_stack, 1);
}

void GearOffice::addPage(const QString& id, const QString& name, const QKeySequence& keys, Make make) {
    auto* action = new QAction(name, this);
    action->setObjectName("gearPage " + id);
    action->setShortcut(keys);
    addAction(action); // so that its keys work while the office is in the window
    connect(action, &QAction::triggered, this, [this, id] {
        showPage(id);
        emit pageWanted(id);
    });
    m_pages.push_back({id, std::move(make), action, nullptr, nullptr});
    const QSignalBlocker quiet(m_names);
    auto* line = new QListWidgetItem(QString(name).remove('&'), m_names);
    line->setData(PageNames::KeysRole, keys.toString(QKeySequence::NativeText));
}

QList<QAction*> GearOffice::pageActions() const {
    QList<QAction*> actions;
    for (const Page& page : m_pages)
        actions << page.action;
    return actions;
}

int GearOffice::indexOf(const QString& id) const {
    const auto found =
        std::find_if(m_pages.begin(), m_pages.end(), [&](const Page& page) { return page.id == id; });
    return found == m_pages.end() ? -1 : static_cast<int>(found - m_pages.begin());
}

void GearOffice::showPage(const QString& id) {
    const int index = indexOf(id);
    if (index < 0) return;
    emit peopleWanted(); // asked before the page asks anything, so that it finds who is at work
    Page& page = m_pages[static_cast<std::size_t>(index)];
    if (!page.widget) {
        page.widget = page.make(m_stack);
        page.place = new PageScroll(page.widget, m_stack);
        m_stack->addWidget(page.place);
        tabAsLaidOut(*page.widget);
    }
    m_stack->setCurrentWidget(page.place);
    const QSignalBlocker quiet(m_names);
    m_names->setCurrentRow(index);
    emit pageShown();
}

QString GearOffice::currentPage() const {
    for (const Page& page : m_pages)
        if (page.widget && page.place == m_stack->currentWidget()) return page.id;
    return {};
}

QWidget* GearOffice::page(const QString& id) const {
    const int index = indexOf(id);
    return index < 0 ? nullptr : m_pages[static_cast<std::size_t>(index)].widget;
}

void GearOffice::setPeople(const QStringList& officers, const QStringList& others) {
    const QString before = officer();
    m_officer->clear();
    m_officer->addItem(tr("choose a name"), QString());
    for (const QString& name : officers + others)
        m_officer->addItem(name, name);
    setOfficer(before);
    if (!officer().isEmpty()) return;
    // One name alone needs no choice.
    if (const QStringList likely = officers.isEmpty() ? others : officers; likely.size() == 1)
        setOfficer(likely.front());
}

bool GearOffice::hasPeople() const {
    return m_officer->count() > 1;
}

QString GearOffice::officer() const {
    return m_officer->currentData().toString();
}

void GearOffice::setOfficer(const QString& name) {
    m_officer->setCurrentIndex(std::max(0, m_officer->findData(name)));
}

void GearOffice::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    emit peopleWanted();
    if (!m_stack->currentWidget() && !m_pages.empty()) showPage(m_pages.front().id);
}

} // namespace app

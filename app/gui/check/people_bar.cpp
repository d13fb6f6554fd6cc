#include "app/gui/check/people_bar.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QSignalBlocker>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

/// In a closed box these would choose the next name at once.
bool movesThroughNames(const QKeyEvent& event) {
    switch (event.key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_End:
        return true;
    default:
        return false;
    }
}

/// More people than that do not fit a small rescue boat, nor this line.
constexpr int mostBoxes = 5;

} // namespace

PeopleBar::PeopleBar(QWidget* parent)
    : QWidget(parent)
    , m_layout(new QHBoxLayout(this)) {
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(spaceUnit);
    addBox();
    addBox();
}

void PeopleBar::addBox() {
    const int number = static_cast<int>(m_boxes.size());
    const QString role = number == 0 ? tr("driver") : number == 1 ? tr("crew") : tr("and");
    auto* box = new ChoiceBox(this);
    auto* label = new QLabel(role, this);
    label->setProperty("role", "quiet");
    label->setBuddy(box);
    box->setObjectName(number == 0 ? "driverBox" : QStringLiteral("crewBox%1").arg(number));
    box->setAccessibleName(number == 0 ? tr("driver") : tr("crew %1").arg(number));
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    box->setMinimumWidth(120);
    // Above it, so that long names and long words have the width.
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    column->addStretch(1);
    column->addWidget(label);
    column->addWidget(box);
    column->addStretch(1);
    m_layout->addLayout(column);
    m_boxes << box;
    box->installEventFilter(this);
    fill(*box, {});
    connect(box, &QComboBox::activated, this, [this] { emit namesChosen(aboard()); });
}

/// Who is aboard is recorded when it is chosen: arrows open the names and move among them, and the wheel
/// names nobody.
bool PeopleBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Wheel) return true;
    if (event->type() != QEvent::KeyPress || !movesThroughNames(static_cast<QKeyEvent&>(*event)))
        return QWidget::eventFilter(watched, event);
    static_cast<QComboBox*>(watched)->showPopup();
    return true;
}

/// Who is already in another box is not offered again.
void PeopleBar::fill(QComboBox& box, const QString& chosen) const {
    const QSignalBlocker quiet(box);
    box.clear();
    box.addItem(tr("nobody yet"));
    for (const QString& person : m_all)
        if (person == chosen || !m_aboard.contains(person)) box.addItem(person);
    box.setCurrentIndex(std::max(0, box.findText(chosen)));
    if (chosen.isEmpty()) box.setCurrentIndex(0);
    box.setProperty("isChosen", !chosen.isEmpty());
    box.style()->unpolish(&box);
    box.style()->polish(&box);
}

void PeopleBar::setPeople(const QStringList& all, const QStringList& aboard) {
    if (all == m_all && aboard == m_aboard) return;
    m_all = all;
    m_aboard = aboard;
    while (m_boxes.size() < std::min<qsizetype>(mostBoxes, std::max<qsizetype>(2, aboard.size() + 1)))
        addBox();
    for (int i = 0; i < m_boxes.size(); ++i) {
        fill(*m_boxes[i], aboard.value(i));
        // A box for the next person appears when the others are taken.
        const bool shown = i < 2 || i <= aboard.size();
        m_boxes[i]->setVisible(shown);
        for (QLabel* label : findChildren<QLabel*>())
            if (label->buddy() == m_boxes[i]) label->setVisible(shown);
    }
}

QStringList PeopleBar::aboard() const {
    QStringList names;
    for (const QComboBox* box : m_boxes)
        if (box->currentIndex() > 0) names << box->currentText();
    return names;
}

void PeopleBar::openDriver() {
    m_boxes.first()->setFocus(Qt::ShortcutFocusReason);
}

} // namespace app

#include "app/gui/check/check_lists.h"

#include "app/gui/check/check_list_model.h"
#include "app/gui/check/check_list_view.h"
#include "app/gui/theme/type_scale.h"

#include <QHBoxLayout>

#include <algorithm>
#include <iterator>

namespace app {
namespace {

QString keyOf(const QString& point) {
    return "point " + point;
}

} // namespace

CheckLists::CheckLists(QWidget* parent)
    : QWidget(parent)
    , m_model(new CheckListModel(this))
    , m_pointsModel(new CheckListModel(this))
    , m_view(addView(*m_model, "checkList", tr("kit and points of this check")))
    , m_pointsView(addView(*m_pointsModel, "pointsList", tr("points of this check"))) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3 * spaceUnit);
    layout->addWidget(m_view, 1);
    layout->addWidget(m_pointsView, 1);
    m_pointsView->setVisible(false);
}

CheckListView* CheckLists::addView(CheckListModel& model, const QString& name, const QString& aloud) {
    auto* view = new CheckListView(model, this);
    view->setObjectName(name);
    view->setAccessibleName(aloud);
    connect(view, &CheckListView::lookPressed, this, &CheckLists::lookPressed);
    connect(view, &CheckListView::clockPressed, this, &CheckLists::clockPressed);
    connect(view, &CheckListView::kitPressed, this, &CheckLists::kitPressed);
    connect(&model, &CheckListModel::valueTyped, this, &CheckLists::valueTyped);
    return view;
}

void CheckLists::setRows(std::vector<CheckRow> rows) {
    m_rows = std::move(rows);
    share();
}

void CheckLists::setWide(bool wide) {
    m_isWide = wide;
    share();
}

void CheckLists::share() {
    std::vector<CheckRow> kit;
    std::vector<CheckRow> points;
    std::partition_copy(m_rows.begin(), m_rows.end(), std::back_inserter(points), std::back_inserter(kit),
                        [](const CheckRow& row) { return row.section == CheckRow::Section::Points; });
    m_pointsView->setVisible(m_isWide && !points.empty());
    m_model->setRows(m_isWide ? kit : m_rows);
    m_pointsModel->setRows(m_isWide ? points : std::vector<CheckRow>());
    if (!m_view->currentIndex().isValid() && m_model->rowCount() > 1)
        m_view->setCurrentIndex(m_model->index(1));
}

CheckListModel& CheckLists::modelOf(const QString& key) const {
    return m_pointsModel->indexOfKey(key) >= 0 ? *m_pointsModel : *m_model;
}

const CheckRow* CheckLists::rowOfSeen(const QString& code) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const CheckRow& row) {
        return row.code == code && row.mark != Mark::StillToFind;
    });
    return found == m_rows.end() ? nullptr : &*found;
}

void CheckLists::markChanged(const QString& key) {
    modelOf(key).markChanged(key);
    // What is still to find is what matters next; what was just read is said under the picture.
    m_view->scrollToTop();
}

void CheckLists::setClock(const QString& point, const QString& shown) {
    modelOf(keyOf(point)).setClock(keyOf(point), shown);
}

QString CheckLists::currentCode() const {
    return m_view->currentCode();
}

bool CheckLists::isOnItem() const {
    return m_view->hasFocus() && !m_view->currentCode().isEmpty();
}

void CheckLists::takeKeyboard() {
    m_view->setFocus(Qt::OtherFocusReason);
}

void CheckLists::goToPoints() {
    CheckListView* view = m_isWide ? m_pointsView : m_view;
    const auto& rows = m_isWide ? m_pointsModel->rows() : m_model->rows();
    const auto first = std::find_if(rows.begin(), rows.end(),
                                    [](const CheckRow& row) { return row.kind == CheckRow::Kind::Point; });
    if (first == rows.end()) return;
    view->setFocus(Qt::ShortcutFocusReason);
    view->setCurrentIndex(view->model()->index(static_cast<int>(first - rows.begin()), 0));
}

} // namespace app

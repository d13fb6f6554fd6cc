#include "app/gui/check/check_lists.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>

namespace app {
namespace {

QString keyOf(const QString& point) {
    return "point " + point;
}

/// "▼ 14 more lines below, 11 of them points"; empty: all are in view.
QString belowInWords(const RowList& view, const RowListModel& model) {
    int below = 0, points = 0;
    for (int row = model.rowCount() - 1; row >= 0; --row) {
        if (view.visualRect(model.index(row)).bottom() <= view.viewport()->height()) break;
        if (model.rows()[static_cast<std::size_t>(row)].isHeading) continue;
        ++below;
        points += model.rows()[static_cast<std::size_t>(row)].key.startsWith(keyOf({}));
    }
    if (below == 0) return {};
    const QString lines = counted(below, QT_TRANSLATE_N_NOOP("Words", "▼ %n more line below"),
                                  QT_TRANSLATE_N_NOOP("Words", "▼ %n more lines below"));
    return points == 0 || points == below ? lines
                                          : CheckLists::tr("%1, %2 of them points").arg(lines).arg(points);
}

} // namespace

CheckLists::CheckLists(QWidget* parent)
    : QWidget(parent)
    , m_model(new RowListModel(this))
    , m_pointsModel(new RowListModel(this))
    , m_view(addView(*m_model, "checkList", tr("kit and points of this check")))
    , m_pointsView(addView(*m_pointsModel, "pointsList", tr("points of this check"))) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(3 * spaceUnit);
    m_pointsColumn = withCount(*m_pointsView, *m_pointsModel);
    layout->addWidget(withCount(*m_view, *m_model), 1);
    layout->addWidget(m_pointsColumn, 1);
    m_pointsColumn->setVisible(false);
}

/// Counted anew after whatever moves the lines, once they are laid out.
QWidget* CheckLists::withCount(RowList& view, const RowListModel& model) {
    auto* column = new QWidget(this);
    auto* count = wordsLabel(column, "footnote", qPrintable(view.objectName() + "Below"));
    count->setMinimumHeight(count->fontMetrics().height());
    auto* layout = new QVBoxLayout(column);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(&view, 1);
    layout->addWidget(count);
    const auto tell = [&view, &model, count] { count->setText(belowInWords(view, model)); };
    connect(view.verticalScrollBar(), &QScrollBar::valueChanged, count, tell);
    for (auto changed : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
        connect(&model, changed, count, tell, Qt::QueuedConnection);
    connect(view.verticalScrollBar(), &QScrollBar::rangeChanged, count, tell, Qt::QueuedConnection);
    return column;
}

RowList* CheckLists::addView(RowListModel& model, const QString& name, const QString& aloud) {
    auto* view = new RowList(model, this);
    view->setObjectName(name);
    view->setAccessibleName(aloud);
    connect(view, &RowList::rowPressed, this, [this, view](const QString& key) { press(*view, key); });
    connect(&model, &RowListModel::numberTyped, this, [this](const QString& key, double value) {
        if (const CheckRow* row = rowOf(key)) emit valueTyped(QString(row->title), value);
    });
    return view;
}

const CheckRow* CheckLists::rowOf(const QString& key) const {
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const CheckRow& row) { return row.key == key; });
    return found == m_rows.end() ? nullptr : &*found;
}

void CheckLists::press(RowList& view, const QString& key) {
    const CheckRow* pressed = rowOf(key);
    if (!pressed) return;
    const CheckRow row = *pressed; // what hears of it may set new rows
    if (!row.pointKind) {
        emit kitPressed(row.code);
        return;
    }
    switch (*row.pointKind) {
    case core::PointKind::Look:
        emit lookPressed(row.title, row.mark != Mark::Found);
        break;
    case core::PointKind::Measure:
        view.typeNumber(key);
        break;
    case core::PointKind::Timed:
        emit clockPressed(row.title);
        break;
    }
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
    std::vector<ListRow> kit;
    std::vector<ListRow> points;
    std::partition_copy(m_rows.begin(), m_rows.end(), std::back_inserter(points), std::back_inserter(kit),
                        [](const CheckRow& row) { return row.section == CheckRow::Section::Points; });
    m_pointsColumn->setVisible(m_isWide && !points.empty());
    m_model->setRows(m_isWide ? kit : std::vector<ListRow>(m_rows.begin(), m_rows.end()));
    m_pointsModel->setRows(m_isWide ? points : std::vector<ListRow>());
    if (!m_view->currentIndex().isValid() && m_model->rowCount() > 1)
        m_view->setCurrentIndex(m_model->index(1));
}

RowListModel& CheckLists::modelOf(const QString& key) const {
    return m_pointsModel->indexOfKey(key) >= 0 ? *m_pointsModel : *m_model;
}

const CheckRow* CheckLists::rowOfSeen(const QString& code) const {
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const CheckRow& row) {
        return row.code == code && row.mark != Mark::StillToFind;
    });
    return found == m_rows.end() ? nullptr : &*found;
}

const CheckRow* CheckLists::rowOfTag(const QString& tag) const {
    const auto found =
        std::find_if(m_rows.begin(), m_rows.end(), [&](const CheckRow& row) { return row.tag == tag; });
    return found == m_rows.end() ? nullptr : rowOfSeen(found->code);
}

void CheckLists::markChanged(const QString& key) {
    modelOf(key).markChanged(key);
    // What is still to find is what matters next; what was just read is said under the picture.
    m_view->scrollToTop();
}

void CheckLists::setClock(const QString& point, const QString& shown) {
    modelOf(keyOf(point)).showAside(keyOf(point), shown);
}

QString CheckLists::currentCode() const {
    return m_model->codeOf(m_view->currentKey());
}

bool CheckLists::isOnItem() const {
    return m_view->hasFocus() && !currentCode().isEmpty();
}

void CheckLists::takeKeyboard() {
    m_view->setFocus(Qt::OtherFocusReason);
}

void CheckLists::goToPoints() {
    const auto first = std::find_if(m_rows.begin(), m_rows.end(),
                                    [](const CheckRow& row) { return row.pointKind.has_value(); });
    if (first == m_rows.end()) return;
    RowList* view = m_isWide ? m_pointsView : m_view;
    view->setFocus(Qt::ShortcutFocusReason);
    view->setCurrentIndex(view->model()->index(modelOf(first->key).indexOfKey(first->key), 0));
}

} // namespace app

#include "app/gui/gear/spreadsheet/column_meanings.h"

#include "app/gui/gear/spreadsheet/sheet_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/text/text.h"

#include <QAbstractItemView>
#include <QEvent>
#include <QHeaderView>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableView>

#include <algorithm>

namespace app {
namespace {

constexpr int listHeight = 48;
constexpr int besides = 96; ///< what a box needs beside its words

} // namespace

ColumnMeanings::ColumnMeanings(QTableView& table, QWidget* parent)
    : QWidget(parent)
    , m_table(table) {
    setObjectName("columnMeanings");
    setFixedHeight(listHeight);
    connect(table.horizontalScrollBar(), &QScrollBar::valueChanged, this, &ColumnMeanings::place);
    connect(table.horizontalHeader(), &QHeaderView::sectionResized, this, &ColumnMeanings::place);
    connect(table.horizontalHeader(), &QHeaderView::geometriesChanged, this, &ColumnMeanings::place);
}

void ColumnMeanings::clear() {
    for (ChoiceBox* box : m_boxes)
        box->deleteLater();
    m_boxes.clear();
    m_headings.clear();
}

void ColumnMeanings::setLayoutOf(const core::TableLayout& layout, core::SheetId sheet, int first) {
    m_first = first;
    QStringList headings;
    for (const core::TableColumn& column : layout.columns)
        headings << QString::fromStdString(column.heading);
    // The lists stay as long as they are about the same, also because one of them has the keyboard.
    if (headings != m_headings || sheet != m_sheet) {
        clear();
        m_headings = headings;
        m_sheet = sheet;
        build(layout, sheet);
    }
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        const QSignalBlocker quiet(m_boxes[i]);
        m_boxes[i]->setCurrentIndex(
            std::max(0, m_boxes[i]->findData(QString::fromStdString(layout.columns[i].meaning))));
        // The meaning that was chosen is read as a whole; the table scrolls sideways anyway.
        const int wanted = m_boxes[i]->fontMetrics().horizontalAdvance(m_boxes[i]->currentText()) + besides;
        const int column = first + static_cast<int>(i);
        if (m_table.columnWidth(column) < wanted) m_table.setColumnWidth(column, wanted);
    }
    place();
}

void ColumnMeanings::build(const core::TableLayout& layout, core::SheetId sheet) {
    for (const core::TableColumn& column : layout.columns) {
        auto* box = new ChoiceBox(this);
        box->setObjectName(QStringLiteral("column %1").arg(column.at));
        box->setAccessibleName(tr("what the column “%1” means").arg(text(column.heading)));
        box->setAccessibleDescription(tr("Where the cells of this column go."));
        box->addItem(meaningInWords(sheet, {}), QString());
        for (const std::string_view meaning : core::meaningsToChooseFrom(sheet))
            box->addItem(meaningInWords(sheet, std::string(meaning)),
                         QString::fromUtf8(meaning.data(), static_cast<qsizetype>(meaning.size())));
        box->view()->setMinimumWidth(box->view()->sizeHintForColumn(0) + 5 * spaceUnit);
        box->installEventFilter(this);
        connect(box, &QComboBox::currentIndexChanged, this,
                [this, box, heading = QString::fromStdString(column.heading)] {
                    emit meaningChosen(heading, box->currentData().toString());
                });
        box->show();
        m_boxes.push_back(box);
    }
}

void ColumnMeanings::putBehind(QWidget& before) {
    QWidget* last = &before;
    for (ChoiceBox* box : m_boxes) {
        setTabOrder(last, box);
        last = box;
    }
    setTabOrder(last, &m_table);
}

void ColumnMeanings::place() {
    const int left = m_table.viewport()->mapTo(m_table.parentWidget(), QPoint()).x() - x();
    for (std::size_t i = 0; i < m_boxes.size(); ++i) {
        const int column = m_first + static_cast<int>(i);
        m_boxes[i]->setGeometry(left + m_table.columnViewportPosition(column), 0,
                                m_table.columnWidth(column) - spaceUnit / 2, height());
    }
}

void ColumnMeanings::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place();
}

/// A list that gets the keyboard comes into view, with its column.
bool ColumnMeanings::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::FocusIn) return false;
    const auto at = std::find(m_boxes.begin(), m_boxes.end(), watched);
    if (at != m_boxes.end() && m_table.model()->rowCount() > 0) {
        const int row = std::max(0, m_table.rowAt(0));
        m_table.scrollTo(m_table.model()->index(row, m_first + static_cast<int>(at - m_boxes.begin())));
    }
    return false;
}

} // namespace app

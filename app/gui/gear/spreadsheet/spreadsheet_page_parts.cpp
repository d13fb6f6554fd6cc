#include "app/gui/gear/spreadsheet/spreadsheet_page.h"

#include "app/gui/gear/manifests/side_scroll.h"
#include "app/gui/gear/spreadsheet/column_meanings.h"
#include "app/gui/gear/spreadsheet/sheet_questions.h"
#include "app/gui/gear/spreadsheet/sheet_reading.h"
#include "app/gui/gear/spreadsheet/sheet_table_model.h"
#include "app/gui/gear/spreadsheet/sheet_table_view.h"
#include "app/gui/gear/spreadsheet/sheet_words.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/register_words.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {
namespace {

using core::SheetId;

constexpr int boxHeight = 40;

} // namespace

void SpreadsheetPage::build() {
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(m_file);
    words->addWidget(saidLabel("spreadsheetSaidLabel"));
    auto* file = new QHBoxLayout;
    file->setSpacing(2 * spaceUnit);
    file->addWidget(m_choose, 0, Qt::AlignTop);
    file->addLayout(words, 1);
    // At a desk, beside a table of many columns: lower than what a crew presses.
    m_below->setStyleSheet(
        QStringLiteral("QComboBox, QCheckBox { min-height: %1px; } QCheckBox { font-size: 16pt; }")
            .arg(boxHeight));
    auto* layout = new QVBoxLayout(m_below);
    layout->setContentsMargins({});
    layout->setSpacing(spaceUnit);
    layout->addLayout(buildHead());
    layout->addLayout(buildMake());
    auto* questions = new SideScroll(m_questions, m_below);
    questions->setMaximumHeight(3 * (boxHeight + 2 * spaceUnit));
    layout->addWidget(questions);
    layout->addWidget(buildTable(), 1);
    layout->addWidget(m_row);
    layout->addWidget(m_summary);
    layout->addWidget(m_warnings);
    layout->addLayout(buildFoot());
    QVBoxLayout& page = column(2 * spaceUnit);
    page.addLayout(file);
    page.addWidget(m_below, 1);
    page.addStretch(0);
}

QLayout* SpreadsheetPage::buildHead() {
    m_kind->setObjectName("spreadsheetKindBox");
    m_kind->takeRoom(8);
    for (const SheetId kind : kindsOfRows())
        m_kind->addItem(rowKindInWords(kind), static_cast<int>(kind));
    m_tables->setObjectName("spreadsheetSheetBox");
    m_tables->takeRoom(4);
    auto* row = new QHBoxLayout;
    row->setSpacing(spaceUnit);
    addWithWord(*row, tr("Each row is"), m_kind);
    row->setStretchFactor(m_kind, 3);
    addWithWord(*row, tr("on the sheet"), m_tables);
    row->setStretchFactor(m_tables, 2);
    return row;
}

QLayout* SpreadsheetPage::buildMake() {
    auto* row = new QHBoxLayout;
    row->setSpacing(2 * spaceUnit);
    auto* label = wordsLabel(m_below, "quiet", "spreadsheetMakeLabel");
    label->setText(tr("Make missing:"));
    label->setWordWrap(false);
    row->addWidget(label);
    for (const SheetId sheet : madeOnTheWay()) {
        auto* box = new QCheckBox(rowsInWords(sheet), m_below);
        const std::string_view name = core::sheet(sheet).name();
        box->setObjectName(QStringLiteral("make ") +
                           QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
        box->setAccessibleName(tr("make missing %1").arg(rowsInWords(sheet)));
        row->addWidget(box);
        m_make.push_back({box, sheet});
    }
    row->addStretch(1);
    return row;
}

QWidget* SpreadsheetPage::buildTable() {
    m_table->setObjectName("spreadsheetTable");
    m_table->setAccessibleName(tr("the rows of the spreadsheet"));
    auto* both = new QWidget(m_below);
    m_table->setParent(both);
    m_meanings->setParent(both);
    auto* column = new QVBoxLayout(both);
    column->setContentsMargins({});
    column->setSpacing(spaceUnit / 2);
    column->addWidget(m_meanings);
    column->addWidget(m_table, 1);
    return both;
}

QLayout* SpreadsheetPage::buildFoot() {
    auto* foot = new QHBoxLayout;
    foot->setSpacing(spaceUnit);
    foot->addWidget(m_next);
    foot->addStretch(1);
    foot->addWidget(m_import);
    return foot;
}

} // namespace app

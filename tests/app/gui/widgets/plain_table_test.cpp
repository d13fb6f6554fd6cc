#include "app/gui/widgets/plain_table.h"

#include "app/gui/widgets/row_list_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QHeaderView>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

namespace {

using Fatal = QAbstractItemModelTester::FailureReportingMode;

std::vector<app::TableRow> rows() {
    return {{"a", app::Mark::Look, "late", {"flare", "2"}}, {"b", std::nullopt, {}, {"knife", "4"}}};
}

} // namespace

TEST(PlainTableModel, keepsToTheRulesOfModelsThroughEveryChange) {
    app::PlainTableModel model;
    const QAbstractItemModelTester tester(&model, Fatal::Fatal);
    model.setTable({{"kit", false}, {"wanted", true}}, rows());
    model.setTable({{"kit", false}}, {});
    model.setTable({{"kit", false}, {"wanted", true}}, rows());
    EXPECT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.indexOfKey("b"), 1);
    EXPECT_EQ(model.indexOfKey("c"), -1);
}

TEST(PlainTableModel, isReadAloudWithItsMarkAndItsHeading) {
    app::PlainTableModel model;
    model.setTable({{"kit", false}, {"wanted", true}}, rows());
    EXPECT_EQ(model.index(0, 0).data(Qt::AccessibleTextRole).toString(), "late: flare");
    EXPECT_EQ(model.index(0, 1).data(Qt::AccessibleTextRole).toString(), "wanted: 2");
    EXPECT_EQ(model.index(1, 0).data(Qt::AccessibleTextRole).toString(), "kit: knife");
}

TEST(PlainTable, foldedItShowsAColumnBeneathAnother) {
    app::PlainTableModel model;
    app::PlainTable table(model);
    model.setTable({{"kit", false}, {"wanted", true}}, rows());
    table.choose("b");
    table.fold({{0, 1}});
    EXPECT_TRUE(table.isColumnHidden(1));
    EXPECT_EQ(table.chosen(), "b");
    EXPECT_EQ(model.headerData(0, Qt::Horizontal, Qt::DisplayRole).toString(), "kit, wanted");
    EXPECT_EQ(model.index(0, 0).data(app::PlainTableModel::BeneathRole).toString(), "2");
    EXPECT_EQ(model.index(0, 0).data(Qt::AccessibleTextRole).toString(), "late: flare, wanted: 2");
    const int two = table.rowHeight(0);
    table.fold({});
    EXPECT_FALSE(table.isColumnHidden(1));
    EXPECT_EQ(model.index(0, 0).data(app::PlainTableModel::BeneathRole).toString(), "");
    EXPECT_LT(table.rowHeight(0), two);
}

TEST(PlainTable, keysChooseARowAndEnterOpensIt) {
    app::PlainTableModel model;
    app::PlainTable table(model);
    model.setTable({{"kit", false}, {"wanted", true}}, rows());
    const QSignalSpy chosen(&table, &app::PlainTable::rowChosen);
    const QSignalSpy pressed(&table, &app::PlainTable::rowPressed);
    table.choose("a");
    QTest::keyClick(&table, Qt::Key_Down);
    EXPECT_EQ(table.chosen(), "b");
    EXPECT_EQ(pressed.size(), 0);
    QTest::keyClick(&table, Qt::Key_Return);
    ASSERT_EQ(pressed.size(), 1);
    EXPECT_EQ(pressed.first().first().toString(), "b");
    EXPECT_EQ(chosen.last().first().toString(), "b");
}

TEST(PlainTable, headingsWrapBeforeAnyCellIsCut) {
    app::PlainTableModel model;
    app::PlainTable table(model);
    const std::vector<app::TableColumn> columns{
        {"month", false}, {"inflatable jacket", true}, {"life jacket", true}, {"first-aid kit", true}};
    const QString month = "September 2027";
    table.resize(1200, 300);
    table.show();
    model.setTable(columns, {{"a", std::nullopt, {}, {month, "4", "9", "1"}}});
    const int cell = table.fontMetrics().horizontalAdvance(month);
    const int oneLine = table.horizontalHeader()->height();
    table.resize(cell + 440, 300); // the headings alone would take that in one line
    EXPECT_GE(table.columnWidth(0), cell);
    EXPECT_GT(table.horizontalHeader()->height(), oneLine);
    EXPECT_LE(table.horizontalHeader()->length(), table.viewport()->width());
    table.resize(1200, 300);
    EXPECT_EQ(table.horizontalHeader()->height(), oneLine);
}

TEST(PlainTable, headingsOfOneWordStayLowAndNothingIsHiddenBehindTheScrollBar) {
    app::PlainTableModel model;
    app::PlainTable table(model);
    table.resize(1200, 300);
    table.show();
    std::vector<app::TableRow> many;
    for (int i = 0; i < 6; ++i)
        many.push_back({QString::number(i), std::nullopt, {}, {"inflatable jacket (adult)", "Drying rack"}});
    model.setTable({{"kit", false}, {"home", false}}, many);
    QCoreApplication::processEvents();
    const int oneLine = table.horizontalHeader()->height();
    table.resize(340, oneLine + 6 * 44 + 2); // all rows have room, as long as no heading grows
    QCoreApplication::processEvents();
    EXPECT_EQ(table.horizontalHeader()->height(), oneLine);
    EXPECT_EQ(table.horizontalHeader()->length(), table.viewport()->width());
    table.resize(340, 200);
    QCoreApplication::processEvents();
    EXPECT_TRUE(table.verticalScrollBar()->isVisible());
    EXPECT_EQ(table.horizontalHeader()->length(), table.viewport()->width());
}

TEST(RowListModel, keepsToTheRulesOfModelsAndSpeaksItsOwnWords) {
    app::RowListModel model;
    const QAbstractItemModelTester tester(&model, Fatal::Fatal);
    model.setRows({app::headingRow("h", "trip", "0 of 1"),
                   app::plainRow("K1", app::Mark::StillToFind, "to carry", "knife", "remark")});
    EXPECT_EQ(model.index(1).data(Qt::AccessibleTextRole).toString(), "to carry, knife, remark");
    EXPECT_EQ(model.index(0).data(Qt::AccessibleTextRole).toString(), "trip: 0 of 1");
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
}

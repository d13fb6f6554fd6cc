#include "app/gui/check/check_list_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace {

app::CheckRow row(const char* key, const char* aside = "") {
    app::CheckRow made;
    made.key = key;
    made.title = key;
    made.aside = aside;
    return made;
}

std::vector<QString> titles(const app::CheckListModel& model) {
    std::vector<QString> list;
    for (int i = 0; i < model.rowCount(); ++i)
        list.push_back(model.index(i).data().toString());
    return list;
}

} // namespace

TEST(CheckListModel, keepsToTheRulesOfModelsThroughEveryChange) {
    app::CheckListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({row("a"), row("b"), row("c")});
    model.setRows({row("a"), row("c"), row("d")});
    model.setRows({row("x")});
    model.setRows({row("x"), row("y"), row("z")});
    model.markChanged("y");
    model.setClock("z", "0:01");
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
    model.setRows({row("a"), row("b")});
    EXPECT_EQ(titles(model), (std::vector<QString>{"a", "b"}));
}

TEST(CheckListModel, saysExactlyWhatChanged) {
    app::CheckListModel model;
    model.setRows({row("a"), row("b"), row("c")});
    const QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    const QSignalSpy removed(&model, &QAbstractItemModel::rowsRemoved);
    const QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    model.setRows({row("a"), row("b", "1 of 2"), row("c")});
    EXPECT_EQ(inserted.size() + removed.size(), 0);
    ASSERT_EQ(changed.size(), 1);
    EXPECT_EQ(changed.first().first().toModelIndex().row(), 1);
    model.setRows({row("a"), row("n"), row("b", "1 of 2"), row("c")});
    ASSERT_EQ(inserted.size(), 1);
    EXPECT_EQ(inserted.first().at(1).toInt(), 1);
    EXPECT_EQ(removed.size(), 0);
}

TEST(CheckListModel, onlyMeasuresAndTimesTakeANumber) {
    app::CheckListModel model;
    app::CheckRow look = row("look");
    look.kind = app::CheckRow::Kind::Point;
    app::CheckRow measure = look;
    measure.key = measure.title = "measure";
    measure.pointKind = core::PointKind::Measure;
    model.setRows({look, measure});
    const QSignalSpy typed(&model, &app::CheckListModel::valueTyped);
    EXPECT_FALSE(model.setData(model.index(0), "3", Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(1), "three", Qt::EditRole));
    EXPECT_EQ(typed.size(), 0);
    EXPECT_TRUE(model.setData(model.index(1), "3,5", Qt::EditRole));
    ASSERT_EQ(typed.size(), 1);
    EXPECT_EQ(typed.first().at(1).toDouble(), 3.5);
}

#include "app/gui/widgets/row_list_model.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace {

app::ListRow row(const char* key, const char* aside = "") {
    app::ListRow made;
    made.key = key;
    made.title = key;
    made.aside = aside;
    return made;
}

std::vector<QString> titles(const app::RowListModel& model) {
    std::vector<QString> list;
    for (int i = 0; i < model.rowCount(); ++i)
        list.push_back(model.index(i).data().toString());
    return list;
}

} // namespace

TEST(RowListModel, keepsToTheRulesOfModelsThroughEveryChange) {
    app::RowListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({row("a"), row("b"), row("c")});
    model.setRows({row("a"), row("c"), row("d")});
    model.setRows({row("x")});
    model.setRows({row("x"), row("y"), row("z")});
    model.markChanged("y");
    model.showAside("z", "0:01");
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
    model.setRows({row("a"), row("b")});
    EXPECT_EQ(titles(model), (std::vector<QString>{"a", "b"}));
}

TEST(RowListModel, saysExactlyWhatChanged) {
    app::RowListModel model;
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

TEST(RowListModel, onlyLinesWithANumberTakeOne) {
    app::RowListModel model;
    const app::ListRow look = row("look");
    app::ListRow measure = row("measure");
    measure.number = app::NumberEntry{"kPa", {}};
    model.setRows({look, measure});
    const QSignalSpy typed(&model, &app::RowListModel::numberTyped);
    EXPECT_FALSE(model.setData(model.index(0), "3", Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(1), "three", Qt::EditRole));
    EXPECT_EQ(typed.size(), 0);
    EXPECT_TRUE(model.setData(model.index(1), "3,5", Qt::EditRole));
    ASSERT_EQ(typed.size(), 1);
    EXPECT_EQ(typed.first().at(0).toString(), "measure");
    EXPECT_EQ(typed.first().at(1).toDouble(), 3.5);
}

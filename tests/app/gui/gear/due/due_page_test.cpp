#include "app/gui/gear/due/due_page.h"

#include "app/gui/gear/due/due_chart.h"
#include "app/gui/widgets/plain_table.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "core/club/club_answers.h"
#include "tests/app/gui/gear/plan_pages.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>

namespace {

class DuePageStory : public support::PlanPages {
protected:
    app::DuePage& open() {
        m_page = std::make_unique<app::DuePage>(tools());
        m_page->resize(1000, 700);
        support::waitForSignal(*m_page, &app::DuePage::shown, [&] { m_page->show(); });
        return *m_page;
    }
    app::DueChart& chart() { return *m_page->findChild<app::DueChart*>("dueChart"); }
    QString monthLabel() { return m_page->findChild<QLabel*>("dueMonthLabel")->text(); }
    int lines() { return m_page->findChild<app::RowList*>("dueList")->model()->rowCount(); }

    std::unique_ptr<app::DuePage> m_page;
};

} // namespace

TEST_F(DuePageStory, everyRowOfTheDueListStandsInOneMonth) {
    const app::DuePage& page = open();
    const auto rows = stored().answers().dueList(today(), app::daysOfDueMonths(today()));
    ASSERT_FALSE(rows.empty());
    std::size_t shown = 0;
    for (const app::DueMonth& month : page.calendar().months)
        shown += month.rows.size();
    EXPECT_EQ(shown, rows.size());
}

TEST_F(DuePageStory, keysGoFromMonthToMonthAndEnterListsItsItems) {
    const app::DuePage& page = open();
    chart().setFocus();
    QTest::keyClick(&chart(), Qt::Key_Home);
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(&chart(), Qt::Key_Right);
    QTest::keyClick(&chart(), Qt::Key_Left);
    EXPECT_EQ(chart().month(), 3);
    QTest::keyClick(&chart(), Qt::Key_Return);
    EXPECT_EQ(static_cast<std::size_t>(lines()), page.calendar().months[3].rows.size());
    EXPECT_TRUE(monthLabel().startsWith("May 2026:")) << monthLabel().toStdString();
    QTest::keyClick(&chart(), Qt::Key_End);
    QTest::keyClick(&chart(), Qt::Key_Right);
    EXPECT_EQ(chart().month(), 24) << "there is nothing beyond";
}

TEST_F(DuePageStory, aPressOnAColumnListsItsItems) {
    const app::DuePage& page = open();
    ASSERT_TRUE(support::waitFor([&] { return chart().columnRect(4).width() > 5; }));
    QTest::mouseClick(chart().viewport(), Qt::LeftButton, {}, chart().columnRect(4).center());
    EXPECT_EQ(chart().month(), 4);
    EXPECT_EQ(static_cast<std::size_t>(lines()), page.calendar().months[4].rows.size());
    EXPECT_GT(lines(), 0);
}

TEST_F(DuePageStory, theTableSaysTheSameNumbers) {
    app::DuePage& page = open();
    page.findChild<QPushButton*>("dueTableButton")->click();
    auto* table = page.findChild<app::PlainTable*>("dueTable");
    ASSERT_TRUE(table->isVisible());
    ASSERT_EQ(table->model()->rowCount(), 25);
    for (int i = 0; i < 25; ++i)
        EXPECT_EQ(table->model()->index(i, 1).data().toString(),
                  QString::number(page.calendar().months[static_cast<std::size_t>(i)].rows.size()));
    EXPECT_FALSE(chart().accessibleDescription().isEmpty());
}

TEST_F(DuePageStory, aKitTypeIsSeenAloneAndBySize) {
    app::DuePage& page = open();
    auto* kitTypes = page.findChild<QComboBox*>("dueKitTypeBox");
    const int jackets = kitTypes->findData("life jacket");
    ASSERT_GT(jackets, 0);
    kitTypes->setCurrentIndex(jackets);
    emit kitTypes->activated(jackets);
    int expected = 0;
    for (const core::DueRow& row : stored().answers().dueList(today(), app::daysOfDueMonths(today())))
        expected += row.kitType == "life jacket";
    int shown = 0;
    for (const app::DueMonth& month : page.calendar().months)
        shown += static_cast<int>(month.rows.size());
    EXPECT_EQ(shown, expected);
    EXPECT_GT(page.findChild<QComboBox*>("dueSizeBox")->count(), 2);
}

TEST_F(DuePageStory, eachLineSaysItsRuleAndTheSourceAndOpensItsItem) {
    open();
    chart().setMonth(0);
    QTest::keyClick(&chart(), Qt::Key_Return);
    auto* list = m_page->findChild<app::RowList*>("dueList");
    const auto* model = static_cast<app::RowListModel*>(list->model());
    ASSERT_GT(model->rowCount(), 0);
    for (const app::ListRow& row : model->rows())
        EXPECT_TRUE(row.remark.contains("source: ")) << row.remark.toStdString();
    list->setCurrentIndex(model->index(0));
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(m_shownItem, model->rows().front().code);
}

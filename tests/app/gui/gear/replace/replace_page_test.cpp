#include "app/gui/gear/replace/replace_page.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_plans.h"

#include "app/gui/gear/replace/arrival_panel.h"
#include "app/gui/widgets/plain_table.h"
#include "app/paper/order_sheet.h"
#include "tests/app/gui/gear/plan_pages.h"

#include <QFile>
#include <QPushButton>
#include <QSpinBox>

namespace {

class ReplacePageStory : public support::PlanPages {
protected:
    app::ReplacePage& planned() {
        m_page = std::make_unique<app::ReplacePage>(tools());
        waitForPlan([&] { m_page->show(); });
        return *m_page;
    }
    void waitForPlan(const std::function<void()>& act) {
        support::waitForSignal(*m_page, &app::ReplacePage::planned, act);
    }
    static QByteArray bytesOf(const QString& file) {
        QFile in(file);
        EXPECT_TRUE(in.open(QIODevice::ReadOnly)) << file.toStdString();
        return in.readAll();
    }

    std::unique_ptr<app::ReplacePage> m_page;
};

} // namespace

TEST_F(ReplacePageStory, theTableHasARowForEachOfThePlanInItsOrder) {
    const app::ReplacePage& page = planned();
    const auto plan = stored().plans().replacement({}, today());
    ASSERT_TRUE(plan);
    const auto* table = page.findChild<app::PlainTable*>("replaceTable");
    ASSERT_EQ(table->model()->rowCount(), static_cast<int>(plan->rows.size()));
    for (std::size_t i = 0; i < plan->rows.size(); ++i) {
        const int row = static_cast<int>(i);
        EXPECT_TRUE(table->model()->index(row, 0).data().toString().startsWith(
            QString::fromStdString(plan->rows[i].kitType)));
        EXPECT_EQ(table->model()->index(row, 1).data().toString(), QString::number(plan->rows[i].wanted));
        EXPECT_EQ(table->model()->index(row, 2).data().toString(), QString::number(plan->rows[i].stock));
        if (plan->rows[i].quantity.value_or(0) > 0) {
            EXPECT_EQ(table->model()->index(row, 4).data().toString(),
                      QString::number(*plan->rows[i].quantity));
        }
    }
}

TEST_F(ReplacePageStory, theSheetsAreThoseOfThePlan) {
    app::ReplacePage& page = planned();
    ASSERT_TRUE(page.plan()->runsShort()) << "the demo club has something to order";
    m_saveTo = QString::fromStdString(inFolder("order.csv").string());
    page.findChild<QPushButton*>("orderCsvButton")->click();
    EXPECT_EQ(bytesOf(m_saveTo), QByteArray::fromStdString(app::orderCsv(*page.plan())));
    m_saveTo = QString::fromStdString(inFolder("order.ics").string());
    page.findChild<QPushButton*>("orderCalendarButton")->click();
    EXPECT_EQ(bytesOf(m_saveTo), QByteArray::fromStdString(
                                     app::orderCalendar("Quillmere Lake Rescue", *page.plan(), moment().at)));
    m_saveTo = QString::fromStdString(inFolder("order.pdf").string());
    page.findChild<QPushButton*>("orderSheetButton")->click();
    EXPECT_TRUE(bytesOf(m_saveTo).startsWith("%PDF-"));
}

TEST_F(ReplacePageStory, whatArrivedIsInTheRegisterWithTagsAndInTheStock) {
    app::ReplacePage& page = planned();
    ASSERT_FALSE(page.plan()->rows.empty());
    const core::ReplacementRow before = page.plan()->rows.front();
    page.findChild<QSpinBox*>("arrivalCountBox")->setValue(3);
    waitForPlan([&] { page.findChild<QPushButton*>("arrivalRegisterButton")->click(); });
    ASSERT_EQ(page.arrival().registered().size(), 3u);
    for (const std::string& code : page.arrival().registered()) {
        const auto item = stored().kit().item(code);
        ASSERT_TRUE(item) << code;
        EXPECT_EQ(item->kitType, before.kitType);
        EXPECT_EQ(item->size, before.size);
        const auto history = stored().answers().history(code);
        ASSERT_TRUE(history);
        EXPECT_EQ(history->front().by, "Joss Iveny");
    }
}

#include "app/gui/gear/ready/ready_page.h"
#include "core/club/club_plans.h"

#include "app/gui/widgets/row_list.h"
#include "app/text/make_ready_sentences.h"
#include "tests/app/gui/gear/plan_pages.h"

#include <QLabel>
#include <QTest>

namespace {

class ReadyPageStory : public support::PlanPages {
protected:
    app::ReadyPage& planned() {
        m_page = std::make_unique<app::ReadyPage>(tools());
        m_page->show();
        support::waitForSignal(*m_page, &app::ReadyPage::planned, [&] { m_page->makePlan(); });
        return *m_page;
    }
    void scan(const QString& text) {
        support::waitForSignal(*m_page, &app::ReadyPage::codeTaken, [&] { m_page->takeCode(text); });
    }
    QString said() { return m_page->findChild<QLabel*>("readySaidLabel")->text(); }

    std::unique_ptr<app::ReadyPage> m_page;
};

} // namespace

TEST_F(ReadyPageStory, showsThePlanThatCoreMakes) {
    const app::ReadyPage& page = planned();
    const auto plan = stored().plans().makeReady({}, today());
    ASSERT_TRUE(plan);
    ASSERT_FALSE(plan->moves.empty());
    EXPECT_EQ(page.moves().total(), static_cast<int>(plan->moves.size()));
    EXPECT_EQ(page.findChild<QLabel*>("readyAnswerLabel")->text(), app::answerInWords(*plan));
    EXPECT_EQ(page.findChild<QLabel*>("readyGoalsLabel")->text(), app::goalsInWords(*plan));
    EXPECT_EQ(page.findChild<app::RowList*>("readyBoatList")->model()->rowCount(),
              static_cast<int>(plan->boats.size()));
}

TEST_F(ReadyPageStory, aScanTicksItsMoveAndAnotherTagIsToldApart) {
    const app::ReadyPage& page = planned();
    const auto plan = stored().plans().makeReady({}, today());
    ASSERT_FALSE(plan->moves.empty());
    scan(QString::fromStdString(plan->moves.front().item.id));
    EXPECT_EQ(page.moves().done(), 1);
    scan("K000000000");
    EXPECT_EQ(page.moves().done(), 1);
    EXPECT_TRUE(said().contains("no item of this club")) << said().toStdString();
}

TEST_F(ReadyPageStory, aPressOnALineTicksIt) {
    const app::ReadyPage& page = planned();
    auto* list = m_page->findChild<app::RowList*>("readyMoveList");
    ASSERT_GT(page.moves().total(), 0);
    list->setCurrentIndex(list->model()->index(1, 0));
    QTest::keyClick(list, Qt::Key_Space);
    EXPECT_EQ(page.moves().done(), 1);
}

#include "app/gui/gear/tags/tags_page.h"

#include "app/gui/widgets/row_list.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/gear/plan_pages.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTest>

namespace {

class TagsPageStory : public support::PlanPages {
protected:
    app::TagsPage& open() {
        m_page = std::make_unique<app::TagsPage>(tools());
        support::waitForSignal(*m_page, &app::TagsPage::shown, [&] { m_page->show(); });
        return *m_page;
    }
    void choose(const char* box, const QString& what) {
        auto* choices = m_page->findChild<QComboBox*>(box);
        const int at = choices->findData(what);
        ASSERT_GE(at, 0) << what.toStdString();
        choices->setCurrentIndex(at);
        emit choices->activated(at);
    }

    std::unique_ptr<app::TagsPage> m_page;
};

} // namespace

TEST_F(TagsPageStory, takesTheTagsOfABoatAndLeavesOutWhatIsPressed) {
    app::TagsPage& page = open();
    EXPECT_EQ(page.choice().chosen().size(), stored().kit().allTagLabels(today())->size());
    choose("tagsHomeBox", "Grebe");
    const auto kit = page.choice().chosen();
    ASSERT_FALSE(kit.empty());
    for (const core::TagLabel& tag : kit)
        EXPECT_TRUE(tag.owner == "Grebe" || tag.name == "Grebe") << tag.code;
    auto* list = page.findChild<app::RowList*>("tagsList");
    list->setCurrentIndex(list->model()->index(0, 0));
    QTest::keyClick(list, Qt::Key_Space);
    EXPECT_EQ(page.choice().chosen().size(), kit.size() - 1);
    page.findChild<QPushButton*>("tagsAllButton")->click();
    EXPECT_EQ(page.choice().chosen().size(), kit.size());
    page.findChild<QPushButton*>("tagsNoneButton")->click();
    EXPECT_TRUE(page.choice().chosen().empty());
    EXPECT_FALSE(page.findChild<QPushButton*>("tagsWriteButton")->isEnabled());
}

TEST(TagChoice, tagsThatWearOutComeFirstAndCanBeTakenAlone) {
    app::TagChoice choice;
    choice.setTags({{"K1", "paddle", "Petrel", {}},
                    {"K2", "paddle", "Petrel", 1.6},
                    {"K3", "paddle", "Petrel", 3.9},
                    {"K4", "radio", "Petrel", 0.4}});
    EXPECT_EQ(choice.wornCount(), 2);
    const auto lines = choice.lines();
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[0].key, "K4");
    EXPECT_EQ(lines[0].remark, "Petrel · wearing out: 0.4 of 4");
    EXPECT_EQ(lines[1].key, "K2");
    EXPECT_EQ(lines[2].remark, "Petrel");
    choice.takeWorn();
    ASSERT_EQ(choice.chosen().size(), 2U);
    EXPECT_EQ(choice.chosen()[0].code, "K4");
}

TEST_F(TagsPageStory, offersKitBoatsPeopleAndPlaces) {
    app::TagsPage& page = open();
    const auto chosen = [&](const char* box, const char* what) {
        choose(box, QString::fromUtf8(what));
        std::string codes;
        for (const core::TagLabel& tag : page.choice().chosen())
            codes += tag.code.substr(0, 1);
        return codes;
    };
    EXPECT_EQ(chosen("tagsKitTypeBox", "places"), "SSSS");
    EXPECT_EQ(chosen("tagsKitTypeBox", "boats"), "BBB");
    EXPECT_EQ(chosen("tagsKitTypeBox", "people"), "PPPPPPPP");
    choose("tagsKitTypeBox", {});
    // A person's or place's own tag stands with the kit that belongs there.
    EXPECT_NE(chosen("tagsHomeBox", "Gear store").find("S"), std::string::npos);
    EXPECT_NE(chosen("tagsHomeBox", "Gear store").find("K"), std::string::npos);
    EXPECT_NE(chosen("tagsHomeBox", "Ines Varro").find("P"), std::string::npos);
}

// Of the table in docs/reader.md, which reader_reach measured.
TEST_F(TagsPageStory, saysFromHowFarAWebcamReadsTheChosenSize) {
    app::TagsPage& page = open();
    const auto* summary = page.findChild<QLabel*>("tagsSummaryLabel");
    EXPECT_TRUE(summary->text().contains("0.65 m (720p) or 1.05 m (1080p)")) << summary->text().toStdString();
    auto* sizes = page.findChild<QComboBox*>("tagsSizeBox");
    sizes->setCurrentText("40 mm");
    emit sizes->activated(sizes->currentIndex());
    EXPECT_TRUE(summary->text().contains("0.90 m (720p) or 1.40 m (1080p)")) << summary->text().toStdString();
}

TEST_F(TagsPageStory, offersOnlySizesThatThePaperCarries) {
    app::TagsPage& page = open();
    auto* papers = page.findChild<QComboBox*>("tagsPaperBox");
    auto* sizes = page.findChild<QComboBox*>("tagsSizeBox");
    EXPECT_EQ(sizes->currentData().toDouble(), 30);
    papers->setCurrentIndex(papers->count() - 1); // 38.1 × 21.2 mm
    emit papers->activated(papers->count() - 1);
    EXPECT_LT(sizes->itemData(sizes->count() - 1).toDouble(), 21.2);
    EXPECT_LT(sizes->currentData().toDouble(), 21.2);
}

TEST_F(TagsPageStory, writesASheet) {
    app::TagsPage& page = open();
    choose("tagsHomeBox", "Grebe");
    m_saveTo = QString::fromStdString(inFolder("tags.pdf").string());
    bool isWritten = false;
    QObject::connect(&page, &app::TagsPage::written, &page, [&] { isWritten = true; });
    page.findChild<QPushButton*>("tagsWriteButton")->click();
    ASSERT_TRUE(support::waitFor([&] { return isWritten; }));
    QFile file(m_saveTo);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
}

#include "app/gui/gear/record/evidence_panel.h"
#include "app/gui/gear/record/evidence_photos.h"
#include "app/gui/gear/record/evidence_printout.h"
#include "app/gui/gear/record/record_page.h"
#include "app/gui/gear/record/verify_panel.h"
#include "core/answers/evidence.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_photos.h"
#include "core/club/club_record.h"
#include "scanner/files/small_jpeg.h"
#include "tests/app/gui/gear/plan_pages.h"
#include "tests/app/gui/printed_text.h"

#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

namespace {

class EvidenceStory : public support::PlanPages {
protected:
    void SetUp() override {
        PlanPages::SetUp();
        auto club = core::Club::open(file());
        ASSERT_TRUE(club);
        const auto check = club->checks().open("Grebe", core::Phase::Launch, moment());
        ASSERT_TRUE(club->checks().giveNames(check->check, {"Petra Lund", "Sami Reeve"}, moment()));
        const auto kit = club->kit().labelsOfBoat("Grebe");
        ASSERT_TRUE(kit);
        for (const core::TagLabel& tag : *kit)
            ASSERT_TRUE(club->checks().scan(check->check, core::ScannedText::typed(tag.code),
                                            core::SeenBy::Camera, moment()));
        ASSERT_TRUE(club->checks().sign(check->check, "Petra Lund", "points not looked at", moment()));
        // Something newer than the signature, so that the chain's head is another hash than the signature's.
        ASSERT_TRUE(
            club->log().add("Grebe", "Oar grip loose", core::Severity::Remark, "Petra Lund", moment()));
    }
    core::Evidence evidence(const char* on) {
        return *stored().answers().evidence("Grebe", *core::Instant::parse(on));
    }
};

} // namespace

TEST_F(EvidenceStory, saysWhatWasAboardInDateAndWhoSigned) {
    const core::Evidence found = evidence("2026-03-14T07:00:00Z");
    ASSERT_TRUE(found.out);
    const app::EvidencePrintout printout = app::evidencePrintoutOf(found, "Quillmere Lake Rescue", today());
    ASSERT_EQ(printout.rows.size(), found.aboard.size());
    for (std::size_t i = 0; i < printout.rows.size(); ++i)
        EXPECT_EQ(printout.rows[i].code.toStdString(), found.aboard[i].item.id);
    EXPECT_TRUE(printout.more.join(' ').contains("Petra Lund"));
    EXPECT_TRUE(printout.proof.join(' ').contains(QString::fromStdString(found.factHash)));
    EXPECT_TRUE(printout.proof.join(' ').contains(QString::fromStdString(found.head)));
}

TEST_F(EvidenceStory, beforeTheFirstLaunchItSaysThatNothingIsKnown) {
    const app::EvidencePrintout printout =
        app::evidencePrintoutOf(evidence("2020-01-01T00:00:00Z"), "Club", today());
    EXPECT_FALSE(printout.isKnown);
    EXPECT_TRUE(printout.rows.empty());
    EXPECT_TRUE(printout.answer.startsWith("No launch check of Grebe")) << printout.answer.toStdString();
}

TEST_F(EvidenceStory, theSheetIsA4WithEveryItemAndTheChainsHeadOnEachPage) {
    app::EvidencePrintout printout =
        app::evidencePrintoutOf(evidence("2026-03-14T07:00:00Z"), "Club", today());
    const auto few = printout.rows;
    while (printout.rows.size() < 70)
        printout.rows.insert(printout.rows.end(), few.begin(), few.end());
    const QString file = QString::fromStdString(inFolder("evidence.pdf").string());
    ASSERT_TRUE(app::saveEvidence(file, printout));
    const QString info = support::outputOf("pdfinfo", {file});
    EXPECT_TRUE(info.contains("(A4)")) << info.toStdString();
    const auto pages = QRegularExpression("Pages:\\s+(\\d+)").match(info).captured(1).toInt();
    EXPECT_GT(pages, 1);
    const QString text = support::outputOf("pdftotext", {"-layout", file, "-"});
    const QString head = QString::fromStdString(stored().answers().evidence("Grebe", moment().at)->head);
    EXPECT_EQ(QString(text).remove(QRegularExpression("\\s")).count(head), pages);
    for (const app::ListRow& row : few)
        EXPECT_TRUE(text.contains(row.aside)) << row.aside.toStdString();
}

TEST_F(EvidenceStory, photographsStandOnTheSheetWithTheirEntry) {
    QImage picture(640, 320, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    const std::string jpeg = scanner::smallJpegOf(picture, 1280, 300'000).toStdString();
    {
        auto club = core::Club::open(file());
        ASSERT_TRUE(club);
        const auto log = club->log().entries();
        for (const core::LogEntry& entry : *log)
            if (entry.text == "Oar grip loose") {
                ASSERT_TRUE(club->photos().addToEntry(entry.id, jpeg, "Petra Lund", moment()));
            }
        ASSERT_TRUE(club->photos().addToItem("KFC3K7GM79", jpeg, "Petra Lund", moment()));
        ASSERT_TRUE(club->photos().addToItem("KGYD21XNA5", jpeg, {}, moment())) << "which is not aboard";
    }
    const core::Evidence found = evidence("2026-03-14T07:00:00Z");
    app::EvidencePrintout printout = app::evidencePrintoutOf(found, "Club", today());
    printout.photos = app::photosOf(stored(), found, today());
    ASSERT_EQ(printout.photos.size(), 2u);
    EXPECT_EQ(printout.photos[0].title, "Grebe, log of 14 March 2026: Oar grip loose");
    EXPECT_TRUE(printout.photos[1].title.endsWith("KFC3 K7GM 79"));
    const QString file = QString::fromStdString(inFolder("photos.pdf").string());
    ASSERT_TRUE(app::saveEvidence(file, printout));
    EXPECT_EQ(support::outputOf("pdfimages", {"-list", file}).count(" image "), 2);
    EXPECT_TRUE(support::outputOf("pdftotext", {"-layout", file, "-"}).contains("Oar grip loose"));
    // Before the entry was written, and before the photographs were made, they are no evidence.
    const core::Evidence before = evidence("2026-03-14T06:39:00Z");
    EXPECT_TRUE(app::photosOf(stored(), before, today()).empty());
}

TEST_F(EvidenceStory, folderThatIsNotThereIsToldNotIgnored) {
    EXPECT_FALSE(app::saveEvidence("/no/such/folder/evidence.pdf", {}));
}

TEST(InstantOfText, readsADayWithATimeAndADayAlone) {
    ASSERT_TRUE(app::instantOfText("2026-03-14 06:40"));
    EXPECT_EQ(app::instantOfText(" 2026-03-14  06:40")->localDay().iso(), "2026-03-14");
    ASSERT_TRUE(app::instantOfText("2026-03-14"));
    EXPECT_GT(*app::instantOfText("2026-03-14"), *app::instantOfText("2026-03-14 23:59"));
    for (const char* wrong : {"", "14.3.2026", "2026-02-30", "2026-03-14 25:00", "today"})
        EXPECT_FALSE(app::instantOfText(wrong)) << wrong;
}

TEST_F(EvidenceStory, thePageAnswersForABoatAndAnInstantAndSavesIt) {
    app::RecordPage page(tools());
    page.show();
    auto* boats = page.findChild<QComboBox*>("evidenceBoatBox");
    ASSERT_TRUE(support::waitFor([&] { return boats->count() == 3; }));
    boats->setCurrentText("Grebe");
    page.findChild<QLineEdit*>("evidenceWhenEdit")->setText("2026-03-15");
    support::waitForSignal(page.evidencePanel(), &app::EvidencePanel::shown,
                           [&] { page.evidencePanel().look(); });
    EXPECT_TRUE(page.findChild<QLabel*>("evidenceAnswerLabel")->text().startsWith("Grebe was out"));
    m_saveTo = QString::fromStdString(inFolder("printout.pdf").string());
    page.findChild<QPushButton*>("evidenceSaveButton")->click();
    EXPECT_TRUE(std::filesystem::exists(inFolder("printout.pdf")));
    page.findChild<QLineEdit*>("evidenceWhenEdit")->setText("yesterday");
    page.evidencePanel().look();
    EXPECT_FALSE(page.findChild<QPushButton*>("evidenceSaveButton")->isEnabled());
}

TEST_F(EvidenceStory, theRecordIsSaidToBeWhole) {
    app::RecordPage page(tools());
    support::waitForSignal(page.verifyPanel(), &app::VerifyPanel::shown,
                           [&] { page.verifyPanel().verify(); });
    const QString answer = page.findChild<QLabel*>("verifyAnswerLabel")->text();
    EXPECT_TRUE(answer.startsWith("No fault was found in the record")) << answer.toStdString();
    auto club = core::Club::open(file());
    ASSERT_TRUE(club);
    EXPECT_TRUE(page.findChild<QLabel*>("verifyHeadLabel")
                    ->text()
                    .contains(QString::fromStdString(club->record().verify(false)->head)));
}

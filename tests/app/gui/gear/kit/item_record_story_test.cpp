#include "core/answers/history.h"
#include "core/answers/item_record.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_photos.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/widgets/picture_view.h"

#include <QImage>

using support::GearStory;

namespace {

constexpr const char* jacketOfReeds = "K5M9AR38J5"; // of demo/club/items.csv: with a yearly service

class ItemRecordStory : public GearStory {
protected:
    void openJacket(app::Choosers choosers = {}) {
        openOffice("kit", std::move(choosers));
        typeInto("kitSearchEdit", jacketOfReeds);
        press(Qt::Key_Return);
        settle();
        ASSERT_TRUE(child("kitItemPanel")->isVisible());
    }
    QString picture() {
        QImage image(2000, 1000, QImage::Format_RGB32);
        image.fill(Qt::darkGreen);
        const QString path = pathOf("label.png");
        EXPECT_TRUE(image.save(path));
        return path;
    }
    app::Choosers choosing(const QString& file) {
        app::Choosers choosers;
        choosers.pictures = [file](QWidget*) { return QStringList{file}; };
        return choosers;
    }
};

} // namespace

TEST_F(ItemRecordStory, anInflationIsRecordedByOnePress) {
    openJacket();
    const auto before = stored().kit().itemRecord(jacketOfReeds)->happenings.size();
    EXPECT_EQ(child<QPushButton>("happenedButton")->text(), "Inflated");
    pressButton("happenedButton");
    const auto happenings = stored().kit().itemRecord(jacketOfReeds)->happenings;
    ASSERT_EQ(happenings.size(), before + 1);
    EXPECT_EQ(happenings.back().day, today());
    EXPECT_TRUE(textOf("kitSaidLabel").startsWith("Recorded for today: inflated"));
    EXPECT_EQ(stored().answers().history(jacketOfReeds)->back().by, "Joss Iveny");
    pressButton("happenedButton");
    EXPECT_EQ(stored().kit().itemRecord(jacketOfReeds)->happenings.size(), before + 1);
    EXPECT_TRUE(textOf("kitSaidLabel").contains("already"));
}

TEST_F(ItemRecordStory, aRecordMadeInErrorIsWithdrawnWithAReason) {
    openJacket();
    EXPECT_EQ(child<QComboBox>("serviceRecordBox")->count(), 2);
    choose("serviceRecordBox", "yearly service, 26 April 2025: passed");
    EXPECT_FALSE(child("recordErrorReasonEdit")->isVisible());
    pressButton("recordErrorButton");
    ASSERT_TRUE(child("recordErrorReasonEdit")->hasFocus());
    type("it was another jacket");
    press(Qt::Key_Return);
    press(Qt::Key_Space);
    EXPECT_EQ(stored().kit().serviceRecords(jacketOfReeds).size(), 1u);
    EXPECT_EQ(child<QComboBox>("serviceRecordBox")->count(), 1);
    EXPECT_FALSE(child("recordErrorReasonEdit")->isVisible());
    EXPECT_TRUE(textOf("kitSaidLabel").startsWith("Withdrawn"));
    bool isTold = false;
    for (const app::ListRow& row : rowsIn("kitItemList"))
        isTold |= row.title == "Record of yearly service on 26 April 2025 withdrawn: it was another jacket";
    EXPECT_TRUE(isTold);
}

TEST_F(ItemRecordStory, aPhotographIsAddedAndShownLarger) {
    openJacket(choosing(picture()));
    EXPECT_EQ(child("photoButton"), nullptr);
    pressButton("addPhotoButton");
    settle();
    const auto photos = stored().photos().ofItem(jacketOfReeds);
    ASSERT_EQ(photos.size(), 1u);
    EXPECT_EQ(QImage::fromData(QByteArray::fromStdString(*stored().photos().jpegOf(photos[0].sha256))).size(),
              QSize(1280, 640));
    ASSERT_NE(child("photoButton"), nullptr);
    pressButton("photoButton");
    auto* view = office().findChild<app::PictureView*>();
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->size(), office().window()->size());
    EXPECT_TRUE(view->hasFocus());
    press(Qt::Key_Escape);
    EXPECT_FALSE(view->isVisible());
    EXPECT_TRUE(child("photoButton")->hasFocus());
}

TEST_F(ItemRecordStory, aWrongPictureIsTakenAwayByASecondPress) {
    openJacket(choosing(picture()));
    pressButton("addPhotoButton");
    settle();
    pressButton("photoButton");
    auto* wrong = office().window()->findChild<QPushButton*>("pictureButton");
    ASSERT_NE(wrong, nullptr);
    wrong->click();
    EXPECT_EQ(stored().photos().ofItem(jacketOfReeds).size(), 1u) << "it is asked once more";
    QTest::qWait(QApplication::doubleClickInterval() + 20);
    wrong->click();
    settle();
    EXPECT_TRUE(stored().photos().ofItem(jacketOfReeds).empty());
    EXPECT_TRUE(textOf("kitSaidLabel").contains("no more")) << textOf("kitSaidLabel").toStdString();
    EXPECT_EQ(child("photoButton"), nullptr);
}

TEST_F(ItemRecordStory, whatIsNoPictureIsSaid) {
    const QString note = pathOf("note.txt");
    QFile file(note);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("no picture");
    file.close();
    openJacket(choosing(note));
    pressButton("addPhotoButton");
    settle();
    EXPECT_TRUE(textOf("kitSaidLabel").contains("note.txt")) << textOf("kitSaidLabel").toStdString();
    EXPECT_TRUE(stored().photos().all().empty());
}

TEST_F(ItemRecordStory, aLogEntryHasPhotographsToo) {
    openOffice("log", choosing(picture()));
    focus("clubLogList");
    press(Qt::Key_Home);
    pressButton("addPhotoButton");
    settle();
    const auto entry = stored().log().entries()->front();
    EXPECT_EQ(stored().photos().ofEntry(entry.id).size(), 1u);
    EXPECT_NE(child("photoButton"), nullptr);
    EXPECT_TRUE(textOf("logSaidLabel").contains("photograph"));
}

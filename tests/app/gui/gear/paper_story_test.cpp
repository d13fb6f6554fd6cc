#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/language.h"
#include "core/club/club_kit.h"
#include "core/register/item.h"
#include "tests/app/gui/printed_text.h"

#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QMenu>

namespace {

/// Every list is printed, saved and copied by one button.
class PaperStory : public support::GearStory {
protected:
    void openPage(const QString& page, const QString& fileName) {
        app::Choosers choosers;
        choosers.saveFile = [this, fileName](QWidget*, const QString& proposed) {
            m_proposed = proposed;
            return fileName.isEmpty() ? QString()
                                      : QString::fromStdString((folder() / fileName.toStdString()).string());
        };
        openOffice(page, std::move(choosers));
        m_path = QString::fromStdString((folder() / fileName.toStdString()).string());
    }
    void take(const QString& words) {
        for (QAction* action : child<app::PaperButton>("paperButton")->choices().actions())
            if (action->text().remove('&') == words) {
                action->trigger();
                return settle();
            }
        ADD_FAILURE() << "no choice " << words.toStdString();
    }
    QString printed() { return support::outputOf("pdftotext", {"-layout", m_path, "-"}).simplified(); }
    QStringList choicesOf(const char* page) {
        openPage(page, {});
        QStringList words;
        for (QAction* action : child<app::PaperButton>("paperButton")->choices().actions())
            words << action->text().remove('&');
        return words;
    }

    /// The page is no larger than its place in the window of 1280 × 800.
    void expectNoScrolling(const char* page) {
        EXPECT_EQ(office().size(), QSize(1280, 800)) << page;
        const QWidget* shown = office().page(page);
        EXPECT_LE(shown->width(), shown->parentWidget()->width()) << page;
        EXPECT_LE(shown->height(), shown->parentWidget()->height()) << page;
    }

    QString m_proposed, m_path;
};

const QStringList ofLists{"Print this list…", "Save as PDF…", "Save as CSV…", "Copy as text"};

} // namespace

TEST_F(PaperStory, everyListHasTheSameChoicesAndFitsItsPage) {
    for (const char* page : {"missing", "events", "kit", "stocktake", "log", "ready", "due"}) {
        EXPECT_EQ(choicesOf(page), ofLists) << page;
        auto* button = child<app::PaperButton>("paperButton");
        EXPECT_TRUE(button->isVisible()) << page;
        expectNoScrolling(page);
        EXPECT_TRUE(office().rect().contains(QRect(button->mapTo(&office(), QPoint()), button->size())))
            << page;
        TearDown();
    }
}

TEST_F(PaperStory, noPageIsWiderThanItsWindowInGermanEither) {
    app::speak("de");
    for (const char* page : {"missing", "events", "log", "ready", "due", "manifests"}) {
        openPage(page, {});
        expectNoScrolling(page);
        EXPECT_EQ(child<app::PaperButton>("paperButton")->text(), "Ausgeben…");
        TearDown();
    }
    app::speak("en");
}

TEST_F(PaperStory, whatIsMissingIsSavedAsPdfAndThatIsSaid) {
    openPage("missing", "list.pdf");
    take("Save as PDF…");
    EXPECT_EQ(m_proposed, "Missing 2026-03-14.pdf");
    const QString text = printed();
    for (const char* part :
         {"Quillmere Lake Rescue · Missing · 14 March 2026", "1 item missing", "KMRM QRZM 66", "page 1 of 1"})
        EXPECT_TRUE(text.contains(part)) << part << " in " << text.toStdString();
    EXPECT_EQ(textOf("missingSaidLabel"), "Saved: " + m_path);
}

TEST_F(PaperStory, theLogIsSavedAsCsv) {
    openPage("log", "log.csv");
    take("Save as CSV…");
    EXPECT_EQ(m_proposed, "Log 2026-03-14.csv");
    QFile file(m_path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    EXPECT_TRUE(bytes.startsWith("state,about,day,what is the matter,by,closed on,what was done\r\n"));
    EXPECT_TRUE(
        bytes.contains("\r\nopen,Bittern,2026-03-07,Stitching of the starboard handle begins to fray,"));
}

TEST_F(PaperStory, aMessageHasALineForEachThing) {
    openPage("missing", {});
    QApplication::clipboard()->clear();
    take("Copy as text");
    const QStringList lines = QApplication::clipboard()->text().split('\n', Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 3);
    EXPECT_EQ(lines[0], "Missing, 14 March 2026 (Quillmere Lake Rescue)");
    EXPECT_TRUE(lines[2].startsWith("◯ knife · KMRM QRZM 66 · Dabchick · 8 March 2026"))
        << lines[2].toStdString();
    EXPECT_TRUE(textOf("missingSaidLabel").startsWith("Copied as text: Missing, 1 line"));
}

TEST_F(PaperStory, nothingChosenWritesNothing) {
    openPage("kit", {});
    take("Save as PDF…");
    EXPECT_EQ(m_proposed, "Kit 2026-03-14.pdf") << "it was asked where to";
    EXPECT_EQ(child<QLabel>("pageSaidLabel"), nullptr) << "nothing is to be said";
}

TEST_F(PaperStory, aFolderThatIsNotThereIsSaid) {
    openPage("due", "nowhere/due.pdf");
    take("Save as PDF…");
    EXPECT_TRUE(textOf("pageSaidLabel").contains("nowhere/due.pdf")) << textOf("pageSaidLabel").toStdString();
    EXPECT_FALSE(QFile::exists(m_path));
}

TEST_F(PaperStory, dueIsWhatTheBoxesChose) {
    openPage("due", "due.csv");
    choose("dueKitTypeBox", "radio");
    take("Save as CSV…");
    QFile file(m_path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QList<QByteArray> lines = file.readAll().trimmed().split('\n');
    ASSERT_GT(lines.size(), 2);
    for (qsizetype i = 1; i < lines.size(); ++i)
        EXPECT_TRUE(lines[i].contains(",radio,")) << lines[i].toStdString();
}

TEST_F(PaperStory, aStocktakeIsPrintedAsItStands) {
    openPage("stocktake", "stocktake.pdf");
    choose("stocktakePlaceBox", "Drying rack");
    pressButton("stocktakeBeginButton");
    take("Save as PDF…");
    const QString text = printed();
    EXPECT_TRUE(text.contains("Drying rack: ")) << text.toStdString();
    EXPECT_TRUE(text.contains("K5M9 AR38 J5")) << "the jacket that hangs there";
    EXPECT_TRUE(text.contains("still to find")) << text.toStdString();
}

TEST_F(PaperStory, aBoatsCheckListAndItsClasssCardComeFromItsManifest) {
    openPage("manifests", "paper.pdf");
    choose("manifestOwnerBox", "Bittern");
    take("Save a check list as PDF…");
    EXPECT_EQ(m_proposed, "Check list Bittern.pdf");
    EXPECT_TRUE(printed().contains("port chamber, 17 to 21 kPa"));
    EXPECT_TRUE(printed().contains("Stitching of the starboard handle begins to fray"));
    choose("manifestOwnerBox", "class inflatable");
    take("Save the wall card as PDF…");
    EXPECT_EQ(m_proposed, "Wall card Bittern.pdf");
    EXPECT_TRUE(printed().contains("Before"));
    EXPECT_TRUE(support::outputOf("pdfinfo", {m_path}).contains("Title: Wall card Bittern") ||
                support::outputOf("pdfinfo", {m_path}).contains("Wall card Bittern"));
}

TEST_F(PaperStory, theKitListOnPaperIsWhatWasFound) {
    openPage("kit", "kit.csv");
    choose("kitHomeBox", "Grebe");
    choose("kitOrderBox", "by tag");
    take("Save as CSV…");
    QStringList found;
    for (const app::TableRow& row : rowsInTable("kitTable"))
        found << QString(row.cells.back()).remove(' ');
    QFile file(m_path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QStringList written;
    for (const QString& line : QString::fromUtf8(file.readAll()).split("\r\n", Qt::SkipEmptyParts).mid(1))
        written << line.section(',', -1);
    EXPECT_EQ(written.join('|').toStdString(), found.join('|').toStdString());
    EXPECT_LT(found.size(), static_cast<qsizetype>(stored().kit().all().size()));
    take("Copy as text");
    EXPECT_TRUE(QApplication::clipboard()->text().contains("in use, Grebe"));
}

TEST_F(PaperStory, aSmallWindowScrollsAndTheKitsTagIsThereAtEachSize) {
    openPage("kit", {});
    auto* table = child<app::PlainTable>("kitTable");
    const auto tags = [&] { return table->isColumnHidden(7) ? 0 : table->columnWidth(7); };
    for (const QSize size : {QSize(1920, 1080), QSize(1280, 800), QSize(1024, 768), QSize(800, 600)}) {
        office().resize(size);
        settle();
        EXPECT_EQ(office().size(), size);
        EXPECT_GE(tags(), table->fontMetrics().horizontalAdvance("KMRM QRZM 66") / 2) << size.width();
        EXPECT_EQ(table->isFolded(), size.width() < 1600) << size.width();
    }
    const QWidget* page = office().page("kit");
    EXPECT_GT(page->width(), page->parentWidget()->width()) << "at 800 there is more to scroll to";
}

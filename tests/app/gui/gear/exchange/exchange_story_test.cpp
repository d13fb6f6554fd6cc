#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/gear/exchange/exchange_run.h"
#include "app/gui/gear/exchange/file_exchange_panel.h"
#include "app/gui/gear/exchange/stick_files.h"
#include "core/club/club_copy.h"
#include "core/club/club_exchange.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/club/register_edit.h"
#include "core/store/database.h"
#include "tests/support/kept_state.h"

#include <fstream>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using core::SheetId;

/// The page Exchange, beside a stick that is a folder.
class ExchangeStory : public support::GearStory {
protected:
    fs::path stick() const { return folder() / "STICK"; }
    fs::path vansFile() const { return stick() / "van.tholepin"; }

    /// A copy of the club on the stick, for a machine of its own.
    core::Club takeToVan() const {
        fs::create_directory(stick());
        EXPECT_TRUE(core::copyClub(file(), vansFile(), false));
        return opened(vansFile());
    }
    static core::Club opened(const fs::path& file) {
        auto club = core::Club::open(file);
        EXPECT_TRUE(club);
        return std::move(club).value();
    }
    static void write(core::Club& club, SheetId sheet, const core::CellTexts& key,
                      const core::CellTexts& cells) {
        const auto done = club.register_().write({sheet, {{key, cells, {}}}}, "Joss Iveny", moment());
        ASSERT_TRUE(done && done->rejected.empty());
    }
    static bool hasPerson(const fs::path& file, const char* name) {
        auto club = core::Club::open(file, core::Club::Access::ReadOnly);
        return club && club->register_().rowNamed(SheetId::People, name);
    }
    static std::string bytesOf(const fs::path& file) {
        std::ifstream in(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    }
    static void expectSound(const fs::path& file) {
        auto club = core::Club::open(file, core::Club::Access::ReadOnly);
        ASSERT_TRUE(club);
        EXPECT_TRUE(club->record().verify(false)->problems.empty()) << file;
    }

    void openPage(const fs::path& byHand = {}, const fs::path& copyTo = {}) {
        app::Choosers choosers;
        choosers.sticks = [at = stick()] {
            return fs::exists(at) ? QStringList{QString::fromStdString(at.string())} : QStringList();
        };
        choosers.otherClub = [byHand](QWidget*) { return QString::fromStdString(byHand.string()); };
        choosers.saveFile = [copyTo](QWidget*, const QString&) {
            return QString::fromStdString(copyTo.string());
        };
        openOffice("exchange", choosers);
        waitForPage();
    }
    void waitForPage() {
        auto* page = office().page("exchange")->findChild<app::FileExchangePanel*>();
        ASSERT_NE(page, nullptr);
        ASSERT_TRUE(support::waitFor([&] { return !page->isBusy(); }));
    }
    void act(const char* button) {
        pressButton(button);
        waitForPage();
    }
    QString answer() { return textOf("exchangeAnswerLabel"); }
    QString more() { return textOf("exchangeMoreLabel"); }
    QString said() { return textOf("exchangeSaidLabel"); }
    bool isOffered(const char* button) { return child(button)->isVisible(); }
    void pressLine(const char* list, int row) {
        auto* view = child<app::RowList>(list);
        view->setFocus();
        view->setCurrentIndex(view->model()->index(row, 0));
        press(Qt::Key_Space);
    }
};

} // namespace

TEST_F(ExchangeStory, withoutAStickThePageSaysWhatToDoAndFindsOneThatIsPutIn) {
    openPage();
    EXPECT_TRUE(child("exchangeHintLabel")->isVisible());
    EXPECT_FALSE(isOffered("exchangeGoButton"));
    fs::create_directory(stick());
    act("exchangeAgainButton");
    EXPECT_FALSE(child("exchangeHintLabel")->isVisible());
    ASSERT_EQ(rowsIn("exchangeFiles").size(), 1u);
    EXPECT_EQ(rowsIn("exchangeFiles").front().title, "STICK");
    pressLine("exchangeFiles", 0);
    EXPECT_EQ(answer(), "There is no file of this club on STICK yet.");
    EXPECT_FALSE(fs::exists(stick() / "club.tholepin")) << "only proposed";
    act("exchangeGoButton");
    EXPECT_TRUE(said().startsWith("A copy was made")) << said().toStdString();
    EXPECT_EQ(rowsIn("exchangeFiles").front().title, "club.tholepin") << "it is offered from now on";
    expectSound(stick() / "club.tholepin");
    pressLine("exchangeFiles", 0);
    waitForPage();
    EXPECT_EQ(answer(), "Nothing new would come in.");
}

TEST_F(ExchangeStory, oneFileOnAStickIsLookedThroughAtOnceAndOnePressExchangesBothWays) {
    {
        core::Club van = takeToVan(), here = opened(file());
        write(here, SheetId::People, {}, {{"person", "Nia Marsh"}});
        write(van, SheetId::People, {}, {{"person", "Oke Brand"}});
    }
    const std::string before = bytesOf(vansFile());
    openPage();
    EXPECT_EQ(answer(), "Would come in: 2 facts from 1 machine: 1 change of the register.");
    EXPECT_EQ(more(), "1 fact that is recorded here would go there.");
    EXPECT_EQ(bytesOf(vansFile()), before);
    EXPECT_FALSE(hasPerson(file(), "Oke Brand")) << "nothing is written yet";
    EXPECT_EQ(QApplication::focusWidget(), child("exchangeGoButton")) << "Enter goes on";
    act("exchangeGoButton");
    EXPECT_TRUE(answer().startsWith("Came in: 2 facts")) << answer().toStdString();
    EXPECT_TRUE(more().startsWith("Went there: 1 fact")) << more().toStdString();
    EXPECT_FALSE(fs::exists(vansFile().string() + "-wal")) << "all is in the file that is taken out";
    for (const fs::path& each : {file(), vansFile()}) {
        EXPECT_TRUE(hasPerson(each, "Nia Marsh") && hasPerson(each, "Oke Brand")) << each;
        expectSound(each);
    }
    office().showPage("missing");
    settle();
    office().showPage("exchange");
    waitForPage();
    EXPECT_TRUE(answer().startsWith("Came in: 2 facts")) << "what came in stays to be read";
}

TEST_F(ExchangeStory, whatSomebodyMustLookAtLeadsThere) {
    {
        core::Club van = takeToVan(), here = opened(file());
        write(here, SheetId::People, {}, {{"person", "Nia Marsh"}});
        write(van, SheetId::People, {}, {{"person", "Nia Marsch"}});
        write(here, SheetId::Items, {{"code", "KFGQ9XHHKJ"}}, {{"note", "red"}});
        write(van, SheetId::Items, {{"code", "KFGQ9XHHKJ"}}, {{"note", "green"}});
    }
    openPage();
    ASSERT_EQ(rowsIn("exchangeLooks").size(), 3u) << "a heading and two";
    act("exchangeGoButton");
    ASSERT_EQ(rowsIn("exchangeLooks").size(), 3u);
    for (const int row : {1, 2}) {
        const bool isPerson = rowsIn("exchangeLooks")[static_cast<std::size_t>(row)].title.contains("Nia");
        pressLine("exchangeLooks", row);
        settle();
        EXPECT_EQ(office().currentPage(), isPerson ? "register" : "kit");
        if (isPerson) {
            EXPECT_EQ(textOf("registerRowLabel"), "Nia Marsh");
        }
        office().showPage("exchange");
        waitForPage();
    }
}

TEST_F(ExchangeStory, whatIsNoFileOfThisClubIsToldAndNotOffered) {
    fs::create_directories(stick() / "more");
    ASSERT_TRUE(core::Club::create(stick() / "more" / "lake.tholepin", "Another"));
    std::ofstream(stick() / "list.tholepin") << "a shopping list";
    fs::create_directory(stick() / "copies");
    ASSERT_TRUE(
        core::copyClub(file(), stick() / "copies" / "club 3fa9c1d2 2026-03-14T064000.123Z.tholepin", true));
    openPage(stick() / "more" / "lake.tholepin");
    const auto rows = rowsIn("exchangeFiles");
    ASSERT_EQ(rows.size(), 3u) << "not the copies that are made after checks";
    EXPECT_EQ(rows[0].mark, app::Mark::NotAsked);
    EXPECT_EQ(rows[0].remark, "on STICK, of another club");
    EXPECT_EQ(rows[1].remark, "on STICK, no club file");
    EXPECT_EQ(rows[2].title, "STICK") << "where a copy may be made";
    act("exchangeChooseButton");
    EXPECT_EQ(answer(), "This file is of another club.");
    EXPECT_FALSE(more().isEmpty()) << "and what to do";
    EXPECT_FALSE(isOffered("exchangeGoButton") || isOffered("exchangeNewMachineButton"));
}

TEST_F(ExchangeStory, aFileThatWasCutOffOrForgedIsRefusedAndTheOtherChosen) {
    {
        core::Club van = takeToVan();
        write(van, SheetId::People, {}, {{"person", "Oke Brand"}});
    }
    fs::copy_file(vansFile(), stick() / "forged.tholepin");
    {
        core::Database forged(stick() / "forged.tholepin", core::Database::Mode::ReadWrite);
        forged.script("DROP TRIGGER fact_is_never_changed");
        forged.script("UPDATE fact SET by = 'Somebody' WHERE body LIKE '%Oke Brand%'");
        forged.script("CREATE TRIGGER fact_is_never_changed BEFORE UPDATE ON fact BEGIN\n"
                      "    SELECT RAISE(ABORT, 'a fact is never changed');\nEND");
    }
    fs::copy_file(vansFile(), stick() / "cut.tholepin");
    fs::resize_file(stick() / "cut.tholepin", fs::file_size(vansFile()) / 2);
    openPage(stick() / "cut.tholepin");
    EXPECT_TRUE(answer().isEmpty()) << "two may be meant";
    act("exchangeChooseButton");
    EXPECT_FALSE(answer().isEmpty());
    EXPECT_FALSE(isOffered("exchangeGoButton"));
    const auto lineOf = [&](const QString& name) {
        const auto rows = rowsIn("exchangeFiles");
        for (std::size_t row = 0; row < rows.size(); ++row)
            if (rows[row].title == name) return static_cast<int>(row);
        return -1;
    };
    pressLine("exchangeFiles", lineOf("forged.tholepin"));
    waitForPage();
    EXPECT_TRUE(answer().startsWith("The record of this file is damaged")) << answer().toStdString();
    EXPECT_FALSE(isOffered("exchangeGoButton"));
    pressLine("exchangeFiles", lineOf("van.tholepin"));
    waitForPage();
    act("exchangeGoButton");
    EXPECT_TRUE(hasPerson(file(), "Oke Brand"));
}

// The owner of a key goes on in an old copy, of which the key does not know that it is old.
TEST_F(ExchangeStory, aForkIsToldAndTakenInAsANewMachineBehindASecondPress) {
    {
        core::Club van = takeToVan();
        write(van, SheetId::People, {}, {{"person", "Oke Brand"}});
        ASSERT_TRUE(opened(file()).exchange().merge({vansFile()}, core::ClubExchange::Forks::Refused));
        const std::string old = bytesOf(vansFile());
        van.rest();
        const support::KeptState before;
        fs::copy_file(vansFile(), folder() / "old.tholepin");
        write(van, SheetId::People, {}, {{"person", "Nia Marsh"}});
        ASSERT_TRUE(opened(file()).exchange().merge({vansFile()}, core::ClubExchange::Forks::Refused));
        before.putBack();
    }
    {
        std::ofstream(vansFile(), std::ios::binary) << bytesOf(folder() / "old.tholepin"); // in its place
        core::Club again = opened(vansFile());
        write(again, SheetId::People, {}, {{"person", "Pia Holt"}});
    }
    openPage();
    EXPECT_TRUE(answer().contains("wrote two different records")) << answer().toStdString();
    EXPECT_FALSE(more().contains("--")) << "nothing of a command line: " << more().toStdString();
    EXPECT_FALSE(isOffered("exchangeGoButton"));
    act("exchangeNewMachineButton");
    EXPECT_TRUE(answer().startsWith("Would come in: ")) << answer().toStdString();
    EXPECT_FALSE(hasPerson(file(), "Pia Holt")) << "the first press asks";
    EXPECT_EQ(child<QPushButton>("exchangeGoButton")->text(), "Take it in as a new machine");
    act("exchangeGoButton");
    EXPECT_TRUE(hasPerson(file(), "Pia Holt") && hasPerson(file(), "Nia Marsh"));
    EXPECT_FALSE(hasPerson(vansFile(), "Nia Marsh")) << "the other file is done with";
    EXPECT_TRUE(more().contains("put it away")) << more().toStdString();
    expectSound(file());
}

TEST_F(ExchangeStory, aStickThatIsPulledIsToldAndBothFilesStayWhole) {
    {
        core::Club van = takeToVan();
        write(van, SheetId::People, {}, {{"person", "Oke Brand"}});
    }
    openPage();
    ASSERT_TRUE(isOffered("exchangeGoButton"));
    fs::rename(stick(), folder() / "drawer");
    act("exchangeGoButton");
    EXPECT_TRUE(said().endsWith("nothing was taken in.")) << said().toStdString();
    EXPECT_FALSE(answer().isEmpty());
    EXPECT_FALSE(hasPerson(file(), "Oke Brand"));
    fs::rename(folder() / "drawer", stick());
    expectSound(file());
    expectSound(vansFile());
    act("exchangeAgainButton");
    pressLine("exchangeFiles", 0);
    waitForPage();
    act("exchangeGoButton");
    EXPECT_TRUE(hasPerson(file(), "Oke Brand"));
}

TEST_F(ExchangeStory, aFileThatCannotBeWrittenToIsOnlyTakenIn) {
    core::Club here = opened(file());
    {
        core::Club van = takeToVan();
        write(here, SheetId::People, {}, {{"person", "Nia Marsh"}});
        write(van, SheetId::People, {}, {{"person", "Oke Brand"}});
    }
    const std::string before = bytesOf(vansFile());
    auto plan = app::planExchange(here, vansFile(), core::ClubExchange::Forks::Refused);
    ASSERT_TRUE(plan);
    EXPECT_FALSE(plan->isReadOnly);
    fs::permissions(stick(), fs::perms::owner_read | fs::perms::owner_exec);
    const auto asSeen = app::planExchange(here, vansFile(), core::ClubExchange::Forks::Refused);
    EXPECT_EQ(asSeen->isReadOnly, ::geteuid() != 0) << "the superuser may write there all the same";
    fs::permissions(stick(), fs::perms::owner_all);
    plan->isReadOnly = true;
    const auto done = app::exchange(here, vansFile(), *plan);
    ASSERT_TRUE(done);
    EXPECT_FALSE(done->went.has_value());
    EXPECT_EQ(bytesOf(vansFile()), before);
    EXPECT_TRUE(hasPerson(file(), "Oke Brand"));
}

TEST_F(ExchangeStory, theOpenFileItselfIsNoOther) {
    openPage(file(), folder() / "kept.tholepin");
    act("exchangeChooseButton");
    EXPECT_TRUE(said().startsWith("That is the file that is open here")) << said().toStdString();
    act("exchangeCopyButton");
    expectSound(folder() / "kept.tholepin");
    EXPECT_EQ(app::freeName(folder().path(), file()).filename(), "club 2.tholepin");
}

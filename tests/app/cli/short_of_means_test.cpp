#include "tests/app/cli/small_club.h"

#include <fstream>

namespace small_club {
namespace {

using support::Limits;
using testing::HasSubstr;

/// The machine gives out while the program is at work.
class ShortOfMeans : public SmallClub {
protected:
    Ran runWith(const Limits& limits, std::vector<std::string> words) const {
        words.insert(words.begin() + 1, m_file);
        words.insert(words.end(), {"--today", today});
        return ctl(words, {}, limits);
    }
    /// The club's file may grow as it must, a sheet of so many tags may not be.
    Limits noRoomForSheets() const { return {.fileBytes = 1'600'000}; }
    int knives() const {
        int count = 0;
        const std::string items = [&] {
            (void)run({"export", m_folder / "out"});
            return textOf(m_folder / "out" / "items.csv");
        }();
        for (std::size_t at = 0; (at = items.find(",knife,", at)) != std::string::npos; ++at)
            ++count;
        return count;
    }
};

/// The machine's fonts with a cache of their own, empty at first: what a program without memory writes into
/// the machine's would be believed by every other program and test.
class OwnFonts {
public:
    OwnFonts() {
        std::ofstream(settings()) << "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\">"
                                     "<fontconfig><dir>/usr/share/fonts</dir>"
                                     "<include ignore_missing=\"yes\">/etc/fonts/conf.d</include><cachedir>"
                                  << (m_folder / "cache").string() << "</cachedir></fontconfig>";
    }
    std::filesystem::path settings() const { return m_folder / "fonts.conf"; }
    std::filesystem::path folder() const { return m_folder.path(); }

private:
    support::ScratchFolder m_folder;
};

/// By pdffonts: what a tag sheet is written with that finds its fonts in that cache.
std::string fontsOfSheet(const OwnFonts& fonts, const std::string& club) {
    const std::string sheet = fonts.folder() / "sheet.pdf";
    const Ran made = ctl({"tags", club, "--out", sheet}, {}, {.fonts = fonts.settings()});
    return made.exit == 0 ? support::runProgram("/usr/bin/pdffonts", {sheet}).out : made.err;
}

TEST_F(ShortOfMeans, newTagsAreToldBeforeTheirSheetIsMade) {
    const std::string out = m_folder / "new.pdf";
    const int before = knives();
    const Ran ran =
        runWith(noRoomForSheets(), {"receive", "--kit-type", "knife", "--count", "1000", "--out", out});
    EXPECT_EQ(ran.exit, 3) << ran.err;
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("the tags are recorded, but their sheet could not be made"));
    EXPECT_THAT(ran.err, HasSubstr("'tholepinctl tags " + m_file.string() + " --items"));
    EXPECT_EQ(knives(), before + 1000);
    EXPECT_FALSE(std::filesystem::exists(out));
    EXPECT_THAT(ran.out, testing::StartsWith("1000 items registered.\n  K"));
}

TEST_F(ShortOfMeans, theSheetIsMadeAgainOfTheCodesThatWereTold) {
    const std::string out = m_folder / "new.pdf";
    const Ran ran = runWith(noRoomForSheets(),
                            {"receive", "--kit-type", "knife", "--count", "1000", "--json", "--out", out});
    EXPECT_EQ(ran.exit, 3) << ran.err;
    expectOneErrorLine(ran);
    std::vector<std::string> again{"tags", "--out", out, "--items"};
    const Json told = Json::parse(ran.out);
    for (const Json& item : told["items"])
        again.push_back(item["code"]);
    EXPECT_EQ(again.size(), 1004U);
    EXPECT_EQ(run(again).exit, 0);
    EXPECT_TRUE(std::filesystem::exists(out));
}

// pipe(7): whoever writes to a pipe that nobody reads is ended by a signal. What is recorded is finished
// first.
TEST_F(ShortOfMeans, theSheetIsMadeThoughNobodyReadsTheCodes) {
    const std::string out = m_folder / "new.pdf";
    const Ran ran = support::runProgram("/bin/bash",
                                        {"-c", "{ sleep 0.5; " + std::string(THOLEPINCTL) + " receive " +
                                                   m_file.string() + " --kit-type knife --count 1000 --out " +
                                                   out + "; } | true; exit ${PIPESTATUS[0]}"});
    EXPECT_EQ(ran.exit, 3);
    EXPECT_THAT(ran.err, testing::HasSubstr("is recorded"));
    EXPECT_TRUE(std::filesystem::exists(out));
}

// full(4): a write to /dev/full is one to a full disk.
TEST_F(ShortOfMeans, aFileThatWasMadeIsToldThoughTheAnswerHasNoRoom) {
    const std::string made = m_folder / "made.tholepin", copy = m_folder / "copy.tholepin";
    for (const std::string& words :
         {"create " + made + " --club Lake", "backup " + m_file.string() + " " + copy,
          "create " + made + ".2 --club Lake --starter rowing"}) {
        const Ran ran =
            support::runProgram("/bin/bash", {"-c", std::string(THOLEPINCTL) + " " + words + " > /dev/full"});
        EXPECT_EQ(ran.exit, 3) << words;
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr("the file was made")) << words;
    }
    EXPECT_EQ(ctl({"verify", made}).exit, 0);
    EXPECT_EQ(ctl({"verify", copy}).exit, 0);
    const Ran ran = support::runProgram(
        "/bin/bash", {"-c", std::string(THOLEPINCTL) + " create " + made + " --club Lake > /dev/full"});
    EXPECT_EQ(ran.exit, 2) << "it is there already";
    EXPECT_THAT(ran.err, testing::Not(HasSubstr("was made")));
}

TEST_F(ShortOfMeans, withRoomEverythingIsMade) {
    const std::string out = m_folder / "new.pdf";
    EXPECT_EQ(runWith({}, {"receive", "--kit-type", "knife", "--count", "200", "--out", out}).exit, 0);
    EXPECT_TRUE(std::filesystem::exists(out));
    EXPECT_EQ(runWith({}, {"retag", paddle1, "--out", out}).exit, 0);
}

// setrlimit(2), RLIMIT_AS. From too little to load the program to enough: wherever memory gives out, the
// program ends with one line and the exit code of the contract. Below the first of these the system's loader
// gives up, or what libraries do before the program begins.
TEST_F(ShortOfMeans, memoryThatGivesOutIsSaidInOneLine) {
    int gaveOut = 0, done = 0;
    for (unsigned long megabytes = 110; megabytes <= 240; megabytes += 5) {
        const OwnFonts fonts;
        const Ran ran = runWith({.addressBytes = megabytes << 20U, .fonts = fonts.settings()},
                                {"tags", "--mint", "300", "--out", m_folder / "tags.pdf"});
        EXPECT_THAT(fontsOfSheet(fonts, m_file), HasSubstr("DejaVuSans"))
            << "after a run with " << megabytes << " MB";
        if (ran.exit == 0) {
            ++done;
            continue;
        }
        if (ran.exit == 127) continue; // the system's loader had too little to load the program
        EXPECT_EQ(ran.exit, 3) << megabytes << ": " << ran.err;
        expectOneErrorLine(ran);
        ++gaveOut;
    }
    EXPECT_GT(gaveOut, 3);
    EXPECT_GT(done, 3);
}

} // namespace
} // namespace small_club

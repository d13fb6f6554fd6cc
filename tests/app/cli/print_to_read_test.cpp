#include "tests/app/cli/small_club.h"

#include "app/flow/seen_text.h"
#include "scanner/files/read_path.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <set>

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::UnorderedElementsAreArray;
namespace fs = std::filesystem;

/// Without what is written off.
std::vector<std::string> registered() {
    std::vector<std::string> codes = wholeKit();
    codes.insert(codes.end(), {cootKnife, tealTag, cootTag, adaTag, boTag, shedTag});
    return codes;
}

class PrintToRead : public SmallClub {
protected:
    /// Each page as a picture, so many dots to the inch, by poppler.
    std::vector<scanner::PathReading> pagesOf(const std::string& pdf, int dotsPerInch) const {
        fs::create_directories(m_folder / "pages");
        const Ran ran = support::runProgram(
            PDFTOPPM, {"-r", std::to_string(dotsPerInch), "-gray", "-png", pdf, m_folder / "pages" / "page"});
        EXPECT_EQ(ran.exit, 0) << ran.err;
        return readAll(m_folder / "pages");
    }
    static std::vector<scanner::PathReading> readAll(const fs::path& path) {
        scanner::ReadPathOptions options;
        options.reading.budget = std::chrono::milliseconds(0);
        options.reading.isTag = app::isTagText;
        return scanner::readPath(path, options);
    }
    static std::vector<std::string> textsOf(const std::vector<scanner::PathReading>& readings) {
        std::set<std::string> texts;
        for (const scanner::PathReading& reading : readings)
            for (const scanner::SeenCode& code : reading.seen)
                texts.insert(code.text);
        return {texts.begin(), texts.end()};
    }
};

TEST_F(PrintToRead, everyTagOfTheSheetIsReadAgain) {
    const Ran ran = run({"tags", "--out", m_folder / "tags.pdf", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["tags"].size(), registered().size());
    EXPECT_THAT(textsOf(pagesOf(m_folder / "tags.pdf", 150)), UnorderedElementsAreArray(registered()));
}

TEST_F(PrintToRead, tagsOfNamesAreReadAgain) {
    const Ran ran = run({"tags", "--items", "teal", boTag, "Ada Thorne", "Shed", knife, "--out",
                         m_folder / "some.pdf", "--json"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    const Json tags = Json::parse(ran.out)["tags"];
    ASSERT_EQ(tags.size(), 5U);
    EXPECT_EQ(tags[0],
              (Json{{"code", tealTag}, {"name", "Teal"}, {"owner", "inflatable"}, {"print_grade", nullptr}}));
    EXPECT_EQ(tags[3],
              (Json{{"code", shedTag}, {"name", "Shed"}, {"owner", nullptr}, {"print_grade", nullptr}}));
    EXPECT_THAT(textsOf(pagesOf(m_folder / "some.pdf", 150)),
                UnorderedElementsAreArray({tealTag, boTag, adaTag, shedTag, knife}));
}

TEST_F(PrintToRead, writtenOffKitNeedsNoTag) {
    const Ran ran = run({"tags", "--items", knife, writtenOff, "--out", m_folder / "a.pdf"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("is written off"));
    EXPECT_FALSE(fs::exists(m_folder / "a.pdf"));
}

TEST_F(PrintToRead, whatHasNoTagGetsOneWhenItIsAskedFor) {
    writeFiles(m_folder / "more", {{"boats.csv", "boat,tag\nTeal,-\n"}});
    ASSERT_EQ(run({"import", m_folder / "more", "--today", today}).exit, 0);
    const std::string before = content();
    EXPECT_EQ(run({"tags", "--items", "Teal", "--out", m_folder / "none" / "a.pdf"}).exit, 3);
    EXPECT_EQ(content(), before) << "nothing is given where nothing can be printed";
    const Ran ran = run({"tags", "--items", "Teal", "--out", m_folder / "teal.pdf", "--json"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    const std::string tag = Json::parse(ran.out)["tags"][0]["code"];
    EXPECT_EQ(tag.front(), 'B');
    EXPECT_THAT(textsOf(pagesOf(m_folder / "teal.pdf", 150)), UnorderedElementsAreArray({tag}));
    EXPECT_EQ(run({"history", tag}).exit, 0);
    const Ran again = run({"tags", "--items", "Teal", "--out", m_folder / "teal.pdf", "--json"});
    EXPECT_EQ(Json::parse(again.out)["tags"][0]["code"], tag);
}

TEST_F(PrintToRead, smallTagsAreReadAgainToo) {
    ASSERT_EQ(run({"tags", "--out", m_folder / "tags.pdf", "--size", "10"}).exit, 0);
    EXPECT_THAT(textsOf(pagesOf(m_folder / "tags.pdf", 300)), UnorderedElementsAreArray(registered()));
}

TEST_F(PrintToRead, aSymbolIsAsWideAsWasAskedAndOfVersionOne) {
    for (const double size : {30.0, 60.0}) {
        ASSERT_EQ(
            run({"tags", "--items", knife, "--out", m_folder / "one.pdf", "--size", std::to_string(size)})
                .exit,
            0);
        constexpr int dotsPerInch = 300;
        const auto pages = pagesOf(m_folder / "one.pdf", dotsPerInch);
        ASSERT_EQ(pages.size(), 1U);
        ASSERT_EQ(pages[0].seen.size(), 1U);
        const auto& corners = pages[0].seen[0].corners;
        const double wide =
            std::hypot(corners[1].x - corners[0].x, corners[1].y - corners[0].y) / dotsPerInch * 25.4;
        // The reader puts corners to within a module, of which version 1 has 21 a side (ISO/IEC 18004).
        EXPECT_NEAR(wide, size, size / 21);
    }
}

TEST_F(PrintToRead, manyTagsFillSeveralSheets) {
    const Ran ran = run({"tags", "--mint", "45", "--out", m_folder / "new.pdf", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    const Json printed = Json::parse(ran.out);
    EXPECT_GE(printed["sheets"], 3);
    std::vector<std::string> codes;
    for (const Json& tag : printed["tags"])
        codes.push_back(tag["code"]);
    const auto pages = pagesOf(m_folder / "new.pdf", 150);
    EXPECT_EQ(pages.size(), printed["sheets"]);
    EXPECT_THAT(textsOf(pages), UnorderedElementsAreArray(codes));
}

TEST_F(PrintToRead, controlTagsComeWhenAsked) {
    ASSERT_EQ(run({"tags", "--items", knife, "--control", "--out", m_folder / "c.pdf"}).exit, 0);
    EXPECT_THAT(textsOf(pagesOf(m_folder / "c.pdf", 150)),
                UnorderedElementsAreArray(
                    {knife, finishTag, nextBoatTag, undoTag, damagedTag, clockTag, putAsideTag}));
}

TEST_F(PrintToRead, mintedCodesAreNewGoodAndDifferent) {
    const Json codes = Json::parse(run({"tags", "--mint", "50", "--json"}).out)["codes"];
    ASSERT_EQ(codes.size(), 50U);
    std::set<std::string> different;
    for (const Json& code : codes)
        different.insert(code.get<std::string>());
    EXPECT_EQ(different.size(), 50U);
    EXPECT_THAT(run({"tags", "--mint", "2"}).out, testing::MatchesRegex("K[0-9A-Z]+\nK[0-9A-Z]+\n"));
}

TEST_F(PrintToRead, unknownItemsAndPlacesThatCannotBeWrittenAreRefused) {
    const Ran unknown = run({"tags", "--items", unknownTag, "--out", m_folder / "a.pdf"});
    EXPECT_EQ(unknown.exit, 2);
    expectOneErrorLine(unknown);
    EXPECT_FALSE(fs::exists(m_folder / "a.pdf"));
    const Ran nowhere = run({"tags", "--out", m_folder / "none" / "a.pdf"});
    EXPECT_EQ(nowhere.exit, 3);
    expectOneErrorLine(nowhere);
}

using SceneToCheck = PrintToRead;

TEST_F(SceneToCheck, theOutcomeIsTheOneTheRegisterTells) {
    const Ran made = run({"scene", "--boat", "teal", "--out", m_folder / "scene", "--heap", "7", "--json"});
    ASSERT_EQ(made.exit, 0) << made.err;
    const Json pictures = Json::parse(made.out)["pictures"];
    EXPECT_GE(pictures.size(), 3U);
    std::set<std::string> shown;
    for (const Json& picture : pictures)
        for (const Json& code : picture["codes"])
            shown.insert(code.get<std::string>());
    EXPECT_THAT(shown, UnorderedElementsAreArray(wholeKit()));

    const Ran checked =
        run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--crew", "Bo Lind",
             "--from", m_folder / "scene", "--json", "--today", today, "--points",
             write("points.csv", "point,value\nhull,done\nbow chamber,20\nengine run,9\n")});
    EXPECT_EQ(checked.exit, 0) << checked.out;
    EXPECT_EQ(Json::parse(checked.out)["outcome"], "complete");
    EXPECT_EQ(Json::parse(checked.out)["best"]["required"], 6);
}

TEST_F(SceneToCheck, everyTagInFullViewIsRead) {
    for (const char* seed : {"1", "2", "3"}) {
        const fs::path folder = m_folder / seed;
        const Json pictures = Json::parse(
            run({"scene", "--boat", "Teal", "--out", folder, "--heap", seed, "--json"}).out)["pictures"];
        for (const Json& picture : pictures) {
            const std::vector<std::string> texts = textsOf(readAll(picture["path"].get<std::string>()));
            for (const Json& code : picture["codes"])
                EXPECT_THAT(texts, testing::Contains(code.get<std::string>())) << picture["path"];
        }
    }
}

TEST_F(SceneToCheck, theSameSeedGivesTheSamePictures) {
    const auto bytes = [&](const char* seed, const char* folder) {
        EXPECT_EQ(run({"scene", "--boat", "Teal", "--out", m_folder / folder, "--heap", seed}).exit, 0);
        std::ifstream in(m_folder / folder / "scene-01.jpg", std::ios::binary);
        return std::string{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    };
    const std::string first = bytes("5", "a");
    EXPECT_FALSE(first.empty());
    EXPECT_EQ(bytes("5", "b"), first);
    EXPECT_NE(bytes("6", "c"), first);
}

TEST_F(SceneToCheck, anUnknownBoatIsRefused) {
    const Ran ran = run({"scene", "--boat", "Swan", "--out", m_folder / "scene"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_FALSE(fs::exists(m_folder / "scene"));
}

} // namespace
} // namespace small_club

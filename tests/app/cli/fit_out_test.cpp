#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

/// The starter for an inflatable and one boat of that class: of tests that count by hand, its manifest is
/// rescue tube 1, paddle 2, tow line 1, knife 1, whistle 2, life jacket 2, radio 1.
class FitOut : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_EQ(ctl({"create", file, "--club", "Lake club", "--starter", "inflatable"}).exit, 0);
        import("boats.csv", "boat,boat_class\nTeal,inflatable\n");
    }
    void import(const char* name, const std::string& rows) {
        writeFiles(folder / "more", {{name, rows}});
        const Ran ran = ctl({"import", file, folder / "more", "--today", today});
        ASSERT_EQ(ran.exit, 0) << ran.err;
        fs::remove_all(folder / "more");
    }
    Json fitOut(std::vector<std::string> more = {}) {
        std::vector<std::string> words{"fit-out", file, "--boat", "teal", "--today", today, "--json"};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = ctl(words);
        EXPECT_EQ(ran.exit, 0) << ran.err;
        return Json::parse(ran.out);
    }
    static std::size_t newIn(const Json& document) {
        std::size_t count = 0;
        for (const Json& line : document["lines"])
            count += line["new"].size();
        return count;
    }

    support::ScratchFolder folder;
    const std::string file = folder / "club.tholepin";
};

TEST_F(FitOut, registersWhatTheManifestLacksOnce) {
    import("items.csv", "kit_type,boat\nknife,Teal\npaddle,Teal\n");
    const Json first = fitOut();
    EXPECT_EQ(first["boat"], "Teal");
    EXPECT_EQ(first["file"], Json());
    ASSERT_EQ(first["lines"].size(), 7u);
    EXPECT_EQ(first["lines"][1]["kit_type"], "paddle");
    EXPECT_EQ(first["lines"][1]["wanted"], 2);
    EXPECT_EQ(first["lines"][1]["there"], 1);
    EXPECT_EQ(first["lines"][1]["new"].size(), 1u);
    EXPECT_EQ(first["lines"][3]["kit_type"], "knife");
    EXPECT_EQ(first["lines"][3]["new"].size(), 0u);
    EXPECT_EQ(newIn(first), 8u); // ten are asked for, two are there
    const Json again = fitOut();
    EXPECT_EQ(newIn(again), 0u);
    for (const Json& line : again["lines"])
        EXPECT_EQ(line["there"], line["wanted"]) << line;
}

TEST_F(FitOut, aDryRunWritesNothing) {
    const std::string before = contentOf(file);
    const Ran ran = ctl({"fit-out", file, "--boat", "Teal", "--dry-run", "--today", today});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("paddle: there 0, new 2"));
    EXPECT_EQ(contentOf(file), before);
    EXPECT_EQ(newIn(fitOut({"--dry-run"})), 0u);
    EXPECT_EQ(newIn(fitOut()), 10u);
}

TEST_F(FitOut, printsTheTagsOfWhatIsNew) {
    const std::string sheet = folder / "tags.pdf";
    EXPECT_EQ(fitOut({"--out", sheet})["file"], sheet);
    EXPECT_TRUE(fs::exists(sheet));
    fs::remove(sheet);
    // Nothing is new, so there is no sheet: never one of all tags.
    EXPECT_EQ(fitOut({"--out", sheet})["file"], Json());
    EXPECT_FALSE(fs::exists(sheet));
}

TEST_F(FitOut, anotherBoatIsRefusedAndNothingRegistered) {
    const Ran ran = ctl({"fit-out", file, "--boat", "Gull"});
    EXPECT_EQ(ran.exit, 2);
    EXPECT_THAT(ran.err, HasSubstr("Gull"));
    EXPECT_EQ(newIn(fitOut()), 10u);
}

} // namespace
} // namespace small_club

#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;

class Merging : public SmallClub {
protected:
    Merging()
        : m_van(m_folder / "van.tholepin") {
        EXPECT_EQ(run({"copy", m_van}).exit, 0);
        EXPECT_EQ(run({"add", "places", "place=Quay"}).exit, 0);
    }
    Ran onVan(std::vector<std::string> words) {
        words.insert(words.begin() + 1, m_van);
        return ctl(words);
    }
    const std::string m_van;
};

TEST_F(Merging, whatTheVanRecordedComesIn) {
    EXPECT_EQ(onVan({"add", "people", "person=Nia Marsh"}).exit, 0);
    const Ran planned = run({"merge", m_van, "--dry-run", "--json"});
    EXPECT_EQ(planned.exit, 0) << planned.err;
    EXPECT_EQ(Json::parse(planned.out)["facts"], 2);
    EXPECT_EQ(run({"history", "Nia Marsh"}).exit, 2);
    EXPECT_THAT(run({"merge", m_van}).out, HasSubstr("2 facts from 1 machine: 1 change"));
    EXPECT_EQ(run({"history", "Nia Marsh"}).exit, 0);
    EXPECT_THAT(run({"merge", m_van}).out, HasSubstr("Nothing new"));
    EXPECT_EQ(run({"verify"}).exit, 0);
}

TEST_F(Merging, aFileThatIsNamedTwiceIsTakenInOnce) {
    EXPECT_EQ(onVan({"add", "people", "person=Nia Marsh"}).exit, 0);
    const std::string link = m_folder / "link.tholepin";
    std::filesystem::create_symlink(m_van, link);
    const Ran ran = run({"merge", m_van, m_van, link, "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["facts"], 2);
    EXPECT_EQ(run({"history", "Nia Marsh"}).exit, 0);
}

TEST_F(Merging, whatWantsALookIsToldWithExitOne) {
    EXPECT_EQ(onVan({"add", "places", "place=Quai"}).exit, 0);
    const Ran ran = run({"merge", m_van, "--json"});
    EXPECT_EQ(ran.exit, 1) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["look_at"][0]["kind"], "like-names");
}

TEST_F(Merging, whatIsNoFileOfThisClubIsRefused) {
    const std::string other = m_folder / "other.tholepin", text = write("text.tholepin", "no club");
    EXPECT_EQ(ctl({"create", other, "--club", "Other"}).exit, 0);
    const std::string before = content();
    for (const std::string& file : {other, text, std::string(m_folder / "none.tholepin")}) {
        const Ran ran = run({"merge", file});
        EXPECT_EQ(ran.exit, 2) << file;
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
}

} // namespace
} // namespace small_club

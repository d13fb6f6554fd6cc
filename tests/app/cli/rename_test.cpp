#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using Renaming = SmallClub;

TEST_F(Renaming, aBoatIsFoundUnderItsNewName) {
    const Ran ran = run({"rename", "boats", "teal", "Heron", "--by", "Bo Lind", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["to"], "Heron");
    EXPECT_THAT(run({"boats"}).out, HasSubstr("Heron"));
    EXPECT_THAT(run({"history", "Heron"}).out, HasSubstr("Teal is called Heron from here on"));
    const Ran old = run({"history", "Teal"});
    EXPECT_EQ(old.exit, 2);
    expectOneErrorLine(old);
    EXPECT_EQ(run({"verify"}).exit, 0);
    // What goes out comes in again, under the new name alone.
    EXPECT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "boats.csv"), testing::Not(HasSubstr("Teal")));
    EXPECT_EQ(run({"import", m_folder / "out", "--today", today}).exit, 0);
}

TEST_F(Renaming, ofASizeSaysItsKitType) {
    EXPECT_EQ(run({"rename", "sizes", "M", "Medium"}).exit, 2);
    EXPECT_EQ(run({"rename", "sizes", "life jacket/M", "Medium"}).exit, 0);
    EXPECT_THAT(run({"history", jacketM}).out, HasSubstr("life jacket"));
    EXPECT_EQ(run({"rename", "sizes", "life jacket/L", "Medium"}).exit, 2);
}

TEST_F(Renaming, ofASizeTakesTheNewNameAsTheOldOneIsWritten) {
    EXPECT_EQ(run({"rename", "sizes", "life jacket/M", "life jacket/Medium"}).exit, 0);
    EXPECT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "sizes.csv"), HasSubstr("life jacket,Medium,"));
}

TEST_F(Renaming, leavesTheNamesOfWhoSignedInTheEvidence) {
    ASSERT_EQ(check({knife}, {"--sign", "Ada Thorne", "--urgent", "somebody in the water", "--at",
                              std::string(today) + "T09:00:00Z"})
                  .exit,
              1);
    ASSERT_EQ(run({"rename", "people", "Ada Thorne", "Ada Berg"}).exit, 0);
    const auto on = std::string(today) + "T10:00:00Z";
    const Json told = Json::parse(run({"aboard", "--boat", "Teal", "--on", on, "--json"}).out);
    EXPECT_EQ(told["launch"]["signed_by"], "Ada Thorne");
    EXPECT_EQ(told["people"][0], "Ada Thorne");
    EXPECT_EQ(told["called_now"], Json({{"Ada Thorne", "Ada Berg"}}));
    EXPECT_THAT(run({"aboard", "--boat", "Teal", "--on", on}).out,
                HasSubstr("Ada Thorne is called Ada Berg now."));
}

TEST_F(Renaming, ofWhatIsNotThereOrHasNoNameIsRefused) {
    const std::string before = content();
    for (const auto& [sheet, name] : {std::pair("boats", "Swan"), std::pair("services", "Teal")}) {
        const Ran ran = run({"rename", sheet, name, "Heron"});
        EXPECT_EQ(ran.exit, 2);
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
}

} // namespace
} // namespace small_club

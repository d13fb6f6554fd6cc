#include "app/gui/gear/setup/fit_out_draft.h"

#include <gtest/gtest.h>

namespace {

using app::FitOutDraft;

core::FitOutLine line(const char* kitType, int wanted, int there) {
    core::FitOutLine line;
    line.line.kitType = kitType;
    line.line.quantity = wanted;
    line.there = there;
    return line;
}

FitOutDraft draft() {
    return FitOutDraft({line("paddle", 3, 1), line("knife", 1, 1), line("radio", 1, 0)}, {}, "Teal", {});
}

std::vector<std::string> madeOf(const FitOutDraft& draft) {
    std::vector<std::string> days;
    for (const core::NewKit& kit : draft.kit())
        days.push_back(kit.kitType + ' ' + kit.made);
    return days;
}

} // namespace

TEST(FitOutDraft, beginsWithWhatIsLackingAndItsHome) {
    const auto kit = draft().kit();
    ASSERT_EQ(kit.size(), 3u);
    EXPECT_EQ(kit[0].kitType, "paddle");
    EXPECT_EQ(kit[0].boat, "Teal");
    EXPECT_EQ(kit[0].place, "");
    EXPECT_EQ(kit[0].count, 1);
    EXPECT_EQ(kit[2].kitType, "radio");
}

TEST(FitOutDraft, whatIsWrittenForALineIsWrittenForEachBeneathIt) {
    FitOutDraft fitOut = draft();
    fitOut.write("all", &core::NewKit::made, "2025");
    fitOut.write("line 0", &core::NewKit::made, "2024");
    fitOut.write("line 0 1", &core::NewKit::made, "2023");
    EXPECT_EQ(madeOf(fitOut), (std::vector<std::string>{"paddle 2024", "paddle 2023", "radio 2025"}));
    EXPECT_TRUE(fitOut.differs("line 0", &core::NewKit::made));
    EXPECT_EQ(fitOut.read("line 0", &core::NewKit::made), "");
    EXPECT_EQ(fitOut.read("line 0 1", &core::NewKit::made), "2023");
    EXPECT_FALSE(fitOut.differs("line 2", &core::NewKit::made));
}

TEST(FitOutDraft, aSerialIsOneThingsOwn) {
    FitOutDraft fitOut = draft();
    fitOut.writeSerial("line 0", "A-1"); // two things
    fitOut.writeSerial("line 0 1", "A-2");
    fitOut.writeSerial("line 2", "R-7");
    const auto kit = fitOut.kit();
    EXPECT_TRUE(kit[0].serials.empty());
    EXPECT_EQ(kit[1].serials, std::vector<std::string>{"A-2"});
    EXPECT_EQ(kit[2].serials, std::vector<std::string>{"R-7"});
}

TEST(FitOutDraft, aNumberMadeSmallerAndLargerAgainKeepsWhatWasWritten) {
    FitOutDraft fitOut = draft();
    fitOut.write("line 0 1", &core::NewKit::made, "2023");
    fitOut.setCount("line 0", 0);
    EXPECT_EQ(madeOf(fitOut), std::vector<std::string>{"radio "});
    fitOut.setCount("line 0", 3);
    EXPECT_EQ(madeOf(fitOut), (std::vector<std::string>{"paddle ", "paddle 2023", "paddle 2023", "radio "}))
        << "one more is like the last one";
    fitOut.setCount("all", 9); // no line
    fitOut.setCount("line 7", 9);
    EXPECT_EQ(fitOut.count(), 4);
}

// The forms of register-csv.md, "Cells".
TEST(FitOutDraft, daysMayBeWrittenAsInTheRegister) {
    for (const auto& [typed, day] : {std::pair("14.3.2026", "2026-03-14"),
                                     {"March 2026", "2026-03"},
                                     {"03.2026", "2026-03"},
                                     {"2026-03-14", "2026-03-14"},
                                     {"2026", "2026"},
                                     {"soon", "soon"}}) {
        FitOutDraft fitOut = draft();
        fitOut.write("line 2", &core::NewKit::made, typed);
        EXPECT_EQ(fitOut.kit().back().made, day);
        EXPECT_EQ(fitOut.read("line 2", &core::NewKit::made), typed) << "as it was typed";
    }
    FitOutDraft fitOut = draft();
    fitOut.write("line 2", &core::NewKit::firstUse, "03.2026");
    EXPECT_TRUE(fitOut.rows().back().remark.endsWith("first used March 2026"));
}

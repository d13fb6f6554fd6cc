#include "core/check/boat_check.h"

#include "core/check/fit.h"
#include "tests/core/check/check_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr double kilograms(double pounds) {
    return pounds * 0.45359237; // international avoirdupois pound, exact by definition (1959)
}

Item sized(const std::string& size) {
    Item item;
    item.size = size;
    return item;
}

Person weighing(double kg) {
    Person person;
    person.massKg = kg;
    return person;
}

// 46 CFR 160.047-2, 160.060-1: adult over 90 lb, child medium 50 to 90 lb, child small under 50 lb. At
// exactly 90 lb that gives the medium; the marking of 160.005-6 reads "90 lb or more" for the adult: the
// club's label wins, so both ends of a range are included and both fit.
TEST(WornKit, fitsAtBothEndsOfTheRangeOnItsLabel) {
    KitType jacket;
    jacket.sizes = {{"adult", {kilograms(90), {}}, {}, {}, {}},
                    {"child medium", {kilograms(50), kilograms(90)}, {}, {}, {}},
                    {"child small", {{}, kilograms(50)}, {}, {}, {}}};
    const auto who = [&](double pounds) {
        std::string sizes;
        for (const char* size : {"adult", "child medium", "child small"})
            if (fits(sized(size), jacket, weighing(kilograms(pounds)))) sizes += std::string(size) + ' ';
        return sizes;
    };
    EXPECT_EQ(who(90.1), "adult ");
    EXPECT_EQ(who(90), "adult child medium ");
    EXPECT_EQ(who(89.9), "child medium ");
    EXPECT_EQ(who(50), "child medium child small ");
    EXPECT_EQ(who(49.9), "child small ");
    EXPECT_FALSE(fits(sized("child medium"), jacket, weighing(90))) << "90 kg is not 90 lb";
    EXPECT_TRUE(fits(sized("adult"), jacket, weighing(90)));
}

// ISO 12402-5:2020, scope as the standards body abstracts it: for a body mass over 25 kg only. A label that
// says so is entered with its lower end; common practice, no source, that a boundary counts as inside.
TEST(WornKit, refusesBelowTheLowestMass) {
    KitType aid;
    aid.sizes = {{"50", {25.0, {}}, {}, {}, {}}};
    EXPECT_FALSE(fits(sized("50"), aid, weighing(24.9)));
    EXPECT_TRUE(fits(sized("50"), aid, weighing(25)));
}

TEST(WornKit, mustHoldEveryMeasureThatIsKnown) {
    KitType jacket;
    jacket.sizes = {{"M", {60.0, 90.0}, {80.0, 110.0}, {}, {}}};
    Person person;
    EXPECT_TRUE(fits(sized("M"), jacket, person)) << "nothing known: it has to be looked at";
    person.massKg = 75;
    EXPECT_TRUE(fits(sized("M"), jacket, person));
    person.chestCm = 110.5;
    EXPECT_FALSE(fits(sized("M"), jacket, person));
    person.chestCm = 110;
    EXPECT_TRUE(fits(sized("M"), jacket, person));
    person.chestCm = 79.5;
    EXPECT_FALSE(fits(sized("M"), jacket, person));
    person.chestCm = 80;
    person.massKg = 91;
    EXPECT_FALSE(fits(sized("M"), jacket, person));
    person.massKg.reset();
    EXPECT_TRUE(fits(sized("M"), jacket, person));
    EXPECT_TRUE(hasMeasures(person));
}

TEST(WornKit, ofNoKnownSizeFitsAnybody) {
    KitType jacket;
    jacket.sizes = {{"M", {60.0, 90.0}, {}, {}, {}}};
    EXPECT_TRUE(fits(sized(""), jacket, weighing(120)));
    EXPECT_TRUE(fits(sized("XXL"), jacket, weighing(120)));
    EXPECT_EQ(sizeOf(sized("XXL"), jacket), nullptr);
    EXPECT_EQ(sizeOf(sized("m "), jacket), &jacket.sizes[0]);
    EXPECT_FALSE(fits(sized("m "), jacket, weighing(120)));
}

CheckBuilder twoJackets(const char* first, const char* second) {
    CheckBuilder check;
    check.sizedType("jacket");
    check.line("jacket", 5);
    check.seeSized("K1", "jacket", first);
    check.seeSized("K2", "jacket", second);
    return check;
}

TEST(WornKit, hasOnePlaceForEachPersonNamed) {
    auto check = twoJackets("M", "M");
    check.name("Ada", 70);
    check.name("Ben", 80);
    const auto answer = check.answer();
    EXPECT_THAT(answer.findings, IsEmpty());
    EXPECT_EQ(answer.lines[0].wanted, 2);
    EXPECT_EQ(answer.lines[0].items[0].wornBy, "Ada");
    EXPECT_EQ(answer.lines[0].items[1].wornBy, "Ben");
}

TEST(WornKit, isGivenSoThatBothAreServedNotFirstComeFirstServed) {
    auto check = twoJackets("M", "L");
    check.name("Ada", 90); // fits both
    check.name("Ben", 80); // fits only the M that was seen first
    const auto answer = check.answer();
    EXPECT_THAT(answer.findings, IsEmpty());
    EXPECT_EQ(answer.lines[0].items[0].wornBy, "Ben");
    EXPECT_EQ(answer.lines[0].items[1].wornBy, "Ada");
}

TEST(WornKit, saysWhoIsLeftWithoutWhenNothingFits) {
    auto check = twoJackets("M", "M");
    check.name("Ada", 70);
    check.name("Ben", 120);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop no-fit jacket", "remark extra jacket K2"));
    EXPECT_THAT(answer.findings[0].people, ElementsAre("Ben"));
    EXPECT_THAT(answer.lines[0].withoutPeople, ElementsAre("Ben"));
    EXPECT_EQ(answer.outcome, CheckOutcome::Incomplete);
}

TEST(WornKit, saysSoOfWhoIsNamedFirstToo) {
    auto check = twoJackets("M", "M");
    check.name("Ada", 120);
    check.name("Ben", 70);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop no-fit jacket", "remark extra jacket K2"));
    EXPECT_THAT(answer.findings[0].people, ElementsAre("Ada"));
}

TEST(WornKit, isOfTheWrongSizeWhenItFitsNobodyNamed) {
    auto check = twoJackets("M", "S");
    check.name("Ada", 70);
    check.name("Ben", 120);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop no-fit jacket", "stop wrong-size jacket K2"));
    EXPECT_EQ(briefOf(answer.lines[0]), "K1+ K2- ");
    EXPECT_EQ(findingOf(answer, FindingKind::WrongSize)->size, "S");
}

TEST(WornKit, isMissingNotUnfitWhenNothingIsThereToTry) {
    auto check = twoJackets("M", "M");
    check.name("Ada", 70);
    check.name("Ben", 120);
    check.input.seen.pop_back();
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing jacket"));
    EXPECT_THAT(check.answer().findings[0].people, ElementsAre("Ben"));
    check.seeSized("K3", "jacket", "S").record.item.state = ItemState::Unserviceable;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing jacket", "stop unserviceable jacket K3"));
}

TEST(WornKit, isMissingWhenTheLineIsNotRequired) {
    auto check = twoJackets("M", "S");
    check.input.lines[0].required = false;
    check.name("Ada", 120);
    check.somethingIsAsked();
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark missing jacket", "remark wrong-size jacket K1",
                                                     "remark wrong-size jacket K2"));
}

TEST(WornKit, isNotCheckedForFitWhenNobodyIsNamed) {
    CheckBuilder check;
    check.sizedType("jacket");
    check.wornType("helmet");
    check.line("jacket", 2);
    check.line("helmet", 1);
    check.seeSized("K1", "jacket", "S");
    check.seeSized("K2", "jacket", "S");
    check.see("K3", "helmet");
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark fit-not-checked"));
    EXPECT_THAT(answer.findings[0].people, IsEmpty());
    EXPECT_EQ(answer.lines[0].wanted, 2);
    EXPECT_THAT(answer.lines[0].withoutPeople, IsEmpty());
}

TEST(WornKit, isNotCheckedForAPersonWithoutMeasuresOrInAnItemWithoutASize) {
    auto check = twoJackets("S", "");
    check.name("Ada");
    check.name("Ben", 120);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark fit-not-checked", "remark fit-not-checked"));
    EXPECT_THAT(answer.findings[0].people, ElementsAre("Ada"));
    EXPECT_THAT(answer.findings[1].people, ElementsAre("Ben"));
    check.input.people = {};
    check.name("Ada", 50);
    check.name("Ben", 50);
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark fit-not-checked"))
        << "only the one in the unsized jacket";
    check.input.seen[0].record.item.size = "";
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark fit-not-checked", "remark fit-not-checked"));
}

TEST(WornKit, asksForNoMeasuresWhereNothingIsWorn) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle");
    check.name("Ada");
    EXPECT_THAT(check.answer().findings, IsEmpty());
}

TEST(WornKit, takesASubstituteThatFits) {
    CheckBuilder check;
    check.sizedType("jacket");
    check.sizedType("foam jacket");
    check.line("jacket", 1, true, {"foam jacket"});
    check.name("Ada", 70);
    check.seeSized("K1", "jacket", "L");
    check.seeSized("K2", "foam jacket", "M");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark wrong-size jacket K1"));
    EXPECT_EQ(check.answer().lines[0].items[0].kitType, "foam jacket");
}

CheckBuilder twoWhistles() {
    CheckBuilder check;
    check.personalType("whistle");
    check.line("whistle");
    check.name("Ada");
    check.name("Ben");
    return check;
}

TEST(PersonalKit, isWantedOfEachPersonNamed) {
    auto check = twoWhistles();
    check.seeOf("Ada", "K1", "whistle");
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop missing whistle"));
    EXPECT_THAT(answer.findings[0].people, ElementsAre("Ben"));
    check.seeOf("Ben", "K2", "whistle");
    EXPECT_THAT(check.answer().findings, IsEmpty());
    EXPECT_EQ(check.answer().lines[0].items[1].wornBy, "Ben");
}

TEST(PersonalKit, servesNobodyElse) {
    auto check = twoWhistles();
    check.seeOf("Ada", "K1", "whistle");
    check.seeOf("Ada", "K2", "whistle");
    check.seeOf("Cy", "K3", "whistle");
    check.see("K4", "whistle");
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop missing whistle", "stop other-person whistle K3",
                                             "stop other-person whistle K4", "remark extra whistle K2"));
    EXPECT_THAT(answer.findings[1].people, ElementsAre("Cy"));
    EXPECT_THAT(answer.findings[2].people, IsEmpty());
}

TEST(PersonalKit, isNotCheckedForItsOwnerWhenNobodyIsNamed) {
    auto check = twoWhistles();
    check.input.people.clear();
    check.seeOf("Cy", "K1", "whistle");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark person-not-checked"));
    EXPECT_EQ(check.answer().lines[0].wanted, 1);
}

TEST(PersonalKit, thatIsWornMustFitItsOwner) {
    CheckBuilder check;
    check.sizedType("jacket").personal = true;
    check.line("jacket");
    check.name("Ada", 70);
    check.name("Ben", 100);
    check.seeSized("K1", "jacket", "M").record.item.person = "Ben";
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop no-fit jacket x2", "stop wrong-size jacket K1"));
    check.input.seen[0].record.item.person = "Ada";
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing jacket"))
        << "there is none of Ben's to try";
}

} // namespace
} // namespace core

#include "core/answers/service_round.h"
#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_manifests.h"
#include "core/register/manifest.h"
#include "core/register/manifest_record.h"
#include "core/register/new_kit.h"
#include "core/register/operation.h"
#include "tests/core/store/full_club.h"

#include <gtest/gtest.h>

#include <functional>

namespace {

using core::ErrorCode;

/// Each act that keeps a text of a person, given that text. Empty: it was recorded.
using Act = std::function<std::optional<core::Error>(const std::string&)>;

std::optional<core::Error> faultOf(const core::Outcome& outcome) {
    return outcome ? std::nullopt : std::optional(outcome.error());
}
template <class T>
std::optional<core::Error> faultOf(const core::Result<T>& result) {
    return result ? std::nullopt : std::optional(result.error());
}

class GivenTexts : public testing::Test, protected support::FullClub {
protected:
    core::Operation trip(const std::string& fuel, const std::string& incidents) const {
        return {.left = now.at, .hours = 1.0, .fuel = fuel, .incidents = incidents};
    }
    /// The innermost: what is wrong with the row of a manifest is the cause.
    static core::Error innermost(core::Error error) {
        while (!error.cause.empty())
            error = core::Error(error.cause.front());
        return error;
    }

    const std::string knife = "KGFB6J8WF9";
    const core::ManifestOwner tern{core::ManifestOwner::Kind::Boat, "Tern"};
    std::map<std::string, Act> acts{
        {"log text",
         [&](auto& t) { return faultOf(club.log().add("Petrel", t, core::Severity::Remark, {}, now)); }},
        {"log by",
         [&](auto& t) {
             return faultOf(club.log().add("Petrel", "keel bent", core::Severity::Remark, t, now));
         }},
        {"log closing",
         [&](auto& t) {
             return faultOf(club.log().close(club.log().entries("").value().front().id, t, {}, now));
         }},
        {"event", [&](auto& t) { return faultOf(club.events().fileUnder(stillOpen, t, now)); }},
        {"fuel", [&](auto& t) { return faultOf(club.events().recordOperation(back, trip(t, {}), now)); }},
        {"incidents",
         [&](auto& t) { return faultOf(club.events().recordOperation(back, trip({}, t), now)); }},
        {"maker",
         [&](auto& t) { return faultOf(club.kit().registerKit({.kitType = "knife", .maker = t}, {}, now)); }},
        {"note",
         [&](auto& t) { return faultOf(club.kit().registerKit({.kitType = "knife", .note = t}, {}, now)); }},
        {"service note",
         [&](auto& t) {
             return faultOf(club.kit().recordService({.rule = "yearly look",
                                                      .day = now.today,
                                                      .by = "Odalys Finch",
                                                      .note = t,
                                                      .scans = {jacket}},
                                                     now));
         }},
        {"line note",
         [&](auto& t) {
             return faultOf(
                 club.manifests().changeLine(tern, {.kitType = "radio", .quantity = 3, .note = t}, {}, now));
         }},
        {"point",
         [&](auto& t) {
             return faultOf(club.manifests().changePoint(
                 tern, {"launch", {.name = t, .kind = core::PointKind::Look}}, {}, now));
         }},
        {"damage", [&](auto& t) { return faultOf(club.checks().withdraw(stillOpen, knife, t, now)); }},
        {"reinstated",
         [&](auto& t) {
             (void)club.kit().writeOff(knife, "worn", {}, now);
             return faultOf(club.kit().reinstate(knife, t, {}, now));
         }},
        {"urgent", [&](auto& t) { return faultOf(club.checks().sign(open(), "Odalys Finch", t, now)); }},
        {"let go", [&](auto& t) { return faultOf(club.checks().discard(stillOpen, t, now)); }},
    };
};

TEST_F(GivenTexts, areRefusedWithWhatIsNotSeen) {
    for (const auto& [name, act] : acts)
        for (const std::string text : {"sea\x1B[31m water", "sea\u202Ewater", "sea\u009Bwater"}) {
            const auto fault = act(text);
            ASSERT_TRUE(fault) << name;
            EXPECT_EQ(innermost(*fault).code, ErrorCode::TextUnseen) << name;
            EXPECT_EQ(innermost(*fault).arguments.front(), core::shown(text)) << name;
        }
}

TEST_F(GivenTexts, areRefusedWhenTheyAreTooLong) {
    for (const auto& [name, act] : acts) {
        const auto fault = act(std::string(2001, 'x'));
        ASSERT_TRUE(fault) << name;
        EXPECT_EQ(innermost(*fault).code, ErrorCode::TextTooLong) << name;
    }
}

TEST_F(GivenTexts, areTakenWithLettersOfAnyScript) {
    for (const auto& [name, act] : acts) {
        const auto fault = act("<b>Ölzeug</b> naß \u05D0\u05D1 & 絵");
        EXPECT_FALSE(fault) << name << ": " << support::described(*fault);
    }
}

// UAX #15, section 1.2: canonically equivalent texts are the same text.
TEST_F(GivenTexts, areOneNameHoweverTheyWereTyped) {
    const std::string one = "Caf\u00E9", two = "Cafe\u0301";
    import("places.csv", "place,note\n" + one + ",first\n");
    import("places.csv", "place,note\n" + two + ",second\n");
    import("people.csv", "person\n" + two + "\n");
    import("boats.csv", "boat,place\n" + two + "," + one + "\n");
    const auto places = club.register_().places();
    EXPECT_EQ(std::count(places.begin(), places.end(), one), 1);
    EXPECT_EQ(std::count(places.begin(), places.end(), two), 0);
    EXPECT_EQ(club.register_().boat(two)->name, one);
    EXPECT_EQ(club.register_().boat(one)->place, one);
    EXPECT_TRUE(club.checks().openStocktake("CAFE\u0301", now));
    ASSERT_TRUE(club.events().fileUnder(stillOpen, two, now));
    EXPECT_EQ(club.events().names().front(), one);
    const auto people = club.register_().people();
    EXPECT_TRUE(
        std::any_of(people.begin(), people.end(), [&](const auto& each) { return each.name == one; }));
}

TEST_F(GivenTexts, ofANewClubAreLookedAtBeforeAFileIsMade) {
    const auto refused = core::Club::create(folder / "new.tholepin", "Lake\x1B Club");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::TextUnseen);
    EXPECT_FALSE(std::filesystem::exists(folder / "new.tholepin"));
    EXPECT_EQ(core::Club::create(folder / "new.tholepin", "Cafe\u0301 Club")->name(), "Caf\u00E9 Club");
}

} // namespace

#include "tests/app/cli/small_club.h"

#include "core/base/calendar_day.h"

namespace small_club {
namespace {

using core::CalendarDay;
using testing::HasSubstr;

/// The worked example as a register: thirteen of five lots, four lost, 80 item-years; wanted by two boats.
class Replace : public testing::Test {
protected:
    Replace() {
        const CalendarDay today = CalendarDay::parse("2026-01-01").value();
        std::string items = "kit_type,size,place,state,since,why,made,registered\n";
        for (const auto& [count, made] : std::vector<std::pair<int, std::string>>{{2, "2021-04-30"},
                                                                                  {3, "2022-03-31"},
                                                                                  {2, "2022-09-30"},
                                                                                  {3, "2023-06-30"},
                                                                                  {3, "2024-12-31"}})
            for (int i = 0; i < count; ++i)
                items += "smoke,,Shed,,,," + made + ',' + today.plusDays(-2000).iso() + '\n';
        const std::string lostFrom = CalendarDay::parse("2025-06-01")->plusDays(-805).iso();
        for (const char* how : {"missing,2025-06-01,", "missing,2025-06-01,", "written off,2025-06-01,lost",
                                "written off,2025-06-01,lost"})
            items += std::string("smoke,,Shed,") + how + ",2021-01-01," + lostFrom + '\n';
        files = {{"places.csv", "place\nShed\n"},
                 {"kit_types.csv", "kit_type,order_lead_days,pack,price,spares\nsmoke,84,,,\n"},
                 {"life_rules.csv", "kit_type,rule,kind,n,source\nsmoke,age,from_made,60,club order 9\n"},
                 {"boats.csv", "boat,boat_class\nTeal,inflatable\nCoot,inflatable\n"},
                 {"manifest_lines.csv", "boat_class,kit_type,quantity\ninflatable,smoke,4\n"},
                 {"items.csv", items}};
    }

    void create() {
        writeFiles(m_folder / "csv", files);
        const Ran made = ctl(
            {"create", m_file, "--club", "Small Club", "--from", m_folder / "csv", "--today", "2026-01-01"});
        ASSERT_EQ(made.exit, 0) << made.err;
    }

    Ran run(std::vector<std::string> more) const {
        std::vector<std::string> words{"replace", m_file, "--today", "2026-01-01"};
        words.insert(words.end(), more.begin(), more.end());
        return ctl(words);
    }
    Json document(std::vector<std::string> more = {}) const {
        more.push_back("--json");
        return Json::parse(run(more).out);
    }
    Json row(const std::vector<std::string>& more = {}) const { return document(more)["plan"].at(0); }

    std::map<std::string, std::string> files;
    support::ScratchFolder m_folder;
    std::filesystem::path m_file = m_folder / "club.tholepin";
};

TEST_F(Replace, reckonsTheWorkedExample) {
    create();
    const Ran ran = run({"--json"});
    EXPECT_EQ(ran.exit, 1) << "something runs short";
    EXPECT_EQ(ran.err, "");
    const Json plan = Json::parse(ran.out);
    EXPECT_EQ(plan["today"], "2026-01-01");
    EXPECT_EQ(plan["months"], 36);
    EXPECT_EQ(plan["confidence"], .95);
    ASSERT_EQ(plan["plan"].size(), 1U);
    const Json expected = Json::parse(
        R"({"kit_type": "smoke", "size": null, "wanted": 8, "stock": 13, "losses": 4, "item_years": 80.0,
            "first_short": "2027-04-01", "order_by": "2026-12-23", "late": false, "quantity": 5,
            "price": null, "cost": null})");
    for (const auto& [name, value] : expected.items())
        EXPECT_EQ(plan["plan"][0][name], value) << name;
    // Gamma(4.5, 90); P on 2027-04-01 by scipy 1.10, to ten digits.
    const Json& chances = plan["plan"][0]["p_short"];
    std::vector<std::string> days;
    for (const Json& chance : chances)
        days.push_back(chance["day"]);
    EXPECT_EQ(days, (std::vector<std::string>{"2026-01-01", "2026-05-01", "2027-04-01", "2027-10-01",
                                              "2028-07-01", "2029-01-01"}));
    EXPECT_EQ(chances[2], Json::parse(R"({"day": "2027-04-01", "counting": 8, "p": 0.3766094159})"));
}

TEST_F(Replace, orderDaysAndQuantitiesFollowMarginAndCover) {
    create();
    const std::vector<std::string> record{"--prior-losses", "0.000000001", "--prior-years", "0.000000001"};
    const auto with = [&](std::vector<std::string> more) {
        more.insert(more.end(), record.begin(), record.end());
        return row(more);
    };
    EXPECT_EQ(with({"--margin", "0"})["order_by"], "2027-01-06");
    EXPECT_EQ(with({"--margin", "30"})["order_by"], "2026-12-07");
    EXPECT_EQ(with({"--cover", "12"})["quantity"], 5);
    EXPECT_EQ(with({"--cover", "21"})["quantity"], 8);
    EXPECT_TRUE(with({"--cover", "72"})["quantity"].is_null()) << "new kit falls due in 2032";
    // Eight of eight left: P = 1 − (1 + 8t/80)^−4 passes .4 after 10·(.6^−¼ − 1) years = 497.6 days.
    EXPECT_EQ(with({"--confidence", "0.6"})["first_short"], "2027-05-14");
}

TEST_F(Replace, isFineWhenNothingRunsShort) {
    create();
    const Ran ran = run({"--months", "14", "--json"});
    EXPECT_EQ(ran.exit, 0);
    const Json found = Json::parse(ran.out)["plan"][0];
    for (const char* name : {"first_short", "order_by", "cost"})
        EXPECT_TRUE(found[name].is_null()) << name;
    EXPECT_EQ(found["quantity"], 0);
    EXPECT_EQ(run({"--months", "15"}).exit, 1) << "the horizon's last day is in it";
    EXPECT_THAT(run({"--months", "14"}).out, testing::StartsWith("Nothing runs short until 1 March 2027."));
}

TEST_F(Replace, buysWholePacksAtAPrice) {
    files["kit_types.csv"] = "kit_type,order_lead_days,pack,price\nsmoke,84,4,17.25\n";
    create();
    EXPECT_EQ(row()["quantity"], 8);
    EXPECT_EQ(row()["cost"], 138.0);
    EXPECT_EQ(document()["budget"], Json::parse(R"([{"year": 2026, "cost": 138.0, "unpriced": 0}])"));
}

TEST_F(Replace, saysWhatIsLate) {
    files["kit_types.csv"] = "kit_type,order_lead_days,spares\nsmoke,84,6\n";
    create();
    EXPECT_EQ(row()["wanted"], 14);
    EXPECT_EQ(row()["first_short"], "2026-01-01");
    EXPECT_EQ(row()["order_by"], "2025-09-24"); // 98 days before the last day of 2025
    EXPECT_EQ(row()["late"], true);
    EXPECT_THAT(run({}).out, HasSubstr("late: order now"));
}

TEST_F(Replace, plansEachSizeThatIsWanted) {
    files["kit_types.csv"] = "kit_type,worn,order_lead_days,spares\nvest,yes,10,3\n";
    files["sizes.csv"] = "kit_type,size,wanted\nvest,S,\nvest,M,2\nvest,L,1\n";
    files["life_rules.csv"] = "kit_type,rule,kind,undated\nvest,expiry,stamped,stop\n";
    files["manifest_lines.csv"] = "boat_class,kit_type,quantity\ninflatable,vest,2\n";
    files["items.csv"] =
        "kit_type,size,place,stamped,registered\nvest,m,Shed,2030-01-01,2025-12-31\n"
        "vest,M,Shed,2026-06,2025-12-31\nvest,M,Shed,,2025-12-31\nvest,L,Shed,2035-01,2025-12-31\n"
        "vest,,Shed,2035-01,2025-12-31\n";
    create();
    const Json plan = document()["plan"];
    ASSERT_EQ(plan.size(), 2U) << "no row for a size that nobody wants";
    EXPECT_EQ(plan[0]["size"], "M") << "what runs short is first";
    EXPECT_EQ(plan[0]["wanted"], 2);
    EXPECT_EQ(plan[0]["stock"], 2) << "the undated one counts on no day";
    EXPECT_EQ(plan[0]["first_short"], "2026-07-01");
    EXPECT_EQ(plan[1]["size"], "L");
    EXPECT_EQ(plan[1]["stock"], 1);
}

TEST_F(Replace, writesAnOrderSheet) {
    files["kit_types.csv"] = "kit_type,order_lead_days,price\nsmoke,84,2\n\"=1+1, red\",0,1\n";
    files["manifest_lines.csv"] =
        "boat_class,kit_type,quantity\ninflatable,smoke,4\ninflatable,\"=1+1, red\",1\n";
    create();
    const std::string csv = m_folder / "order.csv", ics = m_folder / "order.ICS",
                      pdf = m_folder / "order.pdf";
    EXPECT_EQ(run({"--out", csv}).exit, 1);
    const std::string text = textOf(csv);
    EXPECT_THAT(text, testing::StartsWith("kit_type,size,quantity,pack,price,cost,order_by,late,first_short,"
                                          "budget_year,wanted,stock\r\n\"'=1+1, red\",,"));
    EXPECT_THAT(text, HasSubstr("\r\nsmoke,,5,1,2,10,2026-12-23,no,2027-04-01,2026,8,13\r\n"));
    EXPECT_EQ(run({"--out", ics}).exit, 1);
    EXPECT_THAT(textOf(ics), HasSubstr("\r\nDTSTART;VALUE=DATE:20261223\r\n"));
    EXPECT_EQ(run({"--out", pdf}).exit, 1);
    EXPECT_THAT(textOf(pdf), testing::StartsWith("%PDF-"));
    EXPECT_EQ(support::runProgram(std::filesystem::path(PDFTOPPM).parent_path() / "pdftotext",
                                  {"-layout", pdf, m_folder / "order.txt"})
                  .exit,
              0);
    const std::string printed = textOf(m_folder / "order.txt");
    EXPECT_THAT(printed, HasSubstr("23 December 2026"));
    EXPECT_THAT(printed, HasSubstr("Small Club"));
    EXPECT_THAT(printed, HasSubstr("wanted 8, in stock 13"));
}

TEST_F(Replace, writesNoHalfSheet) {
    create();
    const Ran ran = run({"--out", m_folder / "nowhere" / "order.csv"});
    EXPECT_EQ(ran.exit, 3);
    expectOneErrorLine(ran);
    EXPECT_EQ(ran.out, "");
}

TEST_F(Replace, refusesWhatCannotBeReckoned) {
    create();
    for (const auto& bad : std::vector<std::vector<std::string>>{{"--confidence", "1"},
                                                                 {"--confidence", "0"},
                                                                 {"--confidence", "95"},
                                                                 {"--confidence", "nan"},
                                                                 {"--confidence", "high"},
                                                                 {"--months", "0"},
                                                                 {"--months", "2.5"},
                                                                 {"--cover", "-1"},
                                                                 {"--margin", "-1"},
                                                                 {"--prior-losses", "0"},
                                                                 {"--prior-years", "0"},
                                                                 {"--out", "order.txt"},
                                                                 {"--today", "tomorrow"}}) {
        const Ran ran = run(bad);
        EXPECT_EQ(ran.exit, 2) << bad[0] << ' ' << bad[1];
        expectOneErrorLine(ran);
        EXPECT_EQ(ran.out, "");
    }
    EXPECT_EQ(run({"--confidence", "0.5", "--months", "1", "--cover", "0", "--margin", "0"}).exit, 0);
}

TEST_F(Replace, ofAClubWithoutBoatsSaysSo) {
    files.erase("boats.csv");
    files.erase("manifest_lines.csv");
    create();
    EXPECT_EQ(run({}).exit, 0);
    EXPECT_THAT(run({}).out, HasSubstr("No boat asks for any kit yet"));
    EXPECT_EQ(document()["plan"], Json::array());
}

using Lasting = Replace;

TEST_F(Lasting, tellsHowLongKitReallyLasts) {
    // NIST/SEMATECH e-Handbook 8.4.1.3, hours taken as days: ten failures, ten still there at 500.
    const CalendarDay today = CalendarDay::parse("2026-01-01").value();
    std::string items = "kit_type,place,state,since,why,first_use\n";
    for (const int days : {54, 187, 216, 240, 244, 335, 361, 373, 375, 386})
        items += "smoke,Shed,written off,2026-01-01,worn," + today.plusDays(-days).iso() + '\n';
    for (int i = 0; i < 10; ++i)
        items += "smoke,Shed,,,," + today.plusDays(-500).iso() + '\n';
    files["items.csv"] = items;
    files["life_rules.csv"] = "kit_type,rule,kind,n\nsmoke,a year,from_first_use,12\n";
    create();
    const Ran ran = ctl({"lasting", m_file, "--today", "2026-01-01", "--json"});
    EXPECT_EQ(ran.exit, 0);
    const Json kit = Json::parse(ran.out)["kit"];
    ASSERT_EQ(kit.size(), 1U);
    EXPECT_EQ(kit[0]["lives"], 20);
    EXPECT_EQ(kit[0]["worn_out"], 10);
    EXPECT_EQ(kit[0]["median_days"], 386);
    EXPECT_NEAR(kit[0]["weibull"]["shape"], 1.720797, 1e-6);
    EXPECT_NEAR(kit[0]["weibull"]["scale_years"], 606.52756 / 365.25, 1e-6);
    EXPECT_NEAR(kit[0]["curve"][0]["lasting"], .95, 1e-12);
    EXPECT_EQ(kit[0]["rules"][0]["rule"], "a year");
    EXPECT_NEAR(kit[0]["rules"][0]["lasting"], .65, 1e-12);
    const Ran words = ctl({"lasting", m_file, "--today", "2026-01-01"});
    EXPECT_THAT(words.out, HasSubstr("10 ended (0 lost, 10 worn out), 10 here"));
    EXPECT_THAT(words.out, HasSubstr("goes faster with age"));
}

TEST_F(Lasting, makesNoFitOfAFewEndings) {
    create();
    const Json kit = Json::parse(ctl({"lasting", m_file, "--today", "2026-01-01", "--json"}).out)["kit"][0];
    EXPECT_EQ(kit["lost"], 4);
    EXPECT_TRUE(kit["weibull"].is_null());
    EXPECT_EQ(kit["median_days"], 1612) << "from made to lost: four of the six that came to that age";
}

} // namespace
} // namespace small_club

#include "tests/app/cli/small_club.h"

#include <fstream>

namespace small_club {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;
using Words = std::vector<std::string>;

class StarterClub : public testing::TestWithParam<const char*> {
protected:
    support::ScratchFolder folder;
    const std::string file = folder / "club.tholepin";
};

TEST_P(StarterClub, isCreatedExportedAndImportedWithoutAChange) {
    const Ran made = ctl({"create", file, "--club", "Lake club", "--starter", GetParam()});
    ASSERT_EQ(made.exit, 0) << made.err;
    EXPECT_EQ(ctl({"verify", file}).exit, 0);
    ASSERT_EQ(ctl({"export", file, folder / "out"}).exit, 0);
    const std::string before = contentOf(file);
    const Ran again = ctl({"import", file, folder / "out"});
    EXPECT_EQ(again.exit, 0) << again.err;
    EXPECT_EQ(contentOf(file), before);
}

// Every rule and every size says in its source that it is an example.
TEST_P(StarterClub, callsWhatItSaysAnExample) {
    ASSERT_EQ(ctl({"create", file, "--club", "Lake club", "--starter", GetParam()}).exit, 0);
    ASSERT_EQ(ctl({"export", file, folder / "out"}).exit, 0);
    int rows = 0;
    for (const char* name : {"life_rules.csv", "sizes.csv"}) {
        std::ifstream in(folder / "out" / name);
        std::string line;
        std::getline(in, line); // the header
        for (; std::getline(in, line); ++rows)
            EXPECT_THAT(line, HasSubstr("example")) << name;
    }
    EXPECT_GT(rows, 8);
}

// A boat with all that its manifest asks for, in date and tried, has a complete check.
TEST_P(StarterClub, hasAManifestThatAFittedOutBoatMeets) {
    ASSERT_EQ(ctl({"create", file, "--club", "Lake club", "--starter", GetParam()}).exit, 0);
    ASSERT_EQ(ctl({"export", file, folder / "out"}).exit, 0);
    std::map<std::string, std::string> csv{
        {"people.csv", "person,role\nAda Thorne,driver\nBo Lind,crew\nCy Marsh,crew\n"}};
    std::ifstream in(folder / "out" / "manifest_lines.csv");
    std::string line, boatClass;
    std::getline(in, line);
    const std::vector<std::string> people{"Ada Thorne", "Bo Lind", "Cy Marsh"};
    std::size_t aboard = 0;
    std::string items = "kit_type,person,boat,made,first_use,stamped\n";
    while (std::getline(in, line)) {
        const Json cells = [&] {
            Json all = Json::array();
            std::size_t from = 0;
            for (std::size_t at; (at = line.find(',', from)) != std::string::npos; from = at + 1)
                all.push_back(line.substr(from, at - from));
            return all;
        }();
        boatClass = cells[0].get<std::string>();
        const auto type = cells[2].get<std::string>();
        const auto quantity = std::stoul(cells[3].get<std::string>());
        if (type == "whistle") aboard = quantity;
        for (std::size_t i = 0; i < quantity; ++i)
            items += type + ',' + (type == "whistle" ? people.at(i) + ',' : ",Teal") +
                     ",2026-01,2026-01,2030-01\n";
    }
    csv["boats.csv"] = "boat,boat_class\nTeal," + boatClass + "\n";
    csv["items.csv"] = items;
    writeFiles(folder / "more", csv);
    const Ran added = ctl({"import", file, folder / "more", "--today", today});
    ASSERT_EQ(added.exit, 0) << added.err;
    ASSERT_EQ(ctl({"export", file, folder / "kit"}).exit, 0);
    std::string codes, services = "code,part,rule,day,by\n", points = "point,value\n";
    std::ifstream kit(folder / "kit" / "items.csv");
    std::getline(kit, line);
    std::map<std::string, std::vector<std::string>> byType;
    while (std::getline(kit, line)) {
        const std::string code = line.substr(0, line.find(','));
        codes += code + '\n';
        const auto from = line.find(',') + 1;
        byType[line.substr(from, line.find(',', from) - from)].push_back(code);
    }
    std::ifstream rules(folder / "out" / "life_rules.csv");
    std::getline(rules, line);
    while (std::getline(rules, line)) {
        const std::string type = line.substr(0, line.find(',')), rest = line.substr(line.find(',') + 1);
        const std::string rule = rest.substr(rest.find(',') + 1);
        if (rule.find(",inspect_every,") == std::string::npos &&
            rule.find(",service_every,") == std::string::npos)
            continue;
        for (const std::string& code : byType[type])
            services += code + ",," + rule.substr(0, rule.find(',')) + ",2026-03-01,Bo Lind\n";
    }
    std::ifstream pointRows(folder / "out" / "points.csv");
    std::getline(pointRows, line);
    while (std::getline(pointRows, line)) {
        const auto launch = line.find(",launch,");
        if (launch == std::string::npos) continue;
        const std::string rest = line.substr(launch + 8);
        const bool isQuoted = rest.front() == '"';
        const auto end = isQuoted ? rest.find('"', 1) + 1 : rest.find(',');
        const std::string kind = rest.substr(end + 1, rest.find(',', end + 1) - end - 1);
        std::string low = rest.substr(rest.find(',', end + 1) + 1);
        low = low.substr(low.find(',') + 1);
        low = low.substr(0, low.find(','));
        points += rest.substr(0, end) + ',' + (kind == "look" ? "done" : low) + '\n';
    }
    writeFiles(folder / "services", {{"services.csv", services}});
    ASSERT_EQ(ctl({"import", file, folder / "services", "--today", today}).exit, 0);
    std::ofstream(folder / "points.csv") << points;
    Words words{"check",    file,      "--boat",  "Teal", "--phase",  "launch",
                "--driver", people[0], "--codes", "-",    "--points", folder / "points.csv",
                "--today",  today,     "--json"};
    for (std::size_t i = 1; i < aboard; ++i)
        words.insert(words.end(), {"--crew", people[i]});
    const Ran checked = ctl(words, codes);
    ASSERT_FALSE(checked.out.empty()) << checked.err;
    const Json answer = Json::parse(checked.out);
    EXPECT_NE(answer["outcome"], "incomplete") << checked.out;
    for (const Json& each : answer["lines"])
        EXPECT_EQ(each["counted"], each["wanted"]) << each["kit_type"];
}

INSTANTIATE_TEST_SUITE_P(Each, StarterClub, testing::Values("inflatable", "rowing", "cabin-launch"),
                         [](const auto& each) {
                             std::string name = each.param;
                             std::erase(name, '-');
                             return name;
                         });

TEST(Starters, areListedAndNoOtherIsTaken) {
    const Json listed = Json::parse(ctl({"starters", "--json"}).out);
    EXPECT_EQ(listed["starters"].size(), 3U);
    EXPECT_THAT(ctl({"starters"}).out, HasSubstr("cabin-launch"));
    const support::ScratchFolder folder;
    for (const char* name : {"submarine", "../club", ""}) {
        const Ran ran = ctl({"create", folder / "a.tholepin", "--club", "Lake club", "--starter", name});
        EXPECT_EQ(ran.exit, 2) << name;
        expectOneErrorLine(ran);
        EXPECT_FALSE(fs::exists(folder / "a.tholepin"));
    }
}

} // namespace
} // namespace small_club

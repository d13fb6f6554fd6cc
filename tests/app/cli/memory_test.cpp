#include "tests/app/cli/small_club.h"

#include "core/tag/tag_code.h"

#include <iostream>

namespace small_club {
namespace {

constexpr int boats = 40, itemsOfBoat = 250; ///< 10,000 items
constexpr long mostKilobytes = 256L * 1000;

std::string codeOf(std::uint64_t number) {
    return core::TagCode::mint(core::TagClass::Kit,
                               [&] { return number = number * 6364136223846793005U + 1; })
        .text();
}

std::map<std::string, std::string> bigRegister() {
    std::map<std::string, std::string> files{
        {"boats.csv", "boat,boat_class,place\n"},
        {"places.csv", "place\nShed\n"},
        {"people.csv", "person,role\nAda Thorne,driver\n"},
        {"kit_types.csv", "kit_type,order_lead_days\n"},
        {"life_rules.csv", "kit_type,rule,kind,n,source\n"},
        {"manifest_lines.csv", "boat_class,kit_type,quantity\n"},
        {"items.csv", "code,kit_type,boat,made,first_use,registered,serial\n"},
    };
    for (int type = 0; type < 25; ++type) {
        const std::string name = "type " + std::to_string(type);
        files["kit_types.csv"] += name + ",60\n";
        files["life_rules.csv"] +=
            name + ",yearly look,inspect_every,12,club\n" + name + ",retire,from_made,120,club\n";
        files["manifest_lines.csv"] += "inflatable," + name + ",10\n";
    }
    for (int boat = 0; boat < boats; ++boat) {
        const std::string name = "boat " + std::to_string(boat);
        files["boats.csv"] += name + ",inflatable,Shed\n";
        for (int item = 0; item < itemsOfBoat; ++item) {
            const int number = boat * itemsOfBoat + item;
            files["items.csv"] += codeOf(static_cast<std::uint64_t>(number)) + ",type " +
                                  std::to_string(item % 25) + ',' + name + ",20" +
                                  std::to_string(16 + number % 10) + "-05,,2024-01-01,S" +
                                  std::to_string(number) + '\n';
        }
    }
    return files;
}

/// Prints what each command takes of memory, with a club of 10,000 items; none takes 256 MB.
TEST(Memory, eachCommandOnABigClubStaysBelowItsShare) {
    const support::ScratchFolder folder;
    const std::filesystem::path file = folder / "club.tholepin";
    writeFiles(folder / "csv", bigRegister());
    std::string codes;
    for (std::uint64_t item = 0; item < itemsOfBoat; ++item)
        codes += codeOf(item) + '\n';
    const std::string some = codeOf(0), at = "2026-03-14T06:40:00Z";
    const std::vector<std::vector<std::string>> commands{
        {"create", file, "--club", "Big", "--from", folder / "csv"},
        {"import", file, folder / "csv", "--dry-run"},
        {"export", file, folder / "out"},
        {"boats", file},
        {"due", file, "--within", "3650d"},
        {"missing", file},
        {"check", file, "--boat", "boat 0", "--phase", "launch", "--driver", "Ada Thorne", "--codes", "-",
         "--sign", "Ada Thorne", "--urgent", "swimmer", "--at", at},
        {"stocktake", file, "--place", "Shed", "--codes", "-"},
        {"service", file, "--rule", "yearly look", "--day", "2026-03-01", "--by", "Ada Thorne", "--codes",
         "-"},
        {"make-ready", file, "--seconds", "2"},
        {"replace", file},
        {"replace", file, "--out", folder / "order.pdf"},
        {"replace", file, "--out", folder / "order.ics"},
        {"lasting", file},
        {"tags", file, "--out", folder / "tags.pdf"},
        {"tags", file, "--mint", "10000"},
        {"receive", file, "--kit-type", "type 1", "--count", "1000", "--out", folder / "new.pdf"},
        {"retag", file, some, "--out", folder / "one.pdf"},
        {"write-off", file, some, "--why", "worn"},
        {"reinstate", file, some, "--why", "found again"},
        {"log-add", file, "--boat", "boat 1", "--text", "keel scratched", "--by", "Ada Thorne"},
        {"log", file},
        {"history", file, "boat 0"},
        {"history", file, some},
        {"aboard", file, "--boat", "boat 0", "--on", at},
        {"verify", file},
        {"verify", file, "--rebuild"},
        {"backup", file, folder / "backup.tholepin"},
        {"restore", folder / "backup.tholepin", folder / "restored.tholepin"},
    };
    for (std::vector<std::string> words : commands)
        for (const bool json : {false, true}) {
            if (json && (words[0] == "create" || words[0] == "receive" || words[0] == "restore" ||
                         words[0] == "backup"))
                continue;
            if (json) words.push_back("--json");
            words.insert(words.end(), {"--today", "2026-03-14"});
            const Ran ran = ctl(words, codes);
            std::cout << "    " << ran.peakKilobytes / 1000 << " MB  " << words[0] << (json ? " --json" : "")
                      << '\n';
            EXPECT_LT(ran.peakKilobytes, mostKilobytes) << words[0];
            EXPECT_TRUE(ran.exit >= 0 && (ran.exit < 2 || json))
                << words[0] << ' ' << ran.exit << ' ' << ran.err;
            words.resize(words.size() - 2);
        }
}

} // namespace
} // namespace small_club

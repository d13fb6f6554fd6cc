#include "tests/support/small_club_files.h"

#include <algorithm>
#include <fstream>

namespace small_club {
namespace {

const char* points = "boat_class,phase,point,kind,unit,low,high,required\n"
                     "inflatable,launch,hull,look,,,,yes\n"
                     "inflatable,launch,bow chamber,measure,kPa,18,22,yes\n"
                     "inflatable,launch,engine run,timed,,5,300,no\n";

std::string items() {
    return "code,kit_type,size,boat,place,state,since,why,first_use,registered,gtin,serial\n" + knife +
           ",knife,,Teal,,,,,,2024-01-01,,\n" + paddle1 + ",paddle,,Teal,,,,,,2024-01-01,,\n" + paddle2 +
           ",paddle,,Teal,,,,,,2024-01-01,,\n" + towLine + ",tow line,,Teal,,,,,2025-06-01,2024-01-01,,\n" +
           jacketM + ",life jacket,M,Teal,,,,,,2024-01-01,,\n" + jacketL +
           ",life jacket,L,Teal,,,,,,2024-01-01,,\n" + radio +
           ",radio,,Teal,,,,,,2024-01-01,02000000100012,R-7\n" + cootKnife +
           ",knife,,Coot,,missing,2026-03-08,lost,,2024-01-01,,\n" + writtenOff +
           ",paddle,,,Shed,written off,2026-01-05,worn,,2024-01-01,,\n";
}

} // namespace

std::vector<std::string> wholeKit() {
    return {knife, paddle1, paddle2, towLine, jacketM, jacketL, radio};
}

std::string lines(const std::vector<std::string>& codes) {
    std::string text;
    for (const std::string& code : codes)
        text += code + '\n';
    return text;
}

std::vector<std::string> without(std::vector<std::string> codes, const std::string& code) {
    codes.erase(std::remove(codes.begin(), codes.end(), code), codes.end());
    return codes;
}

std::map<std::string, std::string> csvFiles() {
    return {{"places.csv", "place,tag\nShed," + shedTag + "\n"},
            {"kit_types.csv",
             "kit_type,worn\nknife,no\npaddle,no\ntow line,no\nlife jacket,yes\nradio,no\nflare,no\n"},
            {"sizes.csv", "kit_type,size,mass_low_kg,mass_high_kg,source\n"
                          "life jacket,M,50,70,example\nlife jacket,L,70,90,example\n"},
            {"life_rules.csv",
             "kit_type,rule,kind,n,source\ntow line,yearly look,inspect_every,12,club order 3\n"},
            {"boats.csv", "boat,boat_class,tag,place\nTeal,inflatable," + tealTag +
                              ",Shed\nCoot,inflatable," + cootTag + ",Shed\n"},
            {"manifest_lines.csv",
             "boat_class,kit_type,quantity,required\ninflatable,life jacket,2,yes\n"
             "inflatable,paddle,2,yes\ninflatable,knife,1,yes\ninflatable,tow line,1,yes\n"
             "inflatable,radio,1,no\n"},
            {"points.csv", points},
            {"people.csv",
             "person,tag,role,mass_kg\nAda Thorne," + adaTag + ",driver,62\nBo Lind," + boTag + ",crew,80\n"},
            {"items.csv", items()}};
}

void writeFiles(const std::filesystem::path& folder, const std::map<std::string, std::string>& files) {
    std::filesystem::create_directories(folder);
    for (const auto& [name, text] : files)
        std::ofstream(folder / name, std::ios::binary) << text;
}

} // namespace small_club

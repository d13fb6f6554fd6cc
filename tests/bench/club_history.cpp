#include "tests/bench/club_history.h"

#include "core/store/club_file.h"
#include "core/store/ledger.h"
#include "core/tag/tag_code.h"

#include <fmt/format.h>
#include <fstream>

namespace core::bench {

constexpr int typesOfBoat = 15;

const std::vector<std::string>& codes() {
    static const std::vector<std::string> minted = [] {
        std::uint64_t next = 1;
        std::vector<std::string> all;
        for (int i = 0; i < boats * itemsOfBoat; ++i)
            all.push_back(
                TagCode::mint(TagClass::Kit, [&] { return next = next * 6364136223846793005u + 1; }).text());
        return all;
    }();
    return minted;
}

void writeRegister(const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    std::ofstream types(folder / "kit_types.csv"), rules(folder / "life_rules.csv"),
        lines(folder / "manifest_lines.csv"), items(folder / "items.csv"), boatFile(folder / "boats.csv"),
        people(folder / "people.csv");
    types << "kit_type\n";
    rules << "kit_type,rule,kind,n\n";
    lines << "boat_class,kit_type,quantity\n";
    for (int type = 0; type < typesOfBoat; ++type) {
        types << "type " << type << '\n';
        rules << "type " << type << ",yearly look,inspect_every,12\ntype " << type
              << ",retire,from_made,120\n";
        lines << "inflatable,type " << type << ",2\n";
    }
    boatFile << "boat,boat_class\n";
    items << "code,kit_type,boat,made\n";
    for (int boat = 0; boat < boats; ++boat) {
        boatFile << "boat " << boat << ",inflatable\n";
        for (int item = 0; item < itemsOfBoat; ++item)
            items << codes()[static_cast<std::size_t>(boat * itemsOfBoat + item)] << ",type "
                  << item % typesOfBoat << ",boat " << boat << ",2022-05-01\n";
    }
    people << "person\nWren Sadler\n";
}

void writeHistory(const std::filesystem::path& file, const std::string& name, const CheckAnswer& answer,
                  std::int64_t sightings) {
    const auto database = clubFile::open(file, false);
    Ledger ledger(*database);
    std::int64_t written = 0;
    for (int trip = 0; written < sightings; ++trip) {
        Transaction transaction(*database);
        for (const Phase phase : {Phase::Launch, Phase::Return})
            for (int boat = 0; boat < boats && written < sightings; ++boat) {
                const Instant at = Instant::parse(fmt::format("2025-{:02}-{:02}T08:00:00.000Z",
                                                              1 + trip / 28 % 12, 1 + trip % 28))
                                       .value();
                const std::string check = fmt::format("{}-{}-{}-{}", name, trip, nameOf(phase), boat),
                                  boatName = fmt::format("boat {}", boat);
                ledger.append(CheckOpened{check, boatName, phase, at}, {});
                for (int item = 0; item < itemsOfBoat; ++item, ++written)
                    ledger.append(TagSeen{check, codes()[static_cast<std::size_t>(boat * itemsOfBoat + item)],
                                          at, "camera"},
                                  {});
                ledger.append(CheckSigned{check, boatName, phase, at, {"Wren Sadler"}, {}, answer},
                              "Wren Sadler");
            }
        transaction.commit();
    }
}

} // namespace core::bench

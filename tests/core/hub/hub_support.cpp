#include "tests/core/hub/hub_support.h"

#include "core/store/ledger.h"

#include <fstream>

namespace support {

void HubMachine::see(const std::string& check, int sightings) {
    in();
    core::Database database(file, core::Database::Mode::ReadWrite);
    core::Ledger ledger(database);
    core::Transaction together(database);
    for (int i = 0; i < sightings; ++i)
        ledger.append(
            core::TagSeen{
                .check = check, .code = "KGFB6J8WF9", .at = core::Instant::now(), .seenBy = "camera"},
            {});
    ledger.committing();
    together.commit();
    ledger.committed();
}

HubTest::HubTest()
    : m_stateBefore(getenv("THOLEPIN_STATE")) {
    static int number = 0;
    database = "hub_" + std::to_string(++number);
    testCluster().makeDatabase(database);
    EXPECT_TRUE(core::districtHub::prepare(url("office")));
    for (const char* role : {"sandbay", "harbour", "district"})
        testCluster().makeRole(role);
    EXPECT_TRUE(core::districtHub::addClub(url("office"), "Sandbay", "sandbay"));
    EXPECT_TRUE(core::districtHub::addClub(url("office"), "Harbour", "harbour"));
    EXPECT_TRUE(core::districtHub::addDistrict(url("office"), "district"));
}

HubTest::~HubTest() {
    setenv("THOLEPIN_STATE", m_stateBefore.c_str(), 1);
}

HubMachine& HubTest::founded(HubMachine& machine, const std::string& club) {
    machine.in();
    machine.club.emplace(core::Club::create(machine.file, club).value());
    const auto csv = folder / "csv";
    std::filesystem::create_directories(csv);
    std::ofstream(csv / "boats.csv") << "boat,boat_class\nPetrel,inflatable\n";
    std::ofstream(csv / "people.csv") << "person,role,mass_kg\nBram Oke,crew,82\nOdalys Finch,driver,\n";
    EXPECT_TRUE(machine.club->register_().importCsv(csv, machine.today, false));
    return machine;
}

HubMachine& HubTest::fetched(HubMachine& machine, const std::string& club, const std::string& role,
                             bool wantsPrivate) {
    machine.in();
    const auto done = core::districtHub::fetch({url(role), wantsPrivate}, club, machine.file);
    EXPECT_TRUE(done) << described(done.error());
    machine.open();
    return machine;
}

void HubTest::expectWhole(HubMachine& machine) {
    machine.in();
    const auto found = machine.club->record().verify(false);
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->problems.empty()) << described(found->problems.front());
}

void HubTest::expectExchanged(HubMachine& machine, int sent, int cameIn) {
    const auto done = machine.exchange();
    ASSERT_TRUE(done) << described(done.error());
    EXPECT_EQ(done->sent, sent);
    EXPECT_EQ(done->cameIn.facts, cameIn);
}

} // namespace support

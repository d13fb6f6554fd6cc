#include "core/base/error_code.h"
#include "tests/core/hub/hub_support.h"

// Which role of the database connects for whom.

namespace {

using core::ErrorCode;
using support::HubMachine;

class HubRoles : public support::HubTest {
protected:
    void SetUp() override { founded(shed); }
    HubMachine shed{folder / "shed"};
    HubMachine home{folder / "home"};
};

TEST_F(HubRoles, aRoleOfNoClub) {
    support::testCluster().makeRole("nobody_here");
    founded(home, "Harbour");
    const auto refused = home.join(url("nobody_here"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::HubNotAllowed);
    ask("GRANT tholepin_club TO nobody_here");
    const auto unknown = home.join(url("nobody_here"));
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().code, ErrorCode::HubRoleUnknown);
    EXPECT_EQ(unknown.error().arguments, std::vector<std::string>{"nobody_here"});
    const auto fetch = core::districtHub::fetch({url("nobody_here"), false}, "Sandbay", folder / "fetched");
    ASSERT_FALSE(fetch);
    EXPECT_EQ(fetch.error().code, ErrorCode::HubRoleUnknown) << "nothing to choose from";
    EXPECT_EQ(fetch.error().arguments, std::vector<std::string>{"nobody_here"});
}

TEST_F(HubRoles, aDatabaseThatIsNoHub) {
    support::testCluster().makeDatabase(database + "_bare");
    const std::string bare = support::testCluster().url(database + "_bare", "sandbay");
    EXPECT_EQ(shed.join(bare).error().code, ErrorCode::HubNotPrepared);
    EXPECT_EQ(core::districtHub::boards(bare).error().code, ErrorCode::HubNotPrepared);
    EXPECT_EQ(shed.join(support::testCluster().url("not_there", "sandbay")).error().code,
              ErrorCode::HubNotReached);
}

TEST_F(HubRoles, rolesThatAreTaken) {
    const auto code = [](const auto& outcome) {
        return outcome ? ErrorCode::EndOfCodes : outcome.error().code;
    };
    using namespace core::districtHub;
    EXPECT_EQ(code(addClub(url("office"), "Sandbay", "sandbay")), ErrorCode::EndOfCodes) << "as it is";
    EXPECT_EQ(code(addClub(url("office"), "Harbour", "sandbay")), ErrorCode::HubRoleTaken);
    EXPECT_EQ(code(addClub(url("office"), "Harbour", "district")), ErrorCode::HubRoleOfDistrict);
    EXPECT_EQ(code(addDistrict(url("office"), "sandbay")), ErrorCode::HubRoleTaken);
    EXPECT_EQ(code(addClub(url("office"), "Harbour", "who \"is\"; this")), ErrorCode::HubNoSuchRole);
    EXPECT_EQ(code(addClub(url("sandbay"), "Mine", "sandbay")), ErrorCode::HubNotAllowed);
    EXPECT_EQ(code(prepare(url("sandbay"))), ErrorCode::HubNotAllowed);
    EXPECT_EQ(code(addClub(url("office"), "  ", "sandbay")), ErrorCode::NameMissing);
    EXPECT_EQ(addClub(url("office"), " SANDBAY ", "sandbay").value(), "Sandbay") << "the one that is there";
    EXPECT_EQ(ask("SELECT string_agg(name, ',' ORDER BY name) FROM tholepin.club"), "Harbour,Sandbay\n");
    ask("CREATE ROLE \"who \"\"is\"\"; this\" LOGIN");
    EXPECT_EQ(code(addClub(url("office"), "O'Neill \"cove\"", "who \"is\"; this")), ErrorCode::EndOfCodes);
    ask("DROP OWNED BY \"who \"\"is\"\"; this\"; DROP ROLE \"who \"\"is\"\"; this\"");
}

} // namespace

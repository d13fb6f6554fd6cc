#include "core/hub/hub_office.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/base/store_failure.h"
#include "core/hub/hub_connection.h"
#include "core/hub/hub_facts.h"
#include "hub_script.h"

#include <pqxx/pqxx>

namespace core::hubOffice {
namespace {

void requireRole(HubConnection& hub, const std::string& role) {
    if (hub.run("SELECT FROM pg_catalog.pg_roles WHERE rolname = $1", {role}).empty())
        throw StoreFailure({ErrorCode::HubNoSuchRole, {role}});
}

/// The club that it connects for; empty: for none.
std::string clubOfRole(HubConnection& hub, const std::string& role) {
    const pqxx::result rows = hub.run("SELECT c.name FROM tholepin.member AS m JOIN tholepin.club AS c ON "
                                      "c.number = m.club WHERE m.role = $1",
                                      {role});
    return rows.empty() ? std::string() : rows[0][0].c_str();
}

/// As a club that is called so, but for case, stands there; else as it was given.
std::string nameThere(HubConnection& hub, const std::string& club) {
    for (const auto& each : hubFacts::clubs(hub))
        if (foldName(each.name) == foldName(club)) return each.name;
    return club;
}

bool isDistrict(HubConnection& hub, const std::string& role) {
    return !hub.run("SELECT FROM pg_catalog.pg_auth_members AS m JOIN pg_catalog.pg_roles AS g ON g.oid = "
                    "m.roleid JOIN pg_catalog.pg_roles AS r ON r.oid = m.member WHERE g.rolname = "
                    "'tholepin_district' AND r.rolname = $1",
                    {role})
                .empty();
}

} // namespace

void prepare(HubConnection& hub) {
    hub.script(hubScript);
}

std::string addClub(HubConnection& hub, const std::string& club, const std::string& role) {
    requireRole(hub, role);
    const std::string other = clubOfRole(hub, role);
    if (!other.empty() && foldName(other) != foldName(club))
        throw StoreFailure({ErrorCode::HubRoleTaken, {role, other}});
    if (isDistrict(hub, role)) throw StoreFailure({ErrorCode::HubRoleOfDistrict, {role}});
    const std::string name = nameThere(hub, club);
    hub.run(
        "WITH made AS (INSERT INTO tholepin.club (name) VALUES ($1) ON CONFLICT DO NOTHING RETURNING number) "
        "INSERT INTO tholepin.member (role, club) SELECT $2::name, number FROM (SELECT number FROM made "
        "UNION "
        "ALL SELECT number FROM tholepin.club WHERE name = $1) AS c ON CONFLICT DO NOTHING",
        {name, role});
    hub.script("GRANT tholepin_club TO " + hub.quotedName(role));
    return name;
}

void addDistrict(HubConnection& hub, const std::string& role) {
    requireRole(hub, role);
    if (const std::string club = clubOfRole(hub, role); !club.empty())
        throw StoreFailure({ErrorCode::HubRoleTaken, {role, club}});
    hub.script("GRANT tholepin_district TO " + hub.quotedName(role));
}

} // namespace core::hubOffice

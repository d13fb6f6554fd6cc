#pragma once

#include "core/club/club.h"
#include "core/club/club_hub.h"
#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/club/district_hub.h"
#include "tests/core/store/table_dump.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/test_cluster.h"

#include <cstdlib>
#include <filesystem>
#include <gtest/gtest.h>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>

namespace support {

/// A machine of a club: a user's state folder, a club file and a line to the hub.
struct HubMachine {
    explicit HubMachine(const std::filesystem::path& folder)
        : state(folder / "state")
        , file(folder / "club.tholepin") {
        std::filesystem::create_directories(folder);
    }
    /// Its state folder is the user's from now on.
    HubMachine& in() {
        setenv("THOLEPIN_STATE", state.c_str(), 1);
        return *this;
    }
    core::Club& open() {
        in();
        auto opened = core::Club::open(file);
        if (!opened) throw std::runtime_error(described(opened.error()));
        club.emplace(std::move(*opened));
        return *club;
    }
    core::Result<core::Exchanged> exchange() {
        in();
        return club->hub().exchange(*link, today, [](const auto&) { return std::string("not ready"); });
    }
    core::Outcome join(const std::string& url, bool sendsPrivate = false) {
        in();
        return club->hub().join({url, sendsPrivate});
    }
    /// One fact of it, or two where a machine begins.
    void write(const std::string& words) {
        in();
        const auto added = club->log().add("Petrel", words, core::Severity::Remark, "Bram Oke", moment());
        if (!added) throw std::runtime_error(described(added.error()));
    }
    /// So many sightings of one check, written at once as a club's seasons would be.
    void see(const std::string& check, int sightings);
    std::string dump() {
        core::Database database(file, core::Database::Mode::ReadOnly);
        return support::dump(database);
    }
    std::int64_t facts() {
        core::Database database(file, core::Database::Mode::ReadOnly);
        return database.number("SELECT count(*) FROM fact");
    }
    static core::Moment moment() { return {core::Instant::now(), core::Instant::now().localDay()}; }

    std::filesystem::path state, file;
    std::optional<core::Club> club;
    std::unique_ptr<core::HubLink> link = std::make_unique<core::HubLink>();
    core::CalendarDay today = *core::CalendarDay::parse("2026-03-14");
};

/// A hub in a database of its own, with club "Sandbay" (role sandbay), club "Harbour" (role harbour) and a
/// district (role district). The one who administers it is "office".
class HubTest : public testing::Test {
protected:
    HubTest();
    ~HubTest() override;

    std::string url(const std::string& role = "sandbay") const { return testCluster().url(database, role); }
    std::string ask(const std::string& sql, const std::string& role = "office") const {
        return testCluster().ask(database, sql, role);
    }
    /// A new club of that name with a boat and two people, on a machine of that name, not joined.
    HubMachine& founded(HubMachine& machine, const std::string& club = "Sandbay");
    /// Another machine of it, by `hub fetch`.
    HubMachine& fetched(HubMachine& machine, const std::string& club = "Sandbay",
                        const std::string& role = "sandbay", bool wantsPrivate = false);
    void expectWhole(HubMachine& machine);
    static void expectExchanged(HubMachine& machine, int sent, int cameIn);

    ScratchFolder folder;
    std::string database;

private:
    std::string m_stateBefore;
};

} // namespace support

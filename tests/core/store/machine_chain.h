#pragma once

#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/store/fact_table.h"
#include "tests/core/club/small_club.h"

#include <gtest/gtest.h>

namespace support {

namespace fs = std::filesystem;

/// The user's state folder for the length of a test.
class StateFolder {
public:
    explicit StateFolder(const fs::path& folder) {
        const char* before = getenv("THOLEPIN_STATE");
        m_before = before == nullptr ? "" : before;
        use(folder);
    }
    ~StateFolder() { use(m_before); }
    static void use(const fs::path& folder) { setenv("THOLEPIN_STATE", folder.c_str(), 1); }

private:
    std::string m_before;
};

class MachineChain : public testing::Test {
protected:
    /// One more fact in that file, by a program that is started for it.
    void writeTo(const fs::path& file) {
        auto club = core::Club::open(file);
        ASSERT_TRUE(club) << described(club.error());
        const std::string words = "seat loose, " + std::to_string(++m_written);
        ASSERT_TRUE(club->log().add("Petrel", words, core::Severity::Remark, "Bram Oke", m_now));
    }
    static core::Verification looked(const fs::path& file) {
        return *core::Club::open(file, core::Club::Access::ReadOnly)->record().verify(false);
    }
    static std::vector<core::Fact> factsOf(const fs::path& file) {
        std::vector<core::Fact> facts;
        core::Database database(file, core::Database::Mode::ReadOnly);
        core::factTable::forEachByStamp(database, [&](const core::Fact& fact) { facts.push_back(fact); });
        return facts;
    }
    fs::path copied(const fs::path& file, const std::string& name) {
        const fs::path copy = m_folder / name;
        fs::copy_file(file, copy, fs::copy_options::overwrite_existing);
        return copy;
    }
    static void put(core::Database& file, const std::string& id, const char* column,
                    const std::string& text) {
        file.prepare("UPDATE fact SET " + std::string(column) + " = ? WHERE id = ?")
            .with(text)
            .with(id)
            .run();
    }

    ScratchFolder m_folder;
    fs::path m_file = m_folder / "club.tholepin";
    core::Moment m_now{core::Instant::now(), *core::CalendarDay::parse("2026-03-14")};
    StateFolder m_state{m_folder / "state"};

private:
    void SetUp() override {
        auto club = core::Club::create(m_file, "Quillmere");
        ASSERT_TRUE(club) << described(club.error());
        fs::create_directory(m_folder / "csv");
        writeFile(m_folder / "csv" / "boats.csv", "boat,boat_class\nPetrel,inflatable\n");
        ASSERT_TRUE(club->register_().importCsv(m_folder / "csv", m_now.today, false));
    }
    int m_written = 0;
};

} // namespace support

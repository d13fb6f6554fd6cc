#pragma once

#include "core/club/club_copy.h"
#include "core/club/club_exchange.h"
#include "core/club/club_record.h"
#include "core/store/database.h"
#include "tests/core/store/full_club.h"
#include "tests/core/store/table_dump.h"

#include <gtest/gtest.h>
#include <string>

namespace support {

inline std::string dumpOf(const std::filesystem::path& file) {
    core::Database database(file, core::Database::Mode::ReadOnly);
    return dump(database);
}

/// Files of one club, each written by a machine of its own: a copy goes on as a new machine.
class Merge : public testing::Test {
protected:
    core::Club copy(const std::string& name) {
        EXPECT_TRUE(core::copyClub(full.file(), path(name), false));
        return core::Club::open(path(name)).value();
    }
    std::filesystem::path path(const std::string& name) { return full.folder / (name + ".tholepin"); }
    static void write(core::Club& club, core::SheetId sheet, const core::CellTexts& key,
                      const core::CellTexts& cells, core::Moment now) {
        const auto done = club.register_().write({sheet, {{key, cells, {}}}}, {}, now);
        ASSERT_TRUE(done && done->rejected.empty());
    }
    static core::CameIn merged(core::Club& into, const std::filesystem::path& from) {
        const auto done = into.exchange().merge({from}, core::ClubExchange::Forks::Refused);
        EXPECT_TRUE(done) << described(done.error());
        return done ? *done : core::CameIn{};
    }
    void expectWhole(core::Club& club) {
        const auto found = club.record().verify(false);
        EXPECT_TRUE(found->problems.empty()) << described(found->problems.front());
    }
    FullClub full;
};

} // namespace support

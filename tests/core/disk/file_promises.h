#pragma once

#include "core/base/error_code.h"
#include "core/club/club.h"
#include "core/club/club_record.h"
#include "core/record/verification.h"
#include "tests/core/disk/disk_acts.h"
#include "tests/core/disk/disk_figures.h"
#include "tests/core/disk/disk_folder.h"
#include "tests/support/errors.h"

#include <functional>
#include <gmock/gmock.h>
#include <unistd.h>

namespace support {

/// A folder with clubs, on the disk as it is.
class FilePromises : public testing::Test {
protected:
    FilePromises() { DiskFolder().copyTo(folder.path()); }
    core::ErrorCode refusal(core::Club::Access access) {
        const auto club = core::Club::open(file, access);
        EXPECT_FALSE(club);
        return club ? core::ErrorCode::EndOfCodes : club.error().code;
    }
    void expectRead(const std::filesystem::path& club) {
        const auto read = core::Club::open(club, core::Club::Access::ReadOnly);
        ASSERT_TRUE(read) << described(read.error());
        EXPECT_EQ(read->name(), "Small club");
        EXPECT_THAT(read->record().verify(false)->problems, testing::IsEmpty());
    }
    /// Does that in the club of that name, and kills the program then: its log stands beside it.
    void leaveLogOf(const char* name, const char* act) {
        const ScratchFolder killed;
        auto club = core::Club::open(folder / name);
        EXPECT_FALSE(clubAct(act).run(*club, folder.path()));
        copyFolder(folder.path(), killed.path());
        { const core::Club closed = std::move(*club); }
        copyFolder(killed.path(), folder.path());
        ASSERT_GT(std::filesystem::file_size(folder / (std::string(name) + "-wal")), 0u);
    }
    ScratchFolder folder;
    const std::filesystem::path file = folder / "club.tholepin";
};

/// Runs `look` as somebody who may write nothing here; the superuser may, whatever the permissions are.
inline void asGuest(const std::function<void()>& look) {
    const bool isSuperuser = ::geteuid() == 0;
    ASSERT_TRUE(!isSuperuser || ::seteuid(65534) == 0);
    look();
    ASSERT_TRUE(!isSuperuser || ::seteuid(0) == 0);
}

} // namespace support

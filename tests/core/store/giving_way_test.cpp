#include "core/store/database.h"
#include "core/store/giving_way.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>
#include <optional>
#include <thread>

namespace {

using core::Database;

/// One statement that writes so many rows of numbers.
std::string writing(const std::string& rows) {
    return "INSERT INTO row SELECT i FROM (WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n "
           "WHERE "
           "i < " +
           rows + ") SELECT i FROM n)";
}
const std::string ofMinutes =
    "INSERT INTO row SELECT count(*) FROM (WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL "
    "SELECT i + 1 FROM n WHERE i < 10000000000) SELECT i FROM n)";

class GivesWay : public testing::Test {
protected:
    void SetUp() override {
        for (const auto& each : {file, elsewhere})
            Database(each, Database::Mode::Create).script("CREATE TABLE row (n)");
    }
    /// Another connection that wants to write there, and waits until it can.
    static std::thread writer(const std::filesystem::path& to) {
        return std::thread([to] {
            Database database(to, Database::Mode::ReadWrite);
            core::Transaction transaction(database);
            database.script("INSERT INTO row VALUES (-1)");
            transaction.commit();
        });
    }
    support::ScratchFolder folder;
    const std::filesystem::path file = folder / "a.db", elsewhere = folder / "b.db";
    Database passing{{}, Database::Mode::Passing};
    bool gaveWay = false;
};

TEST_F(GivesWay, toWhoeverWaitsForTheLock) {
    Database own(file, Database::Mode::ReadWrite);
    std::optional<core::Transaction> transaction(std::in_place, own);
    own.script(writing("10"));
    std::thread waiting = writer(file);
    {
        const core::GivingWay givingWay(own, passing, gaveWay);
        EXPECT_THROW(own.script(ofMinutes), core::StoreFailure);
    }
    transaction.reset();
    waiting.join();
    EXPECT_TRUE(gaveWay);
    EXPECT_EQ(own.value("SELECT group_concat(n) FROM row"), "-1") << "nothing of its own";
}

TEST_F(GivesWay, alsoWhileItWorksInTheOther) {
    Database own(file, Database::Mode::ReadWrite);
    passing.script("CREATE TABLE row (n)");
    std::optional<core::Transaction> transaction(std::in_place, own);
    std::thread waiting = writer(file);
    {
        const core::GivingWay givingWay(own, passing, gaveWay);
        EXPECT_THROW(passing.script(ofMinutes), core::StoreFailure);
    }
    transaction.reset();
    waiting.join();
    EXPECT_TRUE(gaveWay);
}

TEST_F(GivesWay, toNobodyWhoWaitsForAnotherFile) {
    Database own(file, Database::Mode::ReadWrite), other(elsewhere, Database::Mode::ReadWrite);
    std::optional<core::Transaction> held(std::in_place, other);
    std::thread waiting = writer(elsewhere);
    {
        core::Transaction transaction(own);
        const core::GivingWay givingWay(own, passing, gaveWay);
        while (other.waits() == 0)
            std::this_thread::yield();
        EXPECT_NO_THROW(own.script(writing("20000")));
        transaction.commit();
    }
    held.reset();
    waiting.join();
    EXPECT_FALSE(gaveWay);
    EXPECT_EQ(own.number("SELECT count(*) FROM row"), 20000);
}

TEST_F(GivesWay, onlyWhileItLives) {
    Database own(file, Database::Mode::ReadWrite);
    { const core::GivingWay givingWay(own, passing, gaveWay); }
    std::optional<core::Transaction> transaction(std::in_place, own);
    std::thread waiting = writer(file);
    while (own.waits() == 0)
        std::this_thread::yield();
    EXPECT_NO_THROW(own.script(writing("20000")));
    transaction->commit();
    transaction.reset();
    waiting.join();
    EXPECT_FALSE(gaveWay);
    EXPECT_EQ(own.number("SELECT count(*) FROM row"), 20001);
}

} // namespace

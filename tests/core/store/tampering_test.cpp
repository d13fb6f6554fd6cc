#include "core/base/error_code.h"
#include "core/club/club_record.h"
#include "core/store/database.h"
#include "tests/core/store/full_club.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

// Whatever is changed in the file by another program is noticed: every column of every table that the schema
// has, rows added and removed, and the schema itself.

namespace {

using core::Database;
using core::ErrorCode;
using core::Statement;

class Tampering : public testing::Test {
protected:
    static void SetUpTestSuite() { full = std::make_unique<support::FullClub>(); }
    static void TearDownTestSuite() { full.reset(); }

    std::vector<core::Error> problems() {
        const auto found = full->club.record().verify(false);
        return found ? found->problems : std::vector{found.error()};
    }
    /// What verify finds while `sql` holds; then the file is as it was.
    std::vector<core::Error> problemsWith(const std::vector<std::string>& sql) {
        const std::filesystem::path altered = full->file().string() + ".altered";
        std::filesystem::remove(altered);
        {
            Database from(full->file(), Database::Mode::ReadOnly);
            Database to(altered, Database::Mode::Create);
            from.copyTo(to);
            sqlite3_db_config(to.handle(), SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
            to.script("DROP TRIGGER fact_is_never_changed; DROP TRIGGER fact_is_never_deleted;"
                      "PRAGMA foreign_keys = OFF;");
            for (const std::string& each : sql)
                to.script(each);
            for (const std::string& text : triggers)
                to.script(text);
        }
        auto club = core::Club::open(altered, core::Club::Access::ReadOnly);
        if (!club) return {club.error()};
        const auto found = club->record().verify(false);
        return found ? found->problems : std::vector{found.error()};
    }
    std::vector<std::string> tables() {
        std::vector<std::string> names;
        Database file(full->file(), Database::Mode::ReadOnly);
        Statement query = file.prepare(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND "
            "name <> 'wrong_pin'"); // which is no part of the record
        while (query.step())
            names.push_back(query.text(0));
        Statement text = file.prepare("SELECT sql FROM sqlite_schema WHERE type = 'trigger'");
        while (text.step())
            triggers.push_back(text.text(0));
        return names;
    }
    std::vector<std::pair<std::string, std::string>> columnsOf(const std::string& table) {
        std::vector<std::pair<std::string, std::string>> columns;
        Database file(full->file(), Database::Mode::ReadOnly);
        Statement query =
            file.prepare("SELECT name, type FROM pragma_table_info(?)").with(std::string_view(table));
        while (query.step())
            columns.emplace_back(query.text(0), query.text(1));
        return columns;
    }

    static std::unique_ptr<support::FullClub> full;
    std::vector<std::string> triggers;
    const std::vector<std::string> allTables = tables();
};

std::unique_ptr<support::FullClub> Tampering::full;

/// Another value of that type, as SQL.
std::string otherThan(const std::string& column, const std::string& type) {
    if (type == "BLOB") return "CAST(" + column + " || 'x' AS BLOB)";
    return type == "TEXT" ? column + " || 'x'" : column + " + 1000000";
}

// The positive twin of all below.
TEST_F(Tampering, aCopyThatNobodyChangedHasNoProblem) {
    EXPECT_TRUE(problems().empty());
    EXPECT_THAT(problemsWith({"SELECT 1"}), testing::IsEmpty());
}

TEST_F(Tampering, everyColumnOfEveryTableIsNoticed) {
    int columns = 0;
    for (const std::string& table : allTables) {
        ASSERT_GT(Database(full->file(), Database::Mode::ReadOnly).number("SELECT count(*) FROM " + table), 0)
            << table;
        for (const auto& [column, type] : columnsOf(table)) {
            const std::string other = otherThan(column, type);
            EXPECT_FALSE(problemsWith({"UPDATE " + table + " SET " + column + " = " + other + " WHERE (" +
                                       column + ") = (SELECT max(" + column + ") FROM " + table + ")"})
                             .empty())
                << table << '.' << column;
            ++columns;
        }
    }
    RecordProperty("columns", columns);
    EXPECT_GT(columns, 150);
}

TEST_F(Tampering, aRowThatWasAddedOrRemovedIsNoticed) {
    for (const std::string& table : allTables) {
        const std::string key = columnsOf(table).front().first;
        const std::string newest = " WHERE " + key + " = (SELECT max(" + key + ") FROM " + table + ")";
        EXPECT_FALSE(problemsWith({"DELETE FROM " + table + newest}).empty()) << table;
        std::string values;
        for (const auto& [column, type] : columnsOf(table))
            values += (values.empty() ? "" : ", ") + otherThan(column, type);
        EXPECT_FALSE(
            problemsWith({"INSERT INTO " + table + " SELECT " + values + " FROM " + table + newest}).empty())
            << table;
    }
}

// Two facts of one kind with their ids changed over: each sighting is then another's.
TEST_F(Tampering, swappedIdsAreNoticed) {
    EXPECT_THAT(problemsWith({"CREATE TEMP TABLE two AS SELECT id FROM fact WHERE kind = 'tag-seen' LIMIT 2",
                              "UPDATE fact SET id = 'other' WHERE id = (SELECT min(id) FROM two)",
                              "UPDATE fact SET id = (SELECT min(id) FROM two) WHERE id = (SELECT max(id) "
                              "FROM two)",
                              "UPDATE fact SET id = (SELECT max(id) FROM two) WHERE id = 'other'"}),
                testing::Contains(testing::Field(&core::Error::code, ErrorCode::FactChanged)));
}

TEST_F(Tampering, theSchemaIsComparedObjectByObject) {
    std::vector<std::string> changes{
        "CREATE TRIGGER swallow BEFORE INSERT ON sighting BEGIN SELECT RAISE(IGNORE); END",
        "CREATE VIEW more AS SELECT 1",
        "CREATE TABLE more (a)",
        "CREATE INDEX more ON sighting (at)",
        "DROP VIEW event_of_check",
        "DROP VIEW event_of_check; CREATE VIEW event_of_check AS SELECT '' AS check_id, '' AS stamp, '' AS "
        "key, '' AS event",
        "ALTER TABLE sighting ADD COLUMN more TEXT",
        "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, 'NOT NULL', '') WHERE name "
        "= 'sighting'"};
    Database file(full->file(), Database::Mode::ReadOnly);
    Statement query = file.prepare(
        "SELECT type || ' ' || name FROM sqlite_schema WHERE type IN ('index', 'view') AND sql IS NOT NULL");
    while (query.step())
        changes.push_back("DROP " + query.text(0));
    for (const std::string& change : changes)
        EXPECT_THAT(problemsWith({change}),
                    testing::Contains(testing::Field(&core::Error::code, ErrorCode::SchemaDiffers)))
            << change;
}

// A trigger of somebody else's could swallow what is told to be recorded.
TEST_F(Tampering, nothingIsWrittenToAFileWithAnotherSchema) {
    support::SmallClub small;
    small.close();
    { Database(small.file(), Database::Mode::ReadWrite).script("CREATE TABLE more (a)"); }
    const auto refused = core::Club::open(small.file());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::FileAltered);
    EXPECT_EQ(refused.error().arguments, std::vector<std::string>{"table more"});
    EXPECT_TRUE(core::Club::open(small.file(), core::Club::Access::ReadOnly)) << "it is looked over";
    { Database(small.file(), Database::Mode::ReadWrite).script("DROP TABLE more"); }
    EXPECT_TRUE(core::Club::open(small.file()));
}

} // namespace

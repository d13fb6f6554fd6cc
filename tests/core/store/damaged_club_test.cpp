#include "core/base/error_code.h"
#include "core/store/database.h"
#include "core/store/fact_table.h"
#include "tests/core/store/club_readers.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <set>

namespace {

using core::CellType;
using core::Database;
using core::ErrorCode;
using core::Statement;
using nlohmann::json;
using support::ClubReader;
using support::FullClub;

/// One club for all tests of this file, each of which puts back what it damages.
class DamagedClub : public testing::Test {
protected:
    static void SetUpTestSuite() { full = std::make_unique<FullClub>(); }
    static void TearDownTestSuite() { full.reset(); }

    void SetUp() override {
        file = std::make_unique<Database>(full->file(), Database::Mode::ReadWrite);
        file->script("DROP TRIGGER IF EXISTS fact_is_never_changed;");
    }

    /// What verify finds, but for the trigger that is away to let this test in.
    static std::vector<core::Error> problems(bool rebuild) {
        std::vector<core::Error> found = full->club.record().verify(rebuild)->problems;
        std::erase_if(found, [](const core::Error& problem) {
            return problem.code == ErrorCode::SchemaDiffers &&
                   problem.arguments.front() == "trigger fact_is_never_changed";
        });
        return found;
    }

    static std::unique_ptr<FullClub> full;
    std::unique_ptr<Database> file;
    const std::vector<ClubReader> readers = support::clubReaders();
};

std::unique_ptr<FullClub> DamagedClub::full;

// The positive twin of all below.
TEST_F(DamagedClub, untouchedEveryReaderWorks) {
    for (const ClubReader& reader : readers) {
        const auto failed = reader.read(*full);
        EXPECT_FALSE(failed) << reader.name << ": code " << static_cast<int>(failed->code);
    }
    EXPECT_TRUE(problems(false).empty());
    EXPECT_TRUE(problems(true).empty());
}

TEST_F(DamagedClub, everySheetHasRowsAndEveryKindAFact) {
    for (const core::Sheet& sheet : core::allSheets())
        EXPECT_GT(file->number("SELECT count(*) FROM " + std::string(sheet.table)), 0) << sheet.file;
    std::set<std::size_t> kinds;
    core::factTable::forEachInChain(*file, [&](const core::Fact& fact) {
        if (const auto body = core::factTable::bodyOf(fact)) kinds.insert(body->index());
    });
    EXPECT_EQ(kinds.size(), std::variant_size_v<core::FactBody>);
}

/// One cell of a table, planted and put back.
class PlantedCell {
public:
    PlantedCell(Database& file, std::string table, std::string column, const std::string& garbage)
        : m_file(file)
        , m_table(std::move(table))
        , m_column(std::move(column)) {
        m_row = file.number("SELECT min(rowid) FROM " + m_table); // rowid: none of the tables goes without
        m_clean =
            file.value("SELECT " + m_column + " FROM " + m_table + " WHERE rowid = " + std::to_string(m_row));
        put(garbage);
    }
    ~PlantedCell() { put(m_clean); }

    std::string cellOfRow(std::string_view column) const {
        return m_file.value("SELECT " + std::string(column) + " FROM " + m_table +
                            " WHERE rowid = " + std::to_string(m_row));
    }

private:
    void put(const std::string& text) {
        m_file.prepare("UPDATE " + m_table + " SET " + m_column + " = ? WHERE rowid = ?")
            .with(text)
            .with(m_row)
            .run();
    }

    Database& m_file;
    std::string m_table, m_column, m_clean;
    std::int64_t m_row = 0;
};

/// Reads the club in every way; how many readers found the cell. Any other damage they speak of fails the
/// test.
int readersThatNameIt(FullClub& full, const std::vector<ClubReader>& readers, const std::string& table,
                      const std::string& column, const std::string& text) {
    int found = 0;
    for (const ClubReader& reader : readers) {
        const auto failed = reader.read(full);
        if (!failed || failed->kind() != core::ErrorKind::FileDamaged) continue;
        EXPECT_EQ(failed->code, ErrorCode::CellUnreadable) << reader.name;
        EXPECT_EQ(failed->arguments.at(0), table) << reader.name;
        EXPECT_EQ(failed->arguments.at(2).substr(0, column.size()), column) << reader.name;
        EXPECT_EQ(failed->arguments.at(3), text) << reader.name;
        ++found;
    }
    return found;
}

bool holdsAnyText(CellType type) {
    return type == CellType::Text || type == CellType::Name || type == CellType::Names ||
           type == CellType::Tag || type == CellType::Gtin;
}

TEST_F(DamagedClub, everyColumnOfEverySheetIsReadOrNamed) {
    for (const core::Sheet& sheet : core::allSheets())
        for (const core::Column& column : sheet.columns)
            for (const char* garbage : {"garbage", "-1e99", "2026-02-30"}) {
                if (holdsAnyText(column.type) && garbage != std::string("garbage")) continue;
                SCOPED_TRACE(std::string(sheet.file) + ' ' + std::string(column.name) + ' ' + garbage);
                const PlantedCell planted(*file, std::string(sheet.table), std::string(column.name), garbage);
                const int found = readersThatNameIt(*full, readers, std::string(sheet.file),
                                                    std::string(column.name), garbage);
                EXPECT_EQ(found > 0, !holdsAnyText(column.type)) << found;
            }
}

TEST_F(DamagedClub, theErrorNamesTheRowByItsKey) {
    const PlantedCell planted(*file, "life_rule", "kind", "sometimes");
    const auto failed = core::Result(full->club.plans().replacement({}, full->now.today));
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().arguments,
              (std::vector<std::string>{"life_rules.csv", "life jacket / yearly look", "kind", "sometimes"}));
}

TEST_F(DamagedClub, anEmptyCellWithoutWhichARowSaysNothingIsNamed) {
    for (const auto& [table, sheet, column] : std::vector<std::tuple<const char*, const char*, const char*>>{
             {"life_rule", "life_rules.csv", "kind"},
             {"point", "points.csv", "kind"},
             {"point", "points.csv", "phase"},
             {"service", "services.csv", "day"},
             {"happening", "happenings.csv", "day"},
             {"use_record", "use.csv", "day"},
             {"log_entry", "log.csv", "day"}}) {
        SCOPED_TRACE(sheet);
        const PlantedCell planted(*file, table, column, "");
        EXPECT_GT(readersThatNameIt(*full, readers, sheet, column, ""), 0);
    }
}

// Keys, stamps and places of rows: no reader may fall over them.
TEST_F(DamagedClub, whatStandsBesideTheCellsBreaksNoReader) {
    for (const core::Sheet& sheet : core::allSheets())
        for (const auto& [column, garbage] : {std::pair("key", "garbage"), std::pair("stamp", "garbage"),
                                              std::pair("position", "99999999999")}) {
            SCOPED_TRACE(std::string(sheet.file) + ' ' + column);
            const PlantedCell planted(*file, std::string(sheet.table), column, garbage);
            EXPECT_EQ(readersThatNameIt(*full, readers, {}, {}, {}), 0);
        }
}

/// All that a column of a table can hold, by its declaration: "TEXT", "INTEGER", "REAL".
struct SchemaColumn {
    std::string table, name, type;
};

/// Every column of every table in the file but those of sheets, `fact`, and the index of its rows.
std::vector<SchemaColumn> columnsBesideTheSheets(Database& file) {
    std::vector<SchemaColumn> columns;
    Statement query = file.prepare("SELECT t.name, c.name, c.type FROM pragma_table_list t JOIN "
                                   "pragma_table_info(t.name) c WHERE t.type = 'table' AND t.wr = 0 AND "
                                   "t.name <> 'fact' AND t.name NOT LIKE 'sqlite%'");
    while (query.step())
        if (core::sheetOfTable(query.text(0)) == nullptr)
            columns.push_back({query.text(0), query.text(1), query.text(2)});
    return columns;
}

TEST_F(DamagedClub, everyColumnOfEveryOtherTableIsReadOrNamed) {
    const std::set<std::string> understood{
        "check_run.phase", "check_run.opened", "check_names.people", "sighting.at",       "sign_off.phase",
        "sign_off.at",     "sign_off.answer",  "item_state.state",   "item_state.since",  "made_at.at",
        "operation.body",  "photo_of.at",      "event_held.until",   "pin_change.change", "pin_change.at"};
    std::set<std::string> named, tables;
    for (const auto& [table, column, type] : columnsBesideTheSheets(*file)) {
        SCOPED_TRACE(table + '.' + column);
        tables.insert(table);
        if (type == "TEXT") {
            const PlantedCell planted(*file, table, column, "garbage");
            if (readersThatNameIt(*full, readers, table, column, "garbage") > 0)
                named.insert(table + '.' + column);
        } else {
            EXPECT_THROW(PlantedCell(*file, table, column, "garbage"), core::StoreFailure)
                << "the file itself takes no text for a number";
        }
    }
    EXPECT_EQ(named, understood);
    EXPECT_EQ(tables.size(), 24U);
}

TEST_F(DamagedClub, takingASightingBackNamesTheCellToo) {
    const std::string where = " WHERE check_id = '" + full->stillOpen + "'";
    const std::string clean = file->value("SELECT at FROM sighting" + where);
    file->script("UPDATE sighting SET at = 'garbage'" + where);
    const auto refused = full->club.checks().undo(full->stillOpen, "taken back", full->now);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::CellUnreadable);
    EXPECT_EQ(refused.error().arguments.at(2), "at");
    file->script("UPDATE sighting SET at = '" + clean + "'" + where);
    EXPECT_TRUE(full->club.checks().undo(full->stillOpen, "taken back", full->now));
    full->scan(full->stillOpen, "K80NSC1FX4");
}

// A reader that ends in the middle of a row must not keep the file from being written.
TEST_F(DamagedClub, whatWasDamagedCanBeWrittenToAllTheSame) {
    {
        const PlantedCell planted(*file, "check_run", "phase", "garbage");
        EXPECT_GT(readersThatNameIt(*full, readers, "check_run", "phase", "garbage"), 0);
    }
    EXPECT_TRUE(full->club.log().add("Tern", "seat loose", core::Severity::Remark, "Bram Oke", full->now));
}

bool saysWhichFact(ErrorCode code) {
    return code == ErrorCode::FactUnreadable || code == ErrorCode::FactFieldMissing ||
           code == ErrorCode::ManifestFactUnreadable || code == ErrorCode::ManifestFieldMissing;
}

/// The newest fact of each kind.
std::vector<core::Fact> newestOfEachKind(Database& file) {
    std::map<std::string, core::Fact> byKind;
    core::factTable::forEachByStamp(file, [&](const core::Fact& fact) { byKind[fact.kind] = fact; });
    std::vector<core::Fact> facts;
    for (auto& [kind, fact] : byKind)
        facts.push_back(std::move(fact));
    return facts;
}

// Each field of each kind, with a text, a number, and taken away: a rebuild, verify and every reader work or
// name it.
TEST_F(DamagedClub, everyFieldOfEveryKindOfFactIsReadOrNamed) {
    const auto putBody = [&](const core::Fact& fact, const std::string& body) {
        file->prepare("UPDATE fact SET body = ? WHERE id = ?").with(body).with(fact.id).run();
    };
    int named = 0;
    for (const core::Fact& fact : newestOfEachKind(*file)) {
        const json clean = json::parse(fact.body);
        for (const auto& [field, value] : clean.items())
            for (const json& garbage : {json("garbage"), json(-5), json()}) {
                SCOPED_TRACE(fact.kind + '.' + field + ' ' + garbage.dump());
                json planted = clean;
                if (garbage.is_null())
                    planted.erase(field);
                else
                    planted[field] = garbage;
                putBody(fact, planted.dump());
                const bool isUnderstood =
                    static_cast<bool>(core::bodyOf({.kind = fact.kind, .body = planted.dump()}));
                for (const ClubReader& reader : readers)
                    if (const auto failed = reader.read(*full)) {
                        EXPECT_TRUE(saysWhichFact(failed->code)) << reader.name;
                        EXPECT_EQ(failed->arguments.at(0), std::to_string(fact.seq)) << reader.name;
                    }
                const auto rebuilt = full->club.record().verify(true);
                EXPECT_EQ(static_cast<bool>(rebuilt), isUnderstood);
                if (!rebuilt) {
                    EXPECT_EQ(rebuilt.error().arguments.at(0), std::to_string(fact.seq));
                    ++named;
                }
                putBody(fact, fact.body);
                if (rebuilt) {
                    ASSERT_TRUE(problems(true).empty());
                }
            }
    }
    EXPECT_GT(named, 100);
}

// What stands around the body: verify names the fact, and every reader works or names it.
TEST_F(DamagedClub, everyColumnOfAFactIsReadOrNamed) {
    const std::vector<core::Fact> facts = newestOfEachKind(*file);
    const auto fact =
        std::find_if(facts.begin(), facts.end(), [](const auto& each) { return each.kind == "point"; });
    const std::string row =
        "WHERE rowid = " + file->value("SELECT rowid FROM fact WHERE id = '" + fact->id + "'");
    for (const char* column :
         {"id", "machine", "at_utc", "by", "kind", "body", "prev_hash", "hash", "signature"}) {
        SCOPED_TRACE(column);
        const std::string clean = file->value("SELECT " + std::string(column) + " FROM fact " + row);
        const auto put = [&](const std::string& text) {
            file->prepare("UPDATE fact SET " + std::string(column) + " = ? " + row).with(text).run();
        };
        put(column == std::string("body") ? "[\"garbage\"]" : "garbage");
        for (const ClubReader& reader : readers)
            if (const auto failed = reader.read(*full)) {
                EXPECT_TRUE(saysWhichFact(failed->code)) << reader.name;
            }
        EXPECT_FALSE(problems(false).empty());
        put(clean);
    }
    EXPECT_TRUE(problems(false).empty());
}

} // namespace

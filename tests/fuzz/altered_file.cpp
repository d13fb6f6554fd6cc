#include "tests/fuzz/altered_file.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <fstream>
#include <iterator>
#include <sqlite3.h>
#include <string>
#include <unistd.h>
#include <vector>

// The file format of SQLite, https://www.sqlite.org/fileformat2.html: sections 1.3 (the header), 1.6 (b-tree
// pages) and 4 (the write-ahead log, its frames and their checksums).

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace fuzz {
namespace {

constexpr std::size_t pageSize = 4096;
constexpr std::size_t recordSize = 16;
using Bytes = std::vector<std::uint8_t>;
using Record = std::span<const std::uint8_t>;

std::size_t number(Record record, std::size_t at) {
    return record[at] | static_cast<std::size_t>(record[at + 1]) << 8;
}

Bytes contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void put(const std::filesystem::path& file, const Bytes& bytes) {
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
}

std::size_t pageOf(const Bytes& file, Record record) {
    const std::size_t pages = std::max<std::size_t>(file.size() / pageSize, 1);
    return number(record, 1) % pages * pageSize;
}

/// Up to `most` bytes of the record, from its seventh on.
void overlay(Bytes& file, std::size_t at, Record record, std::size_t most) {
    for (std::size_t i = 0; i < most && at + i < file.size(); ++i)
        file[at + i] = record[6 + i];
}

void alterHeader(Bytes& file, Record record) {
    overlay(file, 16 + number(record, 3) % 84, record, 1 + record[5] % 4);
}
void alterBTreeHead(Bytes& file, Record record) {
    const std::size_t page = pageOf(file, record);
    overlay(file, page + (page == 0 ? 100 : 0) + record[3] % 12, record, 1 + record[5] % 2);
}
void alterCellPointer(Bytes& file, Record record) {
    const std::size_t page = pageOf(file, record);
    overlay(file, page + 8 + (page == 0 ? 100 : 0) + record[3] * std::size_t{2}, record, 2);
}
void alterBytes(Bytes& file, Record record) {
    overlay(file, pageOf(file, record) + number(record, 3) % pageSize, record, 1 + record[5] % 10);
}
void cutShort(Bytes& file, Record record) {
    file.resize(pageOf(file, record) + record[3] % 2 * 512);
}

void alterPages(Bytes& file, Record record) {
    static constexpr std::array alterations{alterHeader, alterBTreeHead, alterCellPointer, alterBytes,
                                            cutShort};
    if (!file.empty()) alterations[record[0] / 8 % alterations.size()](file, record);
}

/// One cell of one table, by SQL: what a person with a database program does. Triggers are off, as such a
/// program can have them.
void alterCells(const std::filesystem::path& path, const std::vector<Record>& records) {
    sqlite3* file = nullptr;
    sqlite3_open(path.c_str(), &file);
    sqlite3_db_config(file, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_exec(file, "PRAGMA synchronous = OFF", nullptr, nullptr, nullptr);
    for (const Record record : records) {
        const auto find = [&](const char* sql, std::size_t which) {
            std::vector<std::string> names;
            const auto add = [](void* into, int, char** cells, char**) {
                static_cast<std::vector<std::string>*>(into)->push_back(cells[0] == nullptr ? "" : cells[0]);
                return 0;
            };
            sqlite3_exec(file, sql, add, &names, nullptr);
            return names.empty() ? std::string() : names[which % names.size()];
        };
        const std::string table =
            record[1] % 4 == 0
                ? "fact"
                : find("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name", record[2]);
        const std::string column =
            find(("SELECT name FROM pragma_table_info('" + table + "')").c_str(), record[3]);
        static constexpr std::array values{"?1",
                                           "NULL",
                                           "9223372036854775807",
                                           "-1",
                                           "COLUMN || ?1",
                                           "replace(COLUMN, substr(COLUMN, 4, 2), ?1)",
                                           "substr(COLUMN, 1, length(COLUMN) / 2)",
                                           "''"};
        std::string value = values[record[4] % values.size()];
        for (std::size_t at; (at = value.find("COLUMN")) != std::string::npos;)
            value.replace(at, 6, column);
        const std::string sql =
            record[4] >= 240 ? "DELETE FROM " + table + " WHERE rowid % 7 = " + std::to_string(record[5] % 7)
                             : "UPDATE OR REPLACE " + table + " SET " + column + " = " + value +
                                   " WHERE rowid = (SELECT rowid FROM " + table + " LIMIT 1 OFFSET " +
                                   std::to_string(record[5]) + ")";
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(file, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK) continue;
        sqlite3_bind_text(statement, 1, reinterpret_cast<const char*>(record.data() + 6), 1 + record[0] % 10,
                          SQLITE_STATIC);
        sqlite3_step(statement);
        sqlite3_finalize(statement);
    }
    sqlite3_close(file);
}

void putBig(Bytes& into, std::uint32_t value) {
    for (int shift = 24; shift >= 0; shift -= 8)
        into.push_back(static_cast<std::uint8_t>(value >> shift));
}

/// The log's checksum over big-endian words, going on from `sum`.
void checksum(const Bytes& bytes, std::size_t from, std::size_t to, std::array<std::uint32_t, 2>& sum) {
    const auto word = [&](std::size_t at) {
        return static_cast<std::uint32_t>(bytes[at]) << 24 | static_cast<std::uint32_t>(bytes[at + 1]) << 16 |
               static_cast<std::uint32_t>(bytes[at + 2]) << 8 | bytes[at + 3];
    };
    for (std::size_t at = from; at + 8 <= to; at += 8) {
        sum[0] += word(at) + sum[1];
        sum[1] += word(at + 4) + sum[0];
    }
}

/// A log whose frames are good and hold altered pages, the last of them a commit.
Bytes logOf(const Bytes& file, const std::vector<Record>& records) {
    Bytes log;
    for (const std::uint32_t field : {0x377f0683u, 3007000u, static_cast<unsigned>(pageSize), 0u, 1u, 2u})
        putBig(log, field);
    std::array<std::uint32_t, 2> sum{};
    checksum(log, 0, log.size(), sum);
    putBig(log, sum[0]);
    putBig(log, sum[1]);
    for (std::size_t i = 0; i < records.size(); ++i) {
        Bytes altered = file;
        const std::size_t page = pageOf(file, records[i]);
        alterBytes(altered, records[i]);
        const std::size_t frame = log.size();
        putBig(log, static_cast<std::uint32_t>(page / pageSize + 1));
        putBig(log, i + 1 == records.size() ? static_cast<std::uint32_t>(file.size() / pageSize) : 0);
        putBig(log, 1);
        putBig(log, 2);
        const std::size_t content = log.size() + 8;
        log.resize(content);
        log.insert(log.end(), altered.begin() + static_cast<std::ptrdiff_t>(page),
                   altered.begin() + static_cast<std::ptrdiff_t>(page + pageSize));
        checksum(log, frame, frame + 8, sum);
        checksum(log, content, log.size(), sum);
        Bytes sums;
        putBig(sums, sum[0]);
        putBig(sums, sum[1]);
        std::copy(sums.begin(), sums.end(), log.begin() + static_cast<std::ptrdiff_t>(frame + 16));
    }
    return log;
}

} // namespace

std::filesystem::path scratchFolder() {
    const std::filesystem::path memory = "/dev/shm";
    const auto where = std::filesystem::exists(memory) ? memory : std::filesystem::temp_directory_path();
    const auto folder = where / ("tholepin-fuzz-" + std::to_string(::getpid()));
    std::filesystem::create_directories(folder);
    ::setenv("THOLEPIN_STATE", (folder / "state").c_str(), 1);
    return folder;
}

void alter(const std::filesystem::path& sample, const std::filesystem::path& file,
           std::span<const std::uint8_t> bytes) {
    for (const char* end : {"", "-wal", "-shm", "-journal"})
        std::filesystem::remove(file.string() + end);
    static const Bytes clean = contentOf(sample);
    std::vector<Record> cells, frames;
    Bytes altered = clean;
    for (std::size_t at = 0; at + recordSize <= bytes.size(); at += recordSize) {
        const Record record = bytes.subspan(at, recordSize);
        if (record[0] % 8 < 4)
            cells.push_back(record);
        else if (record[0] % 8 < 7)
            alterPages(altered, record);
        else
            frames.push_back(record);
    }
    put(file, clean);
    if (!cells.empty()) alterCells(file, cells);
    if (altered != clean) put(file, altered);
    if (!frames.empty()) put(file.string() + "-wal", logOf(contentOf(file), frames));
}

} // namespace fuzz

/// Works on whole records: doubles one, takes one away, or alters one.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most,
                                               unsigned seed) {
    using fuzz::recordSize;
    const std::size_t records = size / recordSize;
    if (records == 0 || seed % 8 == 0) {
        const std::size_t grown = std::min(most, (records + 1) * recordSize);
        for (std::size_t i = records * recordSize; i < grown; ++i)
            data[i] = static_cast<std::uint8_t>((seed = seed * 1103515245u + 12345u) >> 16);
        return grown;
    }
    const std::size_t which = seed / 8 % records * recordSize;
    if (seed % 8 == 1 && records > 1) {
        std::memmove(data + which, data + which + recordSize, size - which - recordSize);
        return size - recordSize;
    }
    std::uint8_t* record = data + which;
    LLVMFuzzerMutate(record, recordSize, recordSize);
    return size;
}

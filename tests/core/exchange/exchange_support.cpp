#include "tests/core/exchange/exchange_support.h"

#include "core/tag/tag_code.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>

namespace support {
namespace {

using core::Cells;
using core::SheetId;

std::string codeOf(char tagClass, int number) {
    return support::tagCode(static_cast<core::TagClass>(tagClass), number);
}

} // namespace

std::string tagCode(core::TagClass tagClass, int number) {
    // Mixed so that a code whose check character is not minted does not lead to its neighbour's.
    std::uint64_t bits = static_cast<std::uint64_t>(number) * 0xD1B54A32D192ED03U;
    const auto next = [&] {
        bits = (bits ^ (bits >> 29)) * 0x9E3779B97F4A7C15U + 1;
        return bits ^ (bits >> 31);
    };
    return core::TagCode::mint(tagClass, next).text();
}

std::optional<Cells> MapRegister::find(SheetId id, const std::string& key) const {
    const auto& rows = m_sheets[static_cast<std::size_t>(id)];
    const auto found = rows.find(key);
    return found == rows.end() ? std::nullopt : std::optional(found->second.cells);
}

std::vector<Cells> MapRegister::all(SheetId id) const {
    std::vector<const Row*> rows;
    for (const auto& [key, row] : m_sheets[static_cast<std::size_t>(id)])
        rows.push_back(&row);
    std::stable_sort(rows.begin(), rows.end(), [](auto a, auto b) { return a->order < b->order; });
    std::vector<Cells> cells;
    for (const Row* row : rows)
        cells.push_back(row->cells);
    return cells;
}

std::vector<Cells> MapRegister::where(SheetId id, std::string_view column, const std::string& value) const {
    std::vector<Cells> found = all(id);
    const auto index = static_cast<std::size_t>(core::sheet(id).indexOf(column));
    std::erase_if(found, [&](const Cells& cells) { return cells[index] != value; });
    return found;
}

void MapRegister::apply(const std::vector<core::RowChange>& changes) {
    for (const core::RowChange& change : changes) {
        const core::Sheet& sheet = core::sheet(change.sheet);
        Cells keyed = change.keyCells;
        keyed.resize(sheet.columns.size());
        auto& rows = m_sheets[static_cast<std::size_t>(change.sheet)];
        const auto [row, isNew] = rows.emplace(core::keyOf(sheet, keyed), Row{keyed});
        ASSERT_EQ(isNew, change.isNew) << sheet.file << ' ' << change.keyCells[0];
        for (const auto& [column, text] : change.set)
            row->second.cells[static_cast<std::size_t>(column)] = text;
        if (change.order) row->second.order = *change.order;
    }
}

std::string kitCode(int number) {
    return codeOf('K', number);
}

std::string withCodes(std::string text) {
    for (char tagClass : {'K', 'B', 'P', 'S'})
        for (int number = 1; number <= 9; ++number) {
            const std::string name = {'{', tagClass, static_cast<char>('0' + number), '}'};
            for (auto at = text.find(name); at != std::string::npos; at = text.find(name, at))
                text.replace(at, name.size(), codeOf(tagClass, number));
        }
    return text;
}

Files smallClub() {
    return {
        {"places.csv", "place\nBoat shed\n"},
        {"kit_types.csv",
         "kit_type,worn,personal\npaddle,,\noar,,\nlife jacket,yes,\nvest,yes,\nwhistle,,yes\n"},
        {"sizes.csv", "kit_type,size,mass_low_kg\nlife jacket,M,50\n"},
        {"life_rules.csv", "kit_type,part,rule,kind,n,event\nlife jacket,,yearly look,inspect_every,12,\n"
                           "life jacket,Cylinder,cylinder weight,service_every,12,\n"
                           "life jacket,,after inflation,after_event,,Inflated\n"},
        {"boats.csv", "boat,boat_class,tag\nHeron,Inshore,{B1}\nTeal,Inshore,\n"},
        {"manifest_lines.csv", "boat_class,boat,kit_type,substitutes\nInshore,,paddle,oar\n"},
        {"points.csv", "boat_class,boat,phase,point,kind\nInshore,,launch,bung,look\n"},
        {"people.csv", "person,tag\nAda,{P1}\nBo,\n"},
        {"items.csv",
         "code,kit_type,size,gtin,serial\n{K1},paddle,,,\n{K2},life jacket,M,04006381333931,A1\n"},
    };
}

void writeFiles(const std::filesystem::path& folder, const Files& files) {
    for (const auto& [name, text] : files)
        std::ofstream(folder / name, std::ios::binary) << withCodes(text);
}

Files readFiles(const std::filesystem::path& folder) {
    Files files;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        std::ifstream stream(entry.path(), std::ios::binary);
        files[entry.path().filename().string()] = std::string(std::istreambuf_iterator<char>(stream), {});
    }
    return files;
}

core::ImportPlan planOf(const Files& files, const core::RegisterRows& current) {
    const ScratchFolder folder;
    writeFiles(folder.path(), files);
    int minted = 100;
    auto plan = core::planImport(folder.path(), current, *core::CalendarDay::parse("2026-03-14"),
                                 [&](core::TagClass tagClass) { return tagCode(tagClass, ++minted); });
    EXPECT_TRUE(plan) << described(plan.error());
    return plan ? *plan : core::ImportPlan{};
}

void importInto(MapRegister& rows, const Files& files) {
    const core::ImportPlan plan = planOf(files, rows);
    ASSERT_TRUE(plan.rejected.empty()) << describe(plan);
    rows.apply(plan.changes);
}

std::string describe(const core::ImportPlan& plan) {
    std::string text;
    for (const core::RejectedRow& row : plan.rejected)
        text +=
            row.file + ':' + std::to_string(row.row) + ':' + row.column + ": " + described(row.reason) + '\n';
    return text;
}

} // namespace support

// How long a district's register takes to plan and to write: 8,000 items, 300 boats. Prints milliseconds.
// With the path of a workbook (tests/bench/big_workbook.py writes one of 10,000 rows): how long that takes to
// read and to plan instead.

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/csv_export.h"
#include "tests/core/exchange/exchange_support.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"

#include <chrono>
#include <cstdio>

namespace {

constexpr int boatCount = 300;
constexpr int itemCount = 8000;

support::Files district() {
    support::Files files = support::smallClub();
    for (int boat = 0; boat < boatCount; ++boat) {
        const std::string name = std::string("Boat ").append(std::to_string(boat));
        files["boats.csv"] += name + ",Inshore,\n";
        files["manifest_lines.csv"] += "," + name + ",paddle,\n";
    }
    files["services.csv"] = "code,rule,day\n";
    files["items.csv"] =
        "code,kit_type,size,boat,made,stamped,serial,note\n{K2},life jacket,M,Heron,2020,,A1,\n";
    for (int item = 0; item < itemCount; ++item) {
        const std::string code = support::kitCode(1000 + item);
        files["items.csv"] += code + ",Life Jacket,m,boat " + std::to_string(item % boatCount) +
                              ",2020-05,2030-01," + std::to_string(item) + ",\"seen, and noted\"\n";
        files["services.csv"] += code + ",yearly look,2025-06-01\n" + code + ",yearly look,2024-06-01\n";
    }
    return files;
}

template <class Work>
void measure(const char* what, Work work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - begin;
    std::printf("%-36s %8.1f ms\n", what, taken.count());
}

void measureWorkbook(const char* path) {
    core::Result<core::Workbook> book = core::Error{};
    measure("read the workbook", [&] { book = core::readWorkbook(std::filesystem::path(path)); });
    if (!book) return void(std::puts(support::described(book.error()).c_str()));
    core::ClubSheetChoices choices;
    choices.make = {core::SheetId::KitTypes, core::SheetId::Sizes, core::SheetId::Places};
    support::MapRegister rows;
    int minted = 0;
    for (const char* what : {"plan it into an empty club", "plan it again"})
        measure(what, [&] {
            const auto read = core::planClubSheet(
                *book, choices, rows, *core::CalendarDay::parse("2026-03-14"),
                [&](core::TagClass tagClass) { return support::tagCode(tagClass, ++minted); });
            std::printf("changes: %d\n", read ? static_cast<int>(read->plan.changes.size()) : -1);
            if (read) rows.apply(read->plan.changes);
        });
}

} // namespace

int main(int count, char** words) {
    if (count > 1) {
        measureWorkbook(words[1]);
        return 0;
    }
    const support::ScratchFolder folder;
    const support::ScratchFolder out;
    support::writeFiles(folder.path(), district());
    support::MapRegister rows;
    int minted = 0;
    const auto plan = [&] {
        const auto made =
            core::planImport(folder.path(), rows, *core::CalendarDay::parse("2026-03-14"),
                             [&](core::TagClass tagClass) { return support::tagCode(tagClass, ++minted); });
        if (!made || !made->rejected.empty()) std::puts(made ? support::describe(*made).c_str() : "no plan");
        return made ? made->changes : std::vector<core::RowChange>();
    };
    std::vector<core::RowChange> changes;
    measure("plan 8,000 items into an empty club", [&] { changes = plan(); });
    rows.apply(changes);
    measure("plan the same files again", [&] { changes = plan(); });
    std::printf("changes of the second plan: %zu\n", changes.size());
    measure("export them", [&] {
        if (const auto outcome = core::exportSheets(rows, out.path()); !outcome)
            std::puts(support::described(outcome.error()).c_str());
    });
}

#include "core/exchange/csv_export.h"

#include "core/base/database_file.h"
#include "core/base/error_code.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/csv_text.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <fmt/format.h>
#include <memory>
#include <set>
#include <system_error>
#include <tuple>
#include <unistd.h>

namespace core {
namespace {

namespace fs = std::filesystem;

/// In the manifest's order: boat classes, then the boats' own differences, each as it stands.
void sortByOwner(const Sheet& sheet, std::vector<Cells>& rows) {
    const auto classColumn = static_cast<std::size_t>(sheet.indexOf("boat_class"));
    const auto boatColumn = static_cast<std::size_t>(sheet.indexOf("boat"));
    const auto ownerOf = [&](const Cells& row) {
        return std::tuple(row[classColumn].empty(), foldName(row[classColumn]), foldName(row[boatColumn]));
    };
    std::stable_sort(rows.begin(), rows.end(), [&](auto& a, auto& b) { return ownerOf(a) < ownerOf(b); });
}

void sortByKey(const Sheet& sheet, std::vector<Cells>& rows) {
    std::vector<std::pair<std::string, std::size_t>> keys;
    for (const Cells& row : rows)
        keys.emplace_back(keyOf(sheet, row), keys.size());
    std::sort(keys.begin(), keys.end());
    std::vector<Cells> sorted;
    for (const auto& [key, index] : keys)
        sorted.push_back(std::move(rows[index]));
    rows = std::move(sorted);
}

void hideMeasures(std::vector<Cells>& people, const std::set<std::string>& shownPeople) {
    const Sheet& sheet = core::sheet(SheetId::People);
    for (Cells& person : people)
        if (!shownPeople.contains(keyOf(sheet, person)))
            for (std::string_view measure : {"mass_kg", "chest_cm"})
                person[static_cast<std::size_t>(sheet.indexOf(measure))].clear();
}

std::string textOf(const Sheet& sheet, const std::vector<Cells>& rows) {
    std::string text;
    const auto endCell = [&](std::size_t column) {
        text += column + 1 < sheet.columns.size() ? "," : "\r\n";
    };
    for (std::size_t i = 0; i < sheet.columns.size(); ++i) {
        text += sheet.columns[i].name;
        endCell(i);
    }
    for (const Cells& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) {
            text += csvCell(writtenCell(sheet.columns[i], row[i]));
            endCell(i);
        }
    return text;
}

/// The files while they are beside their places. Whatever has not taken its place is removed.
class NewFiles {
public:
    explicit NewFiles(fs::path folder)
        : m_folder(std::move(folder)) {}
    NewFiles(const NewFiles&) = delete;
    NewFiles& operator=(const NewFiles&) = delete;

    ~NewFiles() {
        std::error_code ignored;
        for (const std::string_view file : m_written)
            fs::remove(besides(file), ignored);
        if (m_madeFolder && !m_isDone) fs::remove(m_folder, ignored);
    }

    Outcome makeFolder() {
        std::error_code failure;
        m_madeFolder = fs::create_directories(m_folder, failure);
        if (failure || !fs::is_directory(m_folder, failure))
            return Error{ErrorCode::FolderNotMade, {}, m_folder.string()};
        return Done{};
    }

    Outcome write(std::string_view file, const std::string& text) {
        std::error_code ignored;
        const fs::path place = m_folder / file;
        if (fs::exists(place, ignored) && !fs::is_regular_file(place, ignored))
            return Error{ErrorCode::NoFileInTheWay, {}, place.string()};
        if (isOfDatabase(place)) return Error{ErrorCode::OutputIsClub, {}, place.string()};
        m_written.push_back(file);
        fs::remove(besides(file), ignored); // one that was killed left it
        const auto close = [](std::FILE* stream) { std::fclose(stream); };
        const std::unique_ptr<std::FILE, decltype(close)> stream(std::fopen(besides(file).c_str(), "wbx"),
                                                                 close);
        if (!stream || std::fwrite(text.data(), 1, text.size(), stream.get()) != text.size() ||
            std::fflush(stream.get()) != 0 || fsync(fileno(stream.get())) != 0)
            return Error{ErrorCode::FileNotWritten, {std::generic_category().message(errno)}, place.string()};
        return Done{};
    }

    Outcome takePlaces() {
        std::error_code failure;
        for (const std::string_view file : m_written) {
            fs::rename(besides(file), m_folder / file, failure);
            if (failure)
                return Error{ErrorCode::FileNotReplaced, {failure.message()}, (m_folder / file).string()};
        }
        m_written.clear();
        m_isDone = true;
        return Done{};
    }

private:
    fs::path besides(std::string_view file) const { return m_folder / fmt::format(".{}.new", file); }

    fs::path m_folder;
    std::vector<std::string_view> m_written;
    bool m_madeFolder = false;
    bool m_isDone = false;
};

} // namespace

Outcome exportSheets(const RegisterRows& rows, const fs::path& folder,
                     const std::vector<std::string>& measuresOf) {
    std::set<std::string> shownPeople;
    for (const std::string& name : measuresOf) {
        if (!rows.find(SheetId::People, foldName(name)))
            return Error{ErrorCode::NoSuchMeasured, {shown(name)}};
        shownPeople.insert(foldName(name));
    }
    NewFiles files(folder);
    if (const Outcome made = files.makeFolder(); !made) return made;
    for (const Sheet& sheet : allSheets()) {
        std::vector<Cells> sheetRows = rows.all(sheet.id);
        if (sheet.keepsOrder)
            sortByOwner(sheet, sheetRows);
        else
            sortByKey(sheet, sheetRows);
        if (sheet.id == SheetId::People) hideMeasures(sheetRows, shownPeople);
        if (const Outcome written = files.write(sheet.file, textOf(sheet, sheetRows)); !written)
            return written;
    }
    return files.takePlaces();
}

} // namespace core

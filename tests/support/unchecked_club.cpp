#include "tests/support/unchecked_club.h"

#include "core/exchange/csv_text.h"
#include "core/record/facts.h"
#include "core/register/sheets.h"
#include "core/store/club_file.h"
#include "core/store/ledger.h"

namespace support {
namespace {

void appendRow(core::Ledger& ledger, const core::Sheet& sheet, const std::vector<std::string>& header,
               const std::vector<std::string>& cells, int row) {
    core::CellTexts key, set;
    for (std::size_t i = 0; i < header.size(); ++i)
        (sheet.indexOf(header[i]) < sheet.keyColumns ? key : set).emplace_back(header[i], cells[i]);
    core::RowWritten written = core::rowWritten(sheet.id, key, set);
    if (sheet.keepsOrder) written.order = row;
    ledger.append(written, {});
}

} // namespace

void writeUnchecked(const std::filesystem::path& file, const std::string& club,
                    const std::map<std::string, std::string>& files) {
    const auto fill = [&](core::Database& fresh) {
        core::Ledger ledger(fresh);
        ledger.append(core::ClubNamed{club}, {});
        for (const core::Sheet& sheet : core::allSheets()) {
            const auto found = files.find(std::string(sheet.file));
            if (found == files.end()) continue;
            const auto records = core::readCsv(found->second).records;
            for (std::size_t row = 1; row < records.size(); ++row)
                appendRow(ledger, sheet, records[0].cells, records[row].cells, static_cast<int>(row));
        }
    };
    core::clubFile::create(file, fill);
}

std::string replaced(std::string text, const std::map<std::string, std::string>& names) {
    for (const auto& [from, to] : names)
        for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
            text.replace(at, from.size(), to);
    return text;
}

} // namespace support

#include "app/cli/commands/points_file.h"

#include "app/cli/terminal/terminal.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/exchange/csv_text.h"
#include "core/register/cell_values.h"
#include "core/register/sheets.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <optional>

namespace app {
namespace {

using core::ErrorCode;

core::Error refusal(const std::filesystem::path& file, int row, const char* column, ErrorCode code,
                    std::vector<std::string> text = {}) {
    return {code, std::move(text), placeIn(file.string(), row, column)};
}

std::string trimmed(const std::string& cell) {
    return std::string(core::withoutOuterBlanks(cell));
}

const core::BoatPoint* findPoint(const std::vector<core::BoatPoint>& points, const std::string& name) {
    const auto sameName = [&](const core::BoatPoint& point) {
        return core::foldName(point.name) == core::foldName(name);
    };
    const auto found = std::find_if(points.begin(), points.end(), sameName);
    return found == points.end() ? nullptr : &*found;
}

std::optional<double> valueFor(const core::BoatPoint& point, const std::string& text) {
    if (point.kind == core::PointKind::Look) return text == "done" ? std::optional<double>(1) : std::nullopt;
    const auto number = core::numberFrom(text);
    if (number && point.kind == core::PointKind::Timed && *number < 0) return std::nullopt;
    return number;
}

ErrorCode codeOfBadValue(core::PointKind kind) {
    switch (kind) {
    case core::PointKind::Look:
        return ErrorCode::PointNotLookedAt;
    case core::PointKind::Measure:
        return ErrorCode::PointNotANumber;
    default:
        return ErrorCode::PointNotSeconds;
    }
}

/// Places of the two columns in the header; empty when it is another.
std::optional<std::pair<std::size_t, std::size_t>> columnsOf(const std::vector<std::string>& header) {
    if (header.size() != 2) return std::nullopt;
    if (trimmed(header[0]) == "point" && trimmed(header[1]) == "value") return std::pair{0U, 1U};
    if (trimmed(header[0]) == "value" && trimmed(header[1]) == "point") return std::pair{1U, 0U};
    return std::nullopt;
}

} // namespace

core::Result<std::vector<PointValue>> readPointsFile(const std::filesystem::path& file,
                                                     const std::vector<core::BoatPoint>& points) {
    std::ifstream in(file, std::ios::binary);
    if (!in || std::filesystem::is_directory(file))
        return core::Error{ErrorCode::PointsFileUnreadable, {}, file.string()};
    constexpr std::size_t most = 1 << 20; // a thousand boats' points
    std::string bytes(most + 1, '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    if (bytes.size() > most) return core::Error{ErrorCode::PointsFileUnreadable, {}, file.string()};
    const core::CsvText csv = core::readCsv(bytes);
    if (csv.fault) return refusal(file, csv.faultRow, "", *csv.fault);
    const auto columns = csv.records.empty() ? std::nullopt : columnsOf(csv.records.front().cells);
    if (!columns) return refusal(file, 1, "", ErrorCode::PointsFileHeader);

    std::vector<PointValue> values;
    for (auto record = std::next(csv.records.begin()); record != csv.records.end(); ++record) {
        if (record->cells.size() != 2) return refusal(file, record->row, "", ErrorCode::PointsFileRow);
        const std::string name = trimmed(record->cells[columns->first]);
        const std::string text = trimmed(record->cells[columns->second]);
        const core::BoatPoint* point = findPoint(points, name);
        if (point == nullptr) return refusal(file, record->row, "point", ErrorCode::PointsFilePoint, {name});
        const auto value = valueFor(*point, text);
        if (!value) return refusal(file, record->row, "value", codeOfBadValue(point->kind), {text});
        values.push_back({point->name, *value});
    }
    return values;
}

} // namespace app

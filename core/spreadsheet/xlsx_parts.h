#pragma once

#include "core/spreadsheet/date_format.h"
#include "core/spreadsheet/packed_file.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace core {

// The parts of an .xlsx workbook beside its sheets (ECMA-376 part 1, 18; part 2, 9.3 for relationships).

struct XlsxRelation {
    std::string type;   ///< the last word of its address: "worksheet"
    std::string target; ///< name of the part in the file
};
/// By id. `part` is the part that they belong to; empty: the file as a whole.
std::map<std::string, XlsxRelation> xlsxRelationsOf(const PackedFile& file, const std::string& part);

struct XlsxSheet {
    std::string name;
    std::string relation; ///< id
    bool isHidden = false;
};
struct XlsxBook {
    std::vector<XlsxSheet> sheets;
    bool from1904 = false;
};
XlsxBook xlsxBookOf(const PackedFile& file, const std::string& part);

/// The texts that cells name by number; without what is written above them to be read aloud.
std::vector<std::string> xlsxTextsOf(const PackedFile& file, const std::string& part);

struct XlsxFormat {
    DayShown shown = DayShown::None;
    std::string zeros; ///< 00000: whole numbers are written with as many digits at least
};
/// By the number that a cell names as its style.
std::vector<XlsxFormat> xlsxFormatsOf(const PackedFile& file, const std::string& part);

} // namespace core

#pragma once

#include "core/exchange/sheet_file.h"

#include <functional>
#include <string>
#include <vector>

namespace core {

/// What an import is planned on.
struct Planning {
    const RegisterRows& current;
    CalendarDay today;
    MintTag mintTag;
    std::function<void(int done, int of)> progress; ///< may be empty
};

/// The plan of rows that were read, wherever they came from: the one place where an import is judged. Files
/// come in the contract's order, each sheet at most once; `rejections` are those of reading them.
ImportPlan planFiles(std::vector<SheetFile>& files, Rejections rejections, const Planning& planning);

} // namespace core

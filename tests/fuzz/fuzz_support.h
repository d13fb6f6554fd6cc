#pragma once

#include "core/register/sheets.h"

#include <cstdlib>

namespace fuzz {

inline void require(bool holds) {
    if (!holds) std::abort();
}

class EmptyRegister : public core::RegisterRows {
public:
    std::optional<core::Cells> find(core::SheetId, const std::string&) const override { return std::nullopt; }
    std::vector<core::Cells> all(core::SheetId) const override { return {}; }
    std::vector<core::Cells> where(core::SheetId, std::string_view, const std::string&) const override {
        return {};
    }
};

} // namespace fuzz

#include "core/store/check_rows.h"

#include "core/base/store_failure.h"

namespace core::checkRows {
namespace {

[[noreturn]] void refuse(const Statement& row, const char* table, const char* column,
                         const std::string& text) {
    throw StoreFailure(unreadableCell({table, row.text(0), column}, {}, text));
}

} // namespace

Phase phaseIn(const Statement& row, const char* table, int column) {
    const std::string text = row.text(column);
    if (const auto phase = phaseNamed(text)) return *phase;
    refuse(row, table, "phase", text);
}

Instant instantIn(const Statement& row, const char* table, const char* name, int column) {
    const std::string text = row.text(column);
    if (const auto instant = Instant::parse(text)) return *instant;
    refuse(row, table, name, text);
}

} // namespace core::checkRows

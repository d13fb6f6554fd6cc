#include "core/base/store_failure.h"

#include "core/base/error_code.h"

#include <new>

namespace core {

Error errorOf(const std::exception& thrown) {
    if (const auto* failure = dynamic_cast<const StoreFailure*>(&thrown)) return failure->error;
    if (dynamic_cast<const std::bad_alloc*>(&thrown) != nullptr) return {ErrorCode::MemoryShort};
    return {ErrorCode::ContentUnreadable, {thrown.what()}};
}

Error unreadableCell(const CellPlace& place, const std::string& part, const std::string& text) {
    return {ErrorCode::CellUnreadable,
            {place.table, place.row, place.column + (part.empty() ? "" : ".") + part, text}};
}

Error unreadableField(std::int64_t number, const std::string& machine, const std::string& field,
                      const std::optional<std::string>& text) {
    if (!text) return {ErrorCode::FactFieldMissing, {std::to_string(number), machine, field}};
    return {ErrorCode::FactUnreadable, {std::to_string(number), machine, field, *text}};
}

} // namespace core

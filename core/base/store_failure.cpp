#include "core/base/store_failure.h"

#include "core/base/error_code.h"

namespace core {

Error errorOf(const std::exception& thrown) {
    if (const auto* failure = dynamic_cast<const StoreFailure*>(&thrown)) return failure->error;
    return {ErrorCode::ContentUnreadable, {thrown.what()}};
}

} // namespace core

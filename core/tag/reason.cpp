#include "core/tag/reason.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/tag/tag_code.h"

namespace core {

Result<std::string> reasonFrom(const std::string& text) {
    constexpr int fewestLetters = 3;
    if (TagCode::parse(text)) return Error{ErrorCode::ReasonIsTag, {text}};
    if (lettersIn(text) < fewestLetters) return Error{ErrorCode::ReasonTooShort, {text}};
    return proseFrom(withoutOuterBlanks(text));
}

} // namespace core

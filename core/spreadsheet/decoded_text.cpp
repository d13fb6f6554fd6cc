#include "core/base/plain_text.h"
#include "core/spreadsheet/readers.h"
#include "core/spreadsheet/spreadsheet_fault.h"

#include <algorithm>
#include <memory>
#include <unicode/ucsdet.h>
#include <unicode/unistr.h>

namespace core {
namespace {

constexpr std::size_t bytesLookedAt = 64U << 10; ///< bytes by which a text is told from another

/// What ICU takes the text for, if that is one of those we know; texts with umlauts and few words are often
/// taken for something further off.
std::string detected(std::string_view bytes) {
    UErrorCode failure = U_ZERO_ERROR;
    const std::unique_ptr<UCharsetDetector, decltype(&ucsdet_close)> detector(ucsdet_open(&failure),
                                                                              &ucsdet_close);
    ucsdet_setText(detector.get(), bytes.data(), static_cast<int32_t>(bytes.size()), &failure);
    const UCharsetMatch* match = ucsdet_detect(detector.get(), &failure);
    const char* name = match ? ucsdet_getName(match, &failure) : nullptr;
    return U_SUCCESS(failure) && name ? name : "";
}

/// Of a text without a byte-order mark: Latin letters have their zero byte on one side. A text with few such
/// bytes is none.
std::string utf16ByZeros(std::string_view bytes) {
    const std::string_view start = bytes.substr(0, bytesLookedAt);
    std::size_t even = 0, odd = 0;
    for (std::size_t i = 0; i < start.size(); ++i)
        if (start[i] == '\0') ++(i % 2 == 0 ? even : odd);
    if ((even + odd) * 4 < start.size()) refuse(ErrorCode::SpreadsheetUnreadable);
    const std::string name = detected(start);
    if (name.starts_with("UTF-16")) return name;
    return even > odd ? "UTF-16BE" : "UTF-16LE";
}

std::string encodingOf(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xFE")) return "UTF-16LE";
    if (bytes.starts_with("\xFE\xFF")) return "UTF-16BE";
    if (bytes.find('\0') != std::string_view::npos) return utf16ByZeros(bytes);
    return isUtf8(bytes) ? "UTF-8" : "windows-1252";
}

} // namespace

std::string decodedText(std::string_view bytes) {
    const std::string encoding = encodingOf(bytes);
    std::string text(bytes);
    if (encoding != "UTF-8") {
        const icu::UnicodeString decoded(bytes.data(), static_cast<int32_t>(bytes.size()), encoding.c_str());
        text.clear();
        decoded.toUTF8String(text);
    }
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    if (text.starts_with(mark)) text.erase(0, mark.size());
    if (text.find('\0') != std::string::npos) refuse(ErrorCode::SpreadsheetUnreadable);
    return text;
}

} // namespace core

#pragma once

#include "core/base/error_code.h"

#include <cstddef>
#include <span>

namespace app {

/// What is said of one code. %1, %2 … are its arguments in their order, and after them its cause. English,
/// translated in the context "Errors".
struct ErrorText {
    core::ErrorCode code;
    const char* sentence;
    const char* mend = nullptr;
    const char* place = nullptr; ///< in the record; else the error's own `where` is said
    std::size_t outside = 0;     ///< the argument that is what SQLite or the system says, from 1; 0: none
};

// One table a subject, in the order of error_code.h.
std::span<const ErrorText> fileTexts();
std::span<const ErrorText> recordTexts();
std::span<const ErrorText> hubTexts();
std::span<const ErrorText> registerTexts();
std::span<const ErrorText> checkTexts();
std::span<const ErrorText> pinTexts();
std::span<const ErrorText> manifestTexts();
std::span<const ErrorText> tagTexts();
std::span<const ErrorText> importTexts();
std::span<const ErrorText> cellTexts();
std::span<const ErrorText> warningTexts();
std::span<const ErrorText> spreadsheetTexts();
std::span<const ErrorText> programTexts();

/// Whether the table has a text for each code from `first` to the one before `next`, in the order of the
/// enum. Each table asserts it of itself, so that a code without a text does not compile.
template <std::size_t size>
consteval bool isWhole(const ErrorText (&table)[size], core::ErrorCode first, core::ErrorCode next) {
    for (std::size_t i = 0; i < size; ++i)
        if (static_cast<std::size_t>(table[i].code) != static_cast<std::size_t>(first) + i) return false;
    return static_cast<std::size_t>(first) + size == static_cast<std::size_t>(next);
}

} // namespace app

#pragma once

#include "core/base/error.h"
#include "core/base/error_code.h"

#include <ostream>
#include <sstream>
#include <string>

namespace core {

/// What is read of an error in a test that fails: its place in error_code.h and its arguments.
inline void PrintTo(const Error& error, std::ostream* out) {
    *out << "code " << static_cast<int>(error.code);
    for (const std::string& argument : error.arguments)
        *out << " '" << argument << '\'';
    if (!error.where.empty()) *out << " (" << error.where << ')';
    for (const Error& cause : error.cause)
        PrintTo(cause, &(*out << " because of "));
}

inline std::ostream& operator<<(std::ostream& out, const Error& error) {
    PrintTo(error, &out);
    return out;
}

inline void PrintTo(ErrorCode code, std::ostream* out) {
    *out << "code " << static_cast<int>(code);
}

} // namespace core

namespace support {

inline std::string described(const core::Error& error) {
    std::ostringstream text;
    text << error;
    return text.str();
}

} // namespace support

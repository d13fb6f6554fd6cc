#pragma once

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace support {

/// What a run of the command-line program left behind.
struct Ran {
    int exit = -1; ///< -1: it did not end by itself
    std::string out;
    std::string err;
    long peakKilobytes = 0; ///< most memory that was resident
};

/// What the machine gives a program; 0: as much as it wants.
struct Limits {
    unsigned long fileBytes = 0;    ///< no file of it grows beyond
    unsigned long addressBytes = 0; ///< of address space (RLIMIT_AS)
    std::string zone = "UTC";       ///< its time zone
    std::filesystem::path fonts{};  ///< its fontconfig file; empty: the machine's
    /// Killed that long after its start, as by a power switch; `exit` is -1 then. Empty: it ends by itself.
    std::optional<std::chrono::microseconds> killAfter = std::nullopt;
};

/// Runs a program with its arguments, `input` on its standard input, in UTC unless it says another zone.
/// Throws when it cannot be started.
Ran runProgram(const std::filesystem::path& program, const std::vector<std::string>& arguments,
               const std::string& input = {}, const Limits& limits = {});

/// The command-line program as it was built.
Ran ctl(const std::vector<std::string>& arguments, const std::string& input = {}, const Limits& limits = {});

} // namespace support

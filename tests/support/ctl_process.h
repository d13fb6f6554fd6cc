#pragma once

#include <chrono>
#include <filesystem>
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

/// Runs a program with its arguments, `input` on its standard input, in UTC. Throws when it cannot be
/// started.
Ran runProgram(const std::filesystem::path& program, const std::vector<std::string>& arguments,
               const std::string& input = {});

/// The same, and kills it that long after its start, as a power switch does; `exit` is -1 when it was killed.
Ran runAndKill(const std::filesystem::path& program, const std::vector<std::string>& arguments,
               const std::string& input, std::chrono::microseconds after);

/// The command-line program as it was built.
Ran ctl(const std::vector<std::string>& arguments, const std::string& input = {});

} // namespace support

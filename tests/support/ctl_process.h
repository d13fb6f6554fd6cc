#pragma once

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

/// The command-line program as it was built.
Ran ctl(const std::vector<std::string>& arguments, const std::string& input = {});

} // namespace support

#pragma once

#include <string>

namespace app {

struct ProgramText;

/// What makes a shell complete commands, options, their values and files. To be sourced by it, or put where
/// it looks for completions.
std::string bashCompletion(const ProgramText& program);
std::string zshCompletion(const ProgramText& program);
std::string fishCompletion(const ProgramText& program);

} // namespace app

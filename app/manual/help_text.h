#pragma once

#include <string>
#include <string_view>

namespace app {

struct CommandText;
struct GroupText;
struct ProgramText;

/// The commands under their headings, for a terminal of 80 columns.
std::string helpOf(const ProgramText& program);
std::string helpOf(const ProgramText& program, const CommandText& command);

/// The commands of a group.
std::string helpOf(const ProgramText& program, const GroupText& group);

/// `tholepinctl check FILE --boat BOAT … [OPTION…]`: all that must be given.
std::string usageOf(const ProgramText& program, const CommandText& command);

/// What the exit codes mean, one line each without its end; `needsSomebody` as CommandText has it.
std::string meaningOfExit(int code, std::string_view needsSomebody);

/// A page of the manual, section 1, for man(7): of a program, or of one of its commands.
std::string manPageOf(const ProgramText& program);
std::string manPageOf(const ProgramText& program, const CommandText& command);
/// "tholepinctl-hub-join"
std::string pageNameOf(const ProgramText& program, const CommandText& command);

} // namespace app

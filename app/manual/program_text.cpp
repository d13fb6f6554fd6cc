#include "app/manual/program_text.h"

#include "core/base/one_slip.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace app {
namespace {

bool isMeant(const std::string& given, const std::string& known) {
    constexpr std::size_t enough = 3; // letters that say something
    const std::size_t hyphens = known.find_first_not_of('-');
    return core::isOneSlip(given, known) || (given.size() >= hyphens + enough && known.starts_with(given));
}

} // namespace

const CommandText* ProgramText::command(const std::string& called) const {
    const auto found = std::find_if(commands.begin(), commands.end(),
                                    [&](const CommandText& each) { return each.name == called; });
    return found == commands.end() ? nullptr : &*found;
}

bool ProgramText::isGroup(const std::string& word) const {
    return std::any_of(groups.begin(), groups.end(),
                       [&](const GroupText& each) { return each.name == word; });
}

std::string ProgramText::commandOf(const std::vector<std::string>& words) const {
    std::string called = words.empty() ? std::string() : words.front();
    if (isGroup(called) && words.size() > 1) called.append(" ").append(words[1]);
    return command(called) ? called : std::string();
}

std::string wordInGroup(const CommandText& command, const std::string& group) {
    return command.name.starts_with(group + ' ') ? command.name.substr(group.size() + 1) : std::string();
}

const char* versionText() {
    return THOLEPIN_VERSION;
}

bool isNameOfPath(const std::string& name) {
    static constexpr std::array<std::string_view, 16> paths{
        "FILE",   "DIR",     "TO",       "FROM",     "OTHER", "PATH",       "PICTURE",    "SOURCE",
        "--from", "--codes", "--points", "--labels", "--out", "--pin-file", "--key-file", "--to"};
    return std::find(paths.begin(), paths.end(), name) != paths.end();
}

std::string joined(const std::vector<std::string>& words, const char* between) {
    std::string all;
    for (const std::string& word : words)
        all.append(all.empty() ? "" : between).append(word);
    return all;
}

std::vector<std::string> meant(const std::string& given, const std::vector<std::string>& known) {
    constexpr std::size_t most = 3;
    std::vector<std::string> found;
    for (const std::string& each : known)
        if (found.size() < most && isMeant(given, each)) found.push_back(each);
    return found;
}

} // namespace app

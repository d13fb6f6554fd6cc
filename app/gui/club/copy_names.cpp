#include "app/gui/club/copy_names.h"

#include <algorithm>
#include <regex>

namespace app {
namespace {

constexpr std::size_t shortName = 8; ///< digits of the hash

/// Without colons, which not every disk takes in a name; in the order of time.
std::string written(core::Instant at) {
    std::string text = at.iso();
    std::erase(text, ':');
    return text;
}

const std::regex& pattern() {
    static const std::regex pattern(R"(.+ ([0-9a-f]{8}) (\d{4}-\d{2}-\d{2}T\d{6}\.\d{3}Z)\.tholepin)");
    return pattern;
}

/// When the copy of that record was made, as its name says; empty: it is none.
std::string instantIn(const std::string& name, const std::string& origin) {
    std::smatch found;
    if (!std::regex_match(name, found, pattern()) || found[1] != origin.substr(0, shortName)) return {};
    return found[2];
}

} // namespace

std::string copyName(const std::filesystem::path& clubFile, const std::string& origin, core::Instant at) {
    return clubFile.stem().string() + ' ' + origin.substr(0, shortName) + ' ' + written(at) + ".tholepin";
}

bool isCopyName(const std::string& name) {
    return std::regex_match(name, pattern());
}

std::vector<std::string> copiesToRemove(const std::vector<std::string>& names, const std::string& origin) {
    std::vector<std::pair<std::string, std::string>> copies; // by instant
    for (const std::string& name : names)
        if (std::string at = instantIn(name, origin); !at.empty()) copies.emplace_back(std::move(at), name);
    std::sort(copies.begin(), copies.end());
    std::vector<std::string> old;
    for (std::size_t i = 0; i + copiesKept < copies.size(); ++i)
        old.push_back(copies[i].second);
    return old;
}

} // namespace app

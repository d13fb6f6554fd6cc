#include "app/cli/commands/check_input.h"

#include "app/cli/commands/pin_file.h"
#include "app/cli/terminal/terminal.h"

#include "core/base/database_file.h"
#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/club/club_register.h"
#include "core/register/sheets.h"
#include "core/tag/tag_code.h"

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <iostream>

namespace app {

using core::Result;

Result<std::string> findPerson(const std::vector<core::Person>& people, const std::string& asked,
                               const char* option, const MayBe& mayBe) {
    const auto code = core::TagCode::parse(asked);
    const auto isAsked = [&](const core::Person& each) {
        return core::foldName(each.name) == core::foldName(asked) || (code && each.tag == code->text());
    };
    const auto found = std::find_if(people.begin(), people.end(), isAsked);
    if (found == people.end()) return core::Error{core::ErrorCode::NobodyOfThatName, {asked}, option};
    if (!found->until || mayBe(*found)) return found->name;
    return core::Error{core::ErrorCode::NoLongerHere, {found->name, found->until->iso()}, option};
}

Result<std::string> findPersonHere(const core::Club& club, const std::string& asked, const char* option,
                                   core::CalendarDay day) {
    return findPerson(club.register_().people(), asked, option,
                      [day](const core::Person& each) { return core::isHere(each.until, day); });
}

Result<std::string> byWhom(const core::Club& club, const std::string& by, core::CalendarDay day) {
    if (by.empty()) return std::string();
    return findPersonHere(club, by, "--by", day);
}

Result<std::shared_ptr<const core::Pin>> signersPin(const std::string& file, const std::string& signer,
                                                    const std::string& codes) {
    if (signer.empty()) return core::Error{core::ErrorCode::PinOfNobody, {}, "--pin-file"};
    if (file == "-" && codes == "-") return core::Error{core::ErrorCode::PinFileWithCodes, {}, "--pin-file"};
    auto pin = pinFrom(file);
    if (!pin) return pin.error();
    return std::shared_ptr<const core::Pin>(std::make_shared<core::Pin>(std::move(*pin)));
}

namespace {

/// Reads it to its end and goes back to its beginning.
bool isReadable(std::ifstream& file) {
    for (std::string line; nextLine(file, line);)
        continue;
    if (file.bad()) return false;
    file.clear();
    file.seekg(0);
    return file.good();
}

} // namespace

core::Outcome openCodes(const std::string& path, std::ifstream& file, std::istream*& codes) {
    if (path.empty()) return core::Done{};
    if (path == "-") {
        codes = &std::cin;
        return core::Done{};
    }
    // Not the club's own file, either: to close it would drop the locks that are held on it.
    if (!core::OpenDatabase::isOne(path)) file.open(path, std::ios::binary);
    if (!file.is_open() || std::filesystem::is_directory(path))
        return core::Error{core::ErrorCode::CodesUnreadable, {}, path};
    if (std::filesystem::is_regular_file(path) && !isReadable(file)) // before anything of it is recorded
        return core::Error{core::ErrorCode::CodesUnreadable, {}, path};
    codes = &file;
    return core::Done{};
}

/// A fixed instant stays fixed; otherwise each step happens when it happens, on the day that was given.
std::function<core::Moment()> clockOf(const CommonOptions& options, core::Moment given) {
    if (!options.at.empty()) return [given] { return given; };
    if (options.today.empty())
        return [] { return core::Moment{core::Instant::now(), core::Instant::now().localDay()}; };
    return [given] {
        return core::Moment{core::Instant::onLocalDay(given.today, core::Instant::now()), given.today};
    };
}

bool nextLine(std::istream& codes, std::string& line) {
    constexpr std::streamsize longest = 4096;
    line.resize(longest + 1);
    codes.getline(line.data(), longest + 1);
    // With the line end, if there is one, which is not put there; a NUL within the line is part of it.
    const auto taken = static_cast<std::size_t>(codes.gcount());
    line.resize(taken > 0 && codes.good() ? taken - 1 : taken);
    if (codes.fail() && !codes.eof()) codes.setstate(std::ios::badbit);
    if (codes.bad() || (codes.fail() && line.empty())) return false;
    if (line.ends_with('\r')) line.pop_back();
    if (constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF"; line.starts_with(byteOrderMark))
        line.erase(0, byteOrderMark.size()); // some editors begin a file with it
    return true;
}

std::vector<std::string> linesOf(std::istream& codes) {
    constexpr std::size_t most = 100'000;
    std::vector<std::string> lines;
    for (std::string line; nextLine(codes, line);) {
        if (lines.size() == most) {
            codes.setstate(std::ios::badbit);
            break;
        }
        if (!core::withoutOuterBlanks(line).empty()) lines.push_back(line);
    }
    return lines;
}

int exitOf(const core::CheckAnswer& answer) {
    return answer.outcome == core::CheckOutcome::Incomplete ? ExitNeedsSomebody : ExitFine;
}

} // namespace app

#include "core/base/database_file.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <string_view>

namespace core {
namespace {

using namespace std::string_view_literals;

bool beginsAsDatabase(const std::filesystem::path& file) {
    static constexpr std::array beginnings{"SQLite format 3\0"sv, "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7"sv,
                                           "\x37\x7f\x06\x82"sv, "\x37\x7f\x06\x83"sv};
    std::error_code unknown;
    if (!std::filesystem::is_regular_file(file, unknown)) return false; // a pipe would be waited for
    std::array<char, 16> bytes{};
    std::ifstream in(file, std::ios::binary);
    in.read(bytes.data(), bytes.size());
    const std::string_view begins(bytes.data(), static_cast<std::size_t>(in.gcount()));
    return std::ranges::any_of(beginnings, [&](std::string_view each) { return begins.starts_with(each); });
}

} // namespace

bool isOfDatabase(const std::filesystem::path& file) {
    const std::string name = file.string();
    const bool isBesideOne =
        std::ranges::any_of(std::array{"-journal"sv, "-wal"sv, "-shm"sv}, [&](std::string_view end) {
            return name.ends_with(end) && beginsAsDatabase(name.substr(0, name.size() - end.size()));
        });
    return isBesideOne || beginsAsDatabase(file);
}

} // namespace core

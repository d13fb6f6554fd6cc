#include "core/base/database_file.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <map>
#include <mutex>
#include <string_view>
#include <sys/stat.h>

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

/// Whether it holds of the file, or of one beside which SQLite would keep a file of this name.
bool holdsOfDatabase(const std::filesystem::path& file, bool (*holds)(const std::filesystem::path&)) {
    const std::string name = file.string();
    return holds(file) ||
           std::ranges::any_of(std::array{"-journal"sv, "-wal"sv, "-shm"sv}, [&](std::string_view end) {
               return name.ends_with(end) && holds(name.substr(0, name.size() - end.size()));
           });
}

using Id = std::pair<std::uint64_t, std::uint64_t>;

std::mutex& guard() {
    static std::mutex mutex;
    return mutex;
}
using Waits = std::weak_ptr<std::atomic<std::uint64_t>>;
/// What those that have a file open share of it.
std::map<Id, Waits>& openOnes() {
    static std::map<Id, Waits> waits;
    return waits;
}

Id idOf(const std::filesystem::path& file) {
    struct stat status {};
    return ::stat(file.c_str(), &status) == 0 ? Id{status.st_dev, status.st_ino} : Id{0, 0};
}

} // namespace

OpenDatabase::OpenDatabase(const std::filesystem::path& file)
    : m_id(file.empty() ? Id{0, 0} : idOf(file)) {
    const std::lock_guard lock(guard());
    m_waits = std::make_shared<std::atomic<std::uint64_t>>(0);
    if (m_id.second == 0) return;
    Waits& known = openOnes()[m_id];
    if (auto shared = known.lock())
        m_waits = std::move(shared);
    else
        known = m_waits;
}

OpenDatabase::~OpenDatabase() {
    const std::lock_guard lock(guard());
    m_waits.reset();
    const auto one = openOnes().find(m_id);
    if (one != openOnes().end() && one->second.expired()) openOnes().erase(one);
}

bool OpenDatabase::isOne(const std::filesystem::path& file) {
    const std::lock_guard lock(guard());
    return holdsOfDatabase(file, [](const std::filesystem::path& path) {
        const Id id = idOf(path);
        return id.second != 0 && openOnes().count(id) > 0;
    });
}

bool isOfDatabase(const std::filesystem::path& file) {
    return OpenDatabase::isOne(file) || holdsOfDatabase(file, beginsAsDatabase);
}

} // namespace core

#include "core/store/kept_keys.h"

#include <array>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <fcntl.h>
#include <fmt/format.h>
#include <fstream>
#include <sys/file.h>
#include <sys/stat.h>
#include <thread>
#include <unistd.h>
#include <utility>

namespace core {
namespace {

constexpr std::size_t digits = 64; // of a seed, a hash, a digest
constexpr std::size_t seqDigits = 18;

/// All lines have one length, so that a new head goes over the old one in a single write.
std::string textOf(const OwnMachine& machine, const std::string& bound) {
    return fmt::format("{}\n{}\n{:0{}} {:<{}}\n", machine.key.seed(), bound, machine.head.seq, seqDigits,
                       machine.head.hash, digits);
}

constexpr off_t longestNote = 64 * 1024;

constexpr std::size_t textSize = (digits + 1) * 2 + seqDigits + 1 + digits + 1;

/// Nothing when it is not one of a key that stands where it was made.
std::optional<OwnMachine> machineFrom(const std::string& text, const std::string& bound) {
    if (text.size() != textSize || text.compare(digits + 1, digits, bound) != 0) return std::nullopt;
    auto key = MachineKey::ofSeed(text.substr(0, digits));
    const std::string seq = text.substr((digits + 1) * 2, seqDigits);
    if (!key || seq.find_first_not_of("0123456789") != std::string::npos) return std::nullopt;
    OwnMachine machine{std::move(*key),
                       {std::stoll(seq), text.substr((digits + 1) * 2 + seqDigits + 1, digits)}};
    // A key that nothing was signed with is made anew, so none of somebody else's is ever taken over.
    return machine.head.seq > 0 ? std::optional(std::move(machine)) : std::nullopt;
}

bool isUsersAlone(const struct stat& status) {
    return status.st_uid == ::geteuid() && (status.st_mode & 0077) == 0;
}

/// Nobody else can put anything there; who can look into it still reads no key.
bool isUsersFolder(const std::filesystem::path& folder) {
    struct stat status {};
    return ::lstat(folder.c_str(), &status) == 0 && S_ISDIR(status.st_mode) && status.st_uid == ::geteuid() &&
           (status.st_mode & 0022) == 0;
}

/// A file of the folder, if it is a file, the user's alone, and has no other name; else -1.
int openOwn(const std::filesystem::path& file, int how, struct stat& status) {
    const int handle = ::open(file.c_str(), how | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, 0600);
    if (handle < 0) return -1;
    if (::fstat(handle, &status) == 0 && S_ISREG(status.st_mode) && isUsersAlone(status) &&
        status.st_nlink == 1)
        return handle;
    ::close(handle);
    return -1;
}

/// By its newest name; a clock that was put back makes nothing old.
bool isOfToday(const struct stat& status) {
    constexpr time_t day = 24 * 60 * 60;
    return status.st_mtime > ::time(nullptr) - day;
}

bool holdsOnlyALock(const std::filesystem::path& folder) {
    std::error_code unknown;
    std::filesystem::directory_iterator entry(folder, unknown);
    for (; !unknown && entry != std::filesystem::directory_iterator(); entry.increment(unknown))
        if (entry->path().filename() != "lock") return false;
    return !unknown;
}

/// A folder of a club that never came to be: its program was killed before it put a key there. Any file but
/// the lock makes it somebody's, for it may be a key of another computer.
void removeIfNobodys(const std::filesystem::path& folder) {
    struct stat status {};
    if (!isUsersFolder(folder) || ::lstat(folder.c_str(), &status) != 0 || isOfToday(status)) return;
    const std::filesystem::path lock = folder / "lock";
    const int handle = openOwn(lock, O_RDWR, status);
    const bool isFree = handle >= 0 && !isOfToday(status) && ::flock(handle, LOCK_EX | LOCK_NB) == 0;
    // Keys are put there only by who holds the lock.
    if (isFree && holdsOnlyALock(folder)) ::unlink(lock.c_str());
    ::rmdir(folder.c_str()); // which an empty one alone is
    if (handle >= 0) ::close(handle);
}

void removeNobodysIn(const std::filesystem::path& state) {
    std::error_code unknown;
    std::filesystem::directory_iterator entry(state, unknown);
    for (; !unknown && entry != std::filesystem::directory_iterator(); entry.increment(unknown))
        if (isMachineId(entry->path().filename().string())) removeIfNobodys(entry->path());
}

const char* environment(const char* name) {
    const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe): nothing here sets it
    return value == nullptr ? "" : value;
}

} // namespace

std::string idOfComputer() {
    std::ifstream file("/etc/machine-id");
    std::string id;
    std::getline(file, id);
    return id;
}

std::filesystem::path stateFolder() {
    if (const std::filesystem::path own = environment("THOLEPIN_STATE"); !own.empty()) return own;
    // The specification has relative paths ignored.
    if (const std::filesystem::path state = environment("XDG_STATE_HOME"); state.is_absolute())
        return state / "tholepin";
    const std::filesystem::path home = environment("HOME");
    return home.is_absolute() ? home / ".local/state/tholepin" : std::filesystem::path();
}

KeptKeys::KeptKeys(const std::string& club)
    : m_folder(stateFolder())
    , m_computer(idOfComputer()) {
    if (m_folder.empty() || !isMachineId(club)) {
        m_folder.clear();
        return;
    }
    std::error_code ignored;
    std::filesystem::create_directories(m_folder.parent_path(), ignored);
    if (!std::filesystem::exists(m_folder / club, ignored)) removeNobodysIn(m_folder); // not each time
    for (const auto& folder : {m_folder, m_folder / club}) {
        ::mkdir(folder.c_str(), 0700);
        if (isUsersFolder(folder)) continue;
        m_folder.clear();
        return;
    }
    m_folder /= club;
}

bool KeptKeys::isAnyOf(const std::string& club) {
    const std::filesystem::path folder = stateFolder();
    std::error_code ignored;
    return !folder.empty() && isMachineId(club) && std::filesystem::exists(folder / club, ignored);
}

std::string KeptKeys::boundTo(std::uint64_t inode) const {
    return sha256Hex(m_computer + ' ' + std::to_string(inode));
}

KeptKeys::Turn::Turn(const KeptKeys& keys) {
    using namespace std::chrono_literals;
    if (keys.m_folder.empty()) return;
    struct stat status {};
    m_lock = openOwn(keys.m_folder / "lock", O_CREAT | O_RDWR, status);
    for (int tries = 0; m_lock >= 0 && ::flock(m_lock, LOCK_EX | LOCK_NB) != 0; ++tries) {
        if (tries < 200) {
            std::this_thread::sleep_for(10ms);
            continue;
        }
        ::close(std::exchange(m_lock, -1));
    }
}

KeptKeys::Turn::~Turn() {
    if (m_lock >= 0) ::close(m_lock);
}

std::optional<OwnMachine> KeptKeys::of(const std::string& machine) const {
    if (m_folder.empty()) return std::nullopt;
    struct stat status {};
    // To write, too: a key whose newest fact cannot be noted must not be used.
    const int file = openOwn(m_folder / machine, O_RDWR, status);
    if (file < 0) return std::nullopt;
    std::string text(textSize + 1, '\0');
    const auto size = ::read(file, text.data(), text.size());
    ::close(file);
    text.resize(size < 0 ? 0 : static_cast<std::size_t>(size));
    auto found = machineFrom(text, boundTo(status.st_ino));
    if (found && found->key.machine() != machine) return std::nullopt;
    return found;
}

std::vector<OwnMachine> KeptKeys::all() const {
    std::vector<OwnMachine> machines;
    if (m_folder.empty()) return machines;
    std::error_code ignored;
    for (const auto& entry : std::filesystem::directory_iterator(m_folder, ignored))
        if (const std::string name = entry.path().filename().string(); isMachineId(name))
            if (auto machine = of(name)) machines.push_back(std::move(*machine));
    return machines;
}

void KeptKeys::put(const OwnMachine& machine) const {
    if (m_folder.empty()) return;
    struct stat status {};
    const int file = openOwn(m_folder / machine.key.machine(), O_CREAT | O_RDWR, status);
    if (file < 0) return;
    const std::string text = textOf(machine, boundTo(status.st_ino));
    // What is half written does not read as a machine, so that a new one begins: never a wrong head.
    if (::pwrite(file, text.data(), text.size(), 0) != static_cast<ssize_t>(text.size()))
        (void)::ftruncate(file, 0);
    ::close(file);
}

std::optional<std::string> KeptKeys::note(const std::string& name) const {
    if (m_folder.empty()) return std::nullopt;
    struct stat status {};
    const int file = openOwn(m_folder / name, O_RDONLY, status);
    if (file < 0) return std::nullopt;
    std::string text(static_cast<std::size_t>(std::min<off_t>(status.st_size, longestNote)), '\0');
    const auto size = ::read(file, text.data(), text.size());
    ::close(file);
    text.resize(size < 0 ? 0 : static_cast<std::size_t>(size));
    return text.empty() ? std::nullopt : std::optional(text);
}

/// Written beside its place and renamed, so that a whole one stands there.
bool KeptKeys::putNote(const std::string& name, const std::string& text) const {
    if (m_folder.empty()) return false;
    const std::filesystem::path place = m_folder / name;
    if (text.empty()) return ::unlink(place.c_str()) == 0 || errno == ENOENT;
    const std::string fresh = place.string() + ".new";
    ::unlink(fresh.c_str());
    struct stat status {};
    const int file = openOwn(fresh, O_CREAT | O_EXCL | O_WRONLY, status);
    if (file < 0) return false;
    const bool isWritten = ::write(file, text.data(), text.size()) == static_cast<ssize_t>(text.size());
    ::close(file);
    return isWritten && ::rename(fresh.c_str(), place.c_str()) == 0;
}

void KeptKeys::remove(const std::string& machine) const {
    if (m_folder.empty()) return;
    ::unlink((m_folder / machine).c_str());
    if (!all().empty()) return;
    ::unlink((m_folder / "lock").c_str()); // of a club that was not made after all
    ::rmdir(m_folder.c_str());
}

} // namespace core

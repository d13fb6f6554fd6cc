#include "core/store/kept_keys.h"

#include <array>
#include <cstdlib>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core {
namespace {

constexpr std::size_t seedDigits = 64;
constexpr std::size_t hashDigits = 64;
constexpr std::size_t seqDigits = 18;

/// All lines have one length, so that a new head goes over the old one in a single write.
std::string textOf(const OwnMachine& machine) {
    return fmt::format("{}\n{:0{}} {:<{}}\n", machine.key.seed(), machine.head.seq, seqDigits,
                       machine.head.hash, hashDigits);
}

constexpr std::size_t textSize = seedDigits + 1 + seqDigits + 1 + hashDigits + 1;

std::optional<OwnMachine> machineFrom(const std::string& text) {
    if (text.size() != textSize) return std::nullopt;
    auto key = MachineKey::ofSeed(text.substr(0, seedDigits));
    const std::string seq = text.substr(seedDigits + 1, seqDigits);
    if (!key || seq.find_first_not_of("0123456789") != std::string::npos) return std::nullopt;
    OwnMachine machine{std::move(*key), {std::stoll(seq), {}}};
    if (machine.head.seq > 0) machine.head.hash = text.substr(seedDigits + 1 + seqDigits + 1, hashDigits);
    return machine;
}

const char* environment(const char* name) {
    const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe): nothing here sets it
    return value == nullptr ? "" : value;
}

} // namespace

std::filesystem::path stateFolder() {
    if (const std::filesystem::path own = environment("THOLEPIN_STATE"); !own.empty()) return own;
    // The specification has relative paths ignored.
    if (const std::filesystem::path state = environment("XDG_STATE_HOME"); state.is_absolute())
        return state / "tholepin";
    const std::filesystem::path home = environment("HOME");
    return home.is_absolute() ? home / ".local/state/tholepin" : std::filesystem::path();
}

KeptKeys::KeptKeys(const std::string& club)
    : m_folder(stateFolder()) {
    if (m_folder.empty() || !isMachineId(club)) {
        m_folder.clear();
        return;
    }
    std::error_code ignored;
    std::filesystem::create_directories(m_folder.parent_path(), ignored);
    ::mkdir(m_folder.c_str(), 0700);
    m_folder /= club;
    ::mkdir(m_folder.c_str(), 0700);
}

KeptKeys::Turn::Turn(const KeptKeys& keys) {
    if (keys.m_folder.empty()) return;
    m_lock = ::open((keys.m_folder / "lock").c_str(), O_CREAT | O_RDWR | O_CLOEXEC | O_NOFOLLOW, 0600);
    while (m_lock >= 0 && ::flock(m_lock, LOCK_EX) != 0 && errno == EINTR) {
    }
}

KeptKeys::Turn::~Turn() {
    if (m_lock >= 0) ::close(m_lock);
}

KeptKeys::Turn::Turn(Turn&& other) noexcept
    : m_lock(std::exchange(other.m_lock, -1)) {}

std::optional<OwnMachine> KeptKeys::of(const std::string& machine) const {
    if (m_folder.empty()) return std::nullopt;
    const int file = ::open((m_folder / machine).c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW);
    if (file < 0) return std::nullopt;
    std::string text(textSize + 1, '\0');
    const auto size = ::read(file, text.data(), text.size());
    ::close(file);
    text.resize(size < 0 ? 0 : static_cast<std::size_t>(size));
    auto found = machineFrom(text);
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
    const int file =
        ::open((m_folder / machine.key.machine()).c_str(), O_CREAT | O_WRONLY | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (file < 0) return;
    const std::string text = textOf(machine);
    // What is half written does not read as a machine, so that a new one begins: never a wrong head.
    if (::pwrite(file, text.data(), text.size(), 0) != static_cast<ssize_t>(text.size()))
        (void)::ftruncate(file, 0);
    ::close(file);
}

} // namespace core

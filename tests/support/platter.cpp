#include "tests/support/platter.h"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <utility>

namespace support {
namespace {

namespace fs = std::filesystem;
constexpr std::int64_t sector = 512;

bool coin(std::mt19937& random) {
    return std::bernoulli_distribution(0.5)(random);
}

std::size_t below(std::size_t count, std::mt19937& random) {
    return std::uniform_int_distribution<std::size_t>(0, count - 1)(random);
}

std::string garbage(std::size_t size, std::mt19937& random) {
    std::string bytes(size, ' ');
    for (char& each : bytes)
        each = static_cast<char>(random());
    return bytes;
}

} // namespace

Platter::Platter(const fs::path& folder) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (!entry.is_regular_file() || entry.path().string().ends_with("-shm")) continue;
        std::ostringstream bytes;
        bytes << std::ifstream(entry.path(), std::ios::binary).rdbuf();
        m_lasting[make(entry.path().string())] = bytes.str();
    }
    m_lastingNames = m_names;
}

int Platter::make(const std::string& path) {
    m_names[path] = ++m_made;
    m_lasting[m_made];
    return m_made;
}

void Platter::replay(const DiskEvent& event) {
    using Kind = DiskEvent::Kind;
    if (event.kind == Kind::SyncFolder) return syncFolder(event.path);
    if (event.kind == Kind::Make) {
        const int file = make(event.path);
        m_changes.push_back({event.kind, event.path, {}, file});
        return;
    }
    const auto named = m_names.find(event.path);
    if (named == m_names.end()) return; // deleted while open: it is nobody's any more
    const int file = named->second;
    if (event.kind == Kind::Sync) return sync(file);
    if (event.kind == Kind::Write || event.kind == Kind::Truncate) {
        m_writes.push_back({file, event.kind == Kind::Truncate, event.offset, event.bytes});
        return;
    }
    m_changes.push_back({event.kind, event.path, event.to, file});
    apply(m_changes.back(), m_names);
}

void Platter::unsync(const std::string& path) {
    const int file = m_names.at(path);
    m_writes.push_back({file, false, 0, std::exchange(m_lasting[file], {})});
    m_lastingNames.erase(path);
    m_changes.push_back({DiskEvent::Kind::Make, path, {}, file});
}

void Platter::apply(const Write& write, std::string& content) {
    const auto offset = static_cast<std::size_t>(write.offset);
    if (write.isTruncate) return content.resize(offset);
    if (content.size() < offset + write.bytes.size()) content.resize(offset + write.bytes.size());
    content.replace(offset, write.bytes.size(), write.bytes);
}

void Platter::apply(const Change& change, NameOf& names) {
    if (change.kind == DiskEvent::Kind::Make) names[change.path] = change.file;
    const auto found = names.find(change.path);
    const bool isIt = found != names.end() && found->second == change.file;
    if (change.kind == DiskEvent::Kind::Make || !isIt) return;
    names.erase(found);
    if (change.kind == DiskEvent::Kind::Rename) names[change.to] = change.file;
}

void Platter::sync(int file) {
    std::string& content = m_lasting[file];
    std::erase_if(m_writes, [&](const Write& write) {
        if (write.file != file) return false;
        apply(write, content);
        return true;
    });
}

void Platter::syncFolder(const std::string& folder) {
    std::erase_if(m_changes, [&](const Change& change) {
        if (fs::path(change.path).parent_path() != folder) return false;
        apply(change, m_lastingNames);
        return true;
    });
}

std::vector<Platter::Write> Platter::surviving(Loss loss, std::mt19937& random) const {
    if (loss == Loss::Nothing || m_writes.empty()) return {};
    if (loss == Loss::Everything) return m_writes;
    if (loss == Loss::Prefix)
        return {m_writes.begin(), m_writes.begin() + static_cast<long>(below(m_writes.size() + 1, random))};
    std::vector<Write> there;
    for (const Write& write : m_writes) {
        if (loss == Loss::Subset || write.isTruncate) {
            if (coin(random)) there.push_back(write);
            continue;
        }
        for (std::int64_t at = 0; at < std::ssize(write.bytes); at += sector)
            if (coin(random))
                there.push_back({write.file, false, write.offset + at,
                                 write.bytes.substr(static_cast<std::size_t>(at), sector)});
    }
    std::shuffle(there.begin(), there.end(), random);
    if (loss != Loss::TornGarbage || there.empty()) return there;
    Write& spoiled = there[below(there.size(), random)];
    spoiled.bytes = garbage(spoiled.bytes.size(), random);
    return there;
}

Platter::NameOf Platter::survivingNames(Names names, std::mt19937& random) const {
    if (names == Names::Kept) return m_names;
    NameOf there = m_lastingNames;
    for (const Change& change : m_changes)
        if (names == Names::Some && coin(random)) apply(change, there);
    return there;
}

Image Platter::image(Loss loss, Names names, std::mt19937& random) const {
    Files files = m_lasting;
    for (const Write& write : surviving(loss, random))
        apply(write, files[write.file]);
    Image image;
    for (const auto& [path, file] : survivingNames(names, random))
        image[path] = files[file];
    return image;
}

void layOut(const Image& image, const fs::path& from, const fs::path& folder) {
    fs::remove_all(folder);
    fs::create_directories(folder);
    for (const auto& [path, bytes] : image) {
        const fs::path file = folder / fs::path(path).lexically_relative(from);
        fs::create_directories(file.parent_path());
        std::ofstream(file, std::ios::binary) << bytes;
    }
}

} // namespace support

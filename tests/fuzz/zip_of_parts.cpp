#include "tests/fuzz/zip_of_parts.h"

#include <cstdint>
#include <zlib.h>

namespace fuzzing {
namespace {

void add(std::string& bytes, std::uint32_t number, int size) {
    for (int i = 0; i < size; ++i)
        bytes += i < 4 ? static_cast<char>(number >> (8 * i)) : '\0';
}

/// What the header of a part and its entry in the directory have in common.
std::string described(const std::string& name, const std::string& part) {
    const auto size = static_cast<std::uint32_t>(part.size());
    std::string bytes;
    add(bytes, 0, 8); // flags, method: stored, time and day
    add(bytes, static_cast<std::uint32_t>(crc32(0, reinterpret_cast<const Bytef*>(part.data()), size)), 4);
    add(bytes, size, 4);
    add(bytes, size, 4);
    add(bytes, static_cast<std::uint32_t>(name.size()), 2);
    add(bytes, 0, 2);
    return bytes;
}

} // namespace

std::string zipOf(const std::vector<std::pair<std::string, std::string>>& parts) {
    std::string file, directory;
    for (const auto& [name, part] : parts) {
        directory += "PK\x01\x02";
        add(directory, 20, 2);
        add(directory, 20, 2);
        directory += described(name, part);
        add(directory, 0, 10);
        add(directory, static_cast<std::uint32_t>(file.size()), 4);
        directory += name;
        file += "PK\x03\x04";
        add(file, 20, 2);
        file += described(name, part) + name + part;
    }
    const auto at = static_cast<std::uint32_t>(file.size());
    file += directory + "PK\x05\x06";
    add(file, 0, 4);
    add(file, static_cast<std::uint32_t>(parts.size()), 2);
    add(file, static_cast<std::uint32_t>(parts.size()), 2);
    add(file, static_cast<std::uint32_t>(directory.size()), 4);
    add(file, at, 4);
    add(file, 0, 2);
    return file;
}

} // namespace fuzzing

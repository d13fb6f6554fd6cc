#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>

namespace support {

/// The keys in the state folder as they are now, to be put back later: what a copy of a club file goes on
/// with. In place, for a key counts only in the very file where it was made.
class KeptState {
public:
    KeptState() {
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder()))
            if (entry.is_regular_file()) {
                std::ifstream in(entry.path(), std::ios::binary);
                m_files[entry.path()] = {std::istreambuf_iterator<char>(in),
                                         std::istreambuf_iterator<char>()};
            }
    }
    void putBack() const {
        std::error_code ignored;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder()))
            if (entry.is_regular_file() && m_files.count(entry.path()) == 0)
                std::filesystem::remove(entry.path(), ignored);
        for (const auto& [path, bytes] : m_files)
            std::ofstream(path, std::ios::binary) << bytes; // over what is there
    }

private:
    static std::filesystem::path folder() { return std::getenv("THOLEPIN_STATE"); }

    std::map<std::filesystem::path, std::string> m_files;
};

} // namespace support

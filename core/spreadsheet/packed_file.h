#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>

namespace core {

/// The parts of a ZIP file (PKWARE APPNOTE 6.3.10: sections 4.3.7, 4.3.12, 4.3.16), which workbooks are.
/// Stored and deflated parts; each is checked by its CRC-32. The bytes must outlive it.
class PackedFile {
public:
    /// Throws SpreadsheetFault: no ZIP file, parts that are locked by a password, or more than
    /// largestUnpacked in all parts together, by what the file says of itself; a part that grows beyond what
    /// is said of it is damaged.
    explicit PackedFile(std::string_view bytes);

    bool has(std::string_view name) const { return m_entries.find(name) != m_entries.end(); }
    /// Throws SpreadsheetFault when there is none of that name, or it is damaged, or when more than
    /// largestUnpacked was unpacked in all: a part may be asked for more than once.
    std::string part(std::string_view name) const;

private:
    struct Entry {
        std::uint32_t method, crc, packed, unpacked, header;
    };

    void readDirectory(std::size_t end);
    std::string_view packedBytes(const Entry& entry) const;

    std::string_view m_bytes;
    mutable std::size_t m_left;
    std::map<std::string, Entry, std::less<>> m_entries;
};

} // namespace core

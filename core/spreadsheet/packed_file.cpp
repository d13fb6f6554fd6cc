#include "core/spreadsheet/packed_file.h"

#include "core/spreadsheet/spreadsheet_fault.h"
#include "core/spreadsheet/workbook.h"
#include "core/spreadsheet/xml_reader.h"

#include <algorithm>
#include <zlib.h>

namespace core {
namespace {

constexpr std::uint32_t stored = 0, deflated = 8;
constexpr std::size_t endSize = 22, directoryEntrySize = 46, headerSize = 30;

[[noreturn]] void damaged() {
    refuse(ErrorCode::SpreadsheetUnreadable);
}

/// Little-endian numbers of a text that may be too short for them.
class Numbers {
public:
    Numbers(std::string_view bytes, std::size_t at, std::size_t size) {
        if (at > bytes.size() || bytes.size() - at < size) damaged();
        m_bytes = bytes.substr(at, size);
    }

    std::uint32_t two(std::size_t at) const { return byte(at) | byte(at + 1) << 8; }
    std::uint32_t four(std::size_t at) const { return two(at) | two(at + 2) << 16; }

private:
    std::uint32_t byte(std::size_t at) const { return static_cast<unsigned char>(m_bytes[at]); }
    std::string_view m_bytes;
};

class Inflating {
public:
    explicit Inflating(std::string_view packed) {
        m_stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(packed.data())); // is not written to
        m_stream.avail_in = static_cast<uInt>(packed.size());
        if (inflateInit2(&m_stream, -MAX_WBITS) != Z_OK) refuse(ErrorCode::MemoryShort);
    }
    ~Inflating() { inflateEnd(&m_stream); }
    Inflating(const Inflating&) = delete;
    Inflating& operator=(const Inflating&) = delete;

    /// Touches no more memory than comes out, whatever size is claimed; with room for what readXml puts
    /// behind.
    std::string all(std::size_t size) {
        std::string whole;
        whole.reserve(size + behindXml);
        int state = Z_OK;
        while (state == Z_OK) {
            const std::size_t before = whole.size();
            whole.resize(std::min(size + 1, std::max<std::size_t>(before * 2, 64U << 10)));
            m_stream.next_out = reinterpret_cast<Bytef*>(whole.data() + before);
            m_stream.avail_out = static_cast<uInt>(whole.size() - before);
            if (m_stream.avail_out == 0) damaged(); // more than was said
            state = inflate(&m_stream, Z_NO_FLUSH);
            whole.resize(whole.size() - m_stream.avail_out);
        }
        if (state != Z_STREAM_END || whole.size() != size) damaged();
        return whole;
    }

private:
    z_stream m_stream{};
};

} // namespace

PackedFile::PackedFile(std::string_view bytes)
    : m_bytes(bytes)
    , m_left(largestUnpacked) {
    const std::size_t end = bytes.rfind("PK\x05\x06");
    if (end == std::string_view::npos) damaged();
    readDirectory(end);
}

void PackedFile::readDirectory(std::size_t end) {
    const Numbers last(m_bytes, end, endSize);
    const std::uint32_t count = last.two(10);
    std::size_t at = last.four(16);
    std::uint64_t unpacked = 0;
    for (std::uint32_t i = 0; i < count; ++i) {
        const Numbers entry(m_bytes, at, directoryEntrySize);
        if (entry.four(0) != 0x02014b50) damaged();
        if ((entry.two(8) & 1U) != 0) refuse(ErrorCode::SpreadsheetProtected);
        const std::size_t nameSize = entry.two(28);
        Numbers(m_bytes, at + directoryEntrySize, nameSize); // must be there
        unpacked += entry.four(24);
        m_entries.emplace(
            m_bytes.substr(at + directoryEntrySize, nameSize),
            Entry{entry.two(10), entry.four(16), entry.four(20), entry.four(24), entry.four(42)});
        at += directoryEntrySize + nameSize + entry.two(30) + entry.two(32);
    }
    if (unpacked > largestUnpacked) refuse(ErrorCode::SpreadsheetTooLarge, {"512"});
}

std::string_view PackedFile::packedBytes(const Entry& entry) const {
    const Numbers header(m_bytes, entry.header, headerSize);
    if (header.four(0) != 0x04034b50) damaged();
    const std::size_t at = std::size_t{entry.header} + headerSize + header.two(26) + header.two(28);
    if (at > m_bytes.size() || m_bytes.size() - at < entry.packed) damaged();
    if (entry.method == stored && entry.packed != entry.unpacked) damaged();
    return m_bytes.substr(at, entry.packed);
}

std::string PackedFile::part(std::string_view name) const {
    const auto found = m_entries.find(name);
    if (found == m_entries.end()) damaged();
    const Entry& entry = found->second;
    if (entry.method != stored && entry.method != deflated) damaged();
    if (entry.unpacked > m_left) refuse(ErrorCode::SpreadsheetTooLarge, {"512"});
    m_left -= entry.unpacked;
    const std::string_view packed = packedBytes(entry);
    std::string whole = entry.method == stored ? std::string(packed) : Inflating(packed).all(entry.unpacked);
    const auto* bytes = reinterpret_cast<const Bytef*>(whole.data());
    if (crc32_z(crc32_z(0, nullptr, 0), bytes, whole.size()) != entry.crc) damaged();
    return whole;
}

} // namespace core

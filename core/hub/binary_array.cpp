#include "core/hub/binary_array.h"

#include <array>
#include <sodium.h>

namespace core {
namespace {

/// The most significant byte first.
template <class Number>
void put(std::string& into, Number number) {
    for (int bits = static_cast<int>(sizeof number) * 8 - 8; bits >= 0; bits -= 8)
        into += static_cast<char>(static_cast<unsigned char>(number >> bits));
}

} // namespace

void BinaryArray::add(std::string_view value) {
    put(m_values, static_cast<std::uint32_t>(value.size()));
    m_values += value;
    ++m_count;
}

void BinaryArray::add(std::int64_t number) {
    put(m_values, std::uint32_t{sizeof number});
    put(m_values, static_cast<std::uint64_t>(number));
    ++m_count;
}

void BinaryArray::addHex(std::string_view hex) {
    std::array<unsigned char, 64> bytes{}; // the longest is a signature
    std::size_t size = 0;
    sodium_hex2bin(bytes.data(), bytes.size(), hex.data(), hex.size(), "-", &size, nullptr);
    add(std::string_view(reinterpret_cast<const char*>(bytes.data()), size));
}

void BinaryArray::add(const BinaryArray& others) {
    m_values += others.m_values;
    m_count += others.m_count;
}

std::string BinaryArray::parameter() const {
    std::string array;
    array.reserve(m_values.size() + 5 * sizeof(std::uint32_t));
    put(array, std::uint32_t{m_count > 0}); // dimensions
    put(array, std::uint32_t{0});           // no NULLs
    put(array, static_cast<std::uint32_t>(m_of));
    if (m_count == 0) return array;
    put(array, m_count);
    put(array, std::uint32_t{1}); // the first one's place
    return array + m_values;
}

} // namespace core

#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace core {

/// Values as one parameter of a statement, in the binary form of an array that PostgreSQL reads (`array_recv`
/// of its source): it takes them as they are, where an array as text is looked through letter by letter. No
/// NULLs. For HubConnection::runBinary.
class BinaryArray {
public:
    /// Numbers of its types (`pg_type.dat`).
    enum class Of : std::uint32_t { Bytea = 17, BigInt = 20, Text = 25, Uuid = 2950 };
    explicit BinaryArray(Of of)
        : m_of(of) {}

    void add(std::string_view value); ///< a text in UTF-8
    void add(std::int64_t number);
    void addHex(std::string_view hex); ///< of bytes, or of a UUID with or without its dashes
    void add(const BinaryArray& others);
    std::string parameter() const;

private:
    Of m_of;
    std::uint32_t m_count = 0;
    std::string m_values;
};

} // namespace core

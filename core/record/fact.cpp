#include "core/record/fact.h"

#include "core/record/hex.h"
#include "core/record/json_values.h"

#include <array>
#include <fmt/format.h>
#include <sodium.h>

namespace core {

std::string Fact::stamp() const {
    return fmt::format("{} {} {:012}", atUtc, machine, seq);
}

std::string sha256Hex(const std::string& bytes) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return hexOf(digest);
}

bool isCanonical(const std::string& body) {
    const json value = parsedOrDiscarded(body);
    return !value.is_discarded() && canonical(value) == body;
}

std::string hashOf(const Fact& fact) {
    const json before = {fact.id, fact.prevHash, fact.machine, fact.seq, fact.atUtc, fact.by, fact.kind};
    std::string array = canonical(before);
    array.back() = ',';
    array += fact.body; // canonical as it is: nothing is read to be written again
    array += ']';
    return sha256Hex(array);
}

std::string newUuid7(Instant now) {
    // RFC 9562: 48 bits of milliseconds, version 7, variant 10, the rest random.
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    auto millis = static_cast<std::uint64_t>(now.millis());
    for (int i = 5; i >= 0; --i, millis >>= 8)
        bytes[static_cast<std::size_t>(i)] = static_cast<unsigned char>(millis & 0xff);
    bytes[6] = static_cast<unsigned char>(0x70 | (bytes[6] & 0x0f));
    bytes[8] = static_cast<unsigned char>(0x80 | (bytes[8] & 0x3f));
    const std::string hex = hexOf(bytes);
    const std::string_view h(hex);
    return fmt::format("{}-{}-{}-{}-{}", h.substr(0, 8), h.substr(8, 4), h.substr(12, 4), h.substr(16, 4),
                       h.substr(20));
}

} // namespace core

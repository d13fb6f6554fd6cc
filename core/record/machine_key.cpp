#include "core/record/machine_key.h"

#include "core/record/hex.h"

#include <algorithm>
#include <sodium.h>

namespace core {
namespace {

constexpr std::size_t idDigits = 32;

bool isHex(const std::string& text, std::size_t digits) {
    return text.size() == digits && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

template <std::size_t Size>
std::optional<std::array<unsigned char, Size>> bytesOf(const std::string& hex) {
    std::array<unsigned char, Size> bytes{};
    if (!isHex(hex, Size * 2)) return std::nullopt;
    sodium_hex2bin(bytes.data(), bytes.size(), hex.data(), hex.size(), nullptr, nullptr, nullptr);
    return bytes;
}

const unsigned char* asBytes(const std::string& text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

} // namespace

MachineKey::MachineKey(const Seed& seed)
    : m_seed(hexOf(seed)) {
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> publicKey{};
    crypto_sign_seed_keypair(publicKey.data(), m_secret.data(), seed.data());
    m_publicKey = hexOf(publicKey);
    m_machine = machineOf(m_publicKey);
}

MachineKey MachineKey::fresh() {
    Seed seed{};
    randombytes_buf(seed.data(), seed.size());
    return MachineKey(seed);
}

std::optional<MachineKey> MachineKey::ofSeed(const std::string& hex) {
    const auto seed = bytesOf<crypto_sign_SEEDBYTES>(hex);
    return seed ? std::optional(MachineKey(*seed)) : std::nullopt;
}

std::string MachineKey::signatureOf(const Fact& fact) const {
    std::array<unsigned char, crypto_sign_BYTES> signature{};
    crypto_sign_detached(signature.data(), nullptr, asBytes(fact.hash), fact.hash.size(), m_secret.data());
    return hexOf(signature);
}

std::string machineOf(const std::string& publicKey) {
    return sha256Hex(publicKey).substr(0, idDigits);
}

bool isMachineId(const std::string& text) {
    return isHex(text, idDigits);
}

bool isSignedBy(const Fact& fact, const std::string& publicKey) {
    return isSignedBy(fact.hash, fact.signature, publicKey);
}

bool isSignedBy(const std::string& hash, const std::string& signature, const std::string& publicKey) {
    const auto key = bytesOf<crypto_sign_PUBLICKEYBYTES>(publicKey);
    const auto bytes = bytesOf<crypto_sign_BYTES>(signature);
    return key && bytes &&
           crypto_sign_verify_detached(bytes->data(), asBytes(hash), hash.size(), key->data()) == 0;
}

} // namespace core

#pragma once

#include "core/record/fact.h"

#include <array>
#include <optional>
#include <string>

namespace core {

/// The signing key of a machine: Ed25519 (RFC 8032). A machine is a user on a computer, and writes one chain
/// of facts. Whoever has only the club file cannot write a fact in the machine's name.
class MachineKey {
public:
    static MachineKey fresh();
    /// Of the seed's 64 hex digits; empty when they are not.
    static std::optional<MachineKey> ofSeed(const std::string& hex);

    const std::string& seed() const { return m_seed; }           ///< secret; lower-case hex, 64 digits
    const std::string& publicKey() const { return m_publicKey; } ///< lower-case hex, 64 digits
    const std::string& machine() const { return m_machine; }     ///< see machineOf
    /// Over the bytes of the fact's hash as it is written; lower-case hex, 128 digits.
    std::string signatureOf(const Fact& fact) const;

private:
    using Seed = std::array<unsigned char, 32>;
    explicit MachineKey(const Seed& seed);

    std::string m_seed, m_publicKey, m_machine;
    std::array<unsigned char, 64> m_secret{};
};

/// The id of the machine with that public key: the first 32 hex digits of its SHA-256. So an id cannot be
/// taken by another key.
std::string machineOf(const std::string& publicKey);
bool isMachineId(const std::string& text);

/// Whether the fact's signature is one over its hash by the key of that public key.
bool isSignedBy(const Fact& fact, const std::string& publicKey);
/// The same of that signature over that hash. From any thread.
bool isSignedBy(const std::string& hash, const std::string& signature, const std::string& publicKey);

} // namespace core

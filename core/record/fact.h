#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <string>

namespace core {

/// One change of the club's state, appended once and never changed.
struct Fact {
    std::string id;       ///< UUIDv7
    std::string machine;  ///< in whose chain it stands
    std::int64_t seq = 0; ///< its number in that chain, from 1
    std::string atUtc;    ///< when it was recorded; for people, and for which of two machines wrote later
    std::string by;       ///< person, or empty
    std::string kind;
    std::string body;     ///< canonical JSON: keys sorted, no blanks
    std::string prevHash; ///< of the fact before it in the chain; empty for the first
    std::string hash;
    std::string signature; ///< of the machine over the hash, see machine_key.h

    /// Orders facts of all machines: "newest" in the register is the largest stamp.
    std::string stamp() const;
};

/// SHA-256 over the canonical JSON array [id, prev_hash, machine, seq, at_utc, by, kind, body], in lower-case
/// hex. Two different facts cannot give the same bytes. Its body is canonical, see isCanonical.
std::string hashOf(const Fact& fact);

/// SHA-256 of any bytes, lower-case hex.
std::string sha256Hex(const std::string& bytes);

/// Whether it is canonical JSON: keys sorted, no blanks, UTF-8.
bool isCanonical(const std::string& body);

std::string newUuid7(Instant now);

} // namespace core

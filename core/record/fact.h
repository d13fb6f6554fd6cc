#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <string>

namespace core {

/// One change of the club's state, appended once and never changed.
struct Fact {
    std::string id;     ///< UUIDv7
    std::string device; ///< the machine whose chain it stands in
    std::int64_t seq = 0;
    std::string atUtc; ///< when it was recorded; for people, and for which of two machines wrote later
    std::string by;    ///< person, or empty
    std::string kind;
    std::string body; ///< canonical JSON: keys sorted, no blanks
    std::string prevHash;
    std::string hash;

    /// Orders facts of all machines: "newest" in the register is the largest stamp.
    std::string stamp() const;
};

/// SHA-256 over the canonical JSON array [prev_hash, device, seq, at_utc, by, kind, body], in lower-case hex.
/// Two different facts cannot give the same bytes.
std::string hashOf(const Fact& fact);

/// SHA-256 of any bytes, lower-case hex.
std::string sha256Hex(const std::string& bytes);

/// Whether it is canonical JSON: keys sorted, no blanks, UTF-8.
bool isCanonical(const std::string& body);

std::string newUuid7(Instant now);

} // namespace core

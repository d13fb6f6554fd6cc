#pragma once

#include "core/record/facts.h"

#include <string>
#include <vector>

namespace core {

/// A private part of a fact, a cell of a person's row (sheets.h) or a PIN, which stands beside its fact and
/// not in it: so it can be taken out for good, and left out of what is handed on, while the chain stays
/// whole. The fact holds its digest.
struct PrivateCell {
    std::string column; ///< of the row; "pin"
    std::string salt;   ///< random, 32 hex digits, so that a digest does not tell a measure
    std::string value;
};

/// SHA-256 over the canonical JSON array [id of the fact, column, salt, value], in lower-case hex: no part of
/// one can pass for a part of another.
std::string digestOf(const std::string& fact, const PrivateCell& cell);

/// Takes the private parts out of what the fact of that id says and leaves their digests. Returns them with
/// fresh salts.
std::vector<PrivateCell> seal(FactBody& body, const std::string& fact);
std::vector<PrivateCell> seal(RowWritten& row, const std::string& fact);

/// What a fact says of a private part: its column, and its digest.
struct SealedCell {
    std::string column, digest;
};
std::vector<SealedCell> sealedCells(const FactBody& body);

} // namespace core

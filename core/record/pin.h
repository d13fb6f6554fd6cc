#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <memory>
#include <string>

namespace core {

/// A person's PIN while it is being given: 4 to 12 characters as people see them, in normal form C. Its bytes
/// are wiped when it goes, and stand in no error and no log.
class Pin {
public:
    static constexpr std::size_t fewest = 4, most = 12; ///< characters

    /// Without blanks at its ends. Wipes `text`. PinLength; PinUnseen for what cannot be seen.
    static Result<Pin> from(std::string&& text);

    /// What is kept of it: Argon2id (RFC 9106) with a fresh salt, at libsodium's limits for interactive use
    /// (64 MiB, about 60 ms), in the usual text form. MemoryShort.
    Result<std::string> sealed() const;
    /// Whether that was made of this PIN; compared in constant time. False for what no program seals.
    /// MemoryShort.
    Result<bool> opens(const std::string& sealed) const;

private:
    struct Bytes;
    struct Wipe {
        void operator()(Bytes* bytes) const;
    };
    explicit Pin(const std::string& text);
    std::unique_ptr<Bytes, Wipe> m_bytes;
};

/// Overwrites the text and empties it.
void wipe(std::string& text);

} // namespace core

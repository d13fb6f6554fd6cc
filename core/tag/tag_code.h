#pragma once

#include "core/base/result.h"

#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// ISO/IEC 7064 MOD 37-2 check character of `text` (0–9, A–Z); `*` stands for 36. Empty if a character is
/// outside.
std::optional<char> checkCharacter(std::string_view text);

/// What a person typed, in the characters that are printed: upper case, no blanks or hyphens, 0 for O, 1 for
/// I and L.
std::string asPrinted(std::string_view typed);

/// What a tag is fixed to.
enum class TagClass : char { Kit = 'K', Boat = 'B', Person = 'P', Control = 'C', Shelf = 'S' };

/// The ten characters of a club tag: a class letter, eight of 0–9 and A–Z without I, L, O and U, and a MOD
/// 37-2 check character over the nine. A value is always a good code.
class TagCode {
public:
    /// Strict: ten characters exactly as they are printed.
    static std::optional<TagCode> exact(std::string_view text);

    /// As a person types it: lower case, blanks and hyphens anywhere, O for 0, I and L for 1. BadInput when
    /// the check character does not agree; which tag was meant only the club's register can tell.
    static Result<TagCode> parse(std::string_view typed);

    /// A fresh code. `random` gives 64 evenly spread bits a call. Codes whose check character would be one of
    /// `* I L O U` are not minted.
    static TagCode mint(TagClass tagClass, const std::function<std::uint64_t()>& random);

    TagClass tagClass() const { return static_cast<TagClass>(m_text[0]); }
    const std::string& text() const { return m_text; }
    std::string grouped() const; ///< `K7Q2 4RMX 1P`, as it is shown to people

    auto operator<=>(const TagCode&) const = default;

private:
    explicit TagCode(std::string text)
        : m_text(std::move(text)) {}
    std::string m_text;
};

/// Gives a fresh code of that class, each time another one.
using MintTag = std::function<std::string(TagClass)>;

/// Printed codes that act instead of naming a thing, for hands that cannot use a mouse.
enum class ControlTag { Finish, NextBoat, Undo, Damaged, Clock, PutAside };
std::optional<ControlTag> controlOf(const TagCode& code);

/// "K7Q2 4RMX 1P" of the ten characters of a tag; another text as it is.
std::string groupedTag(const std::string& text);

} // namespace core

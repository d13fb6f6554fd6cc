#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace core {

/// Finds which of many texts are one slip of the hand from another one (one_slip.h) without comparing it with
/// each: such texts become the same when one character at most is left out of each.
class SlipFinder {
public:
    /// `name`: what is given when `text` is found.
    void add(const std::string& text, const std::string& name);
    /// The names of those, in the order in which they were added.
    std::vector<std::string> oneSlipFrom(std::string_view text) const;

private:
    struct Entry {
        std::string text, name;
    };
    std::vector<Entry> m_entries;
    std::unordered_multimap<std::string, std::size_t> m_shortened; ///< places of entries, by what is left
};

} // namespace core

#include "core/base/slip_finder.h"

#include "core/base/one_slip.h"

#include <set>

namespace core {
namespace {

/// The text, and what is left of it without each one of its characters.
template <class Visit>
void forEachShortened(std::string_view text, Visit visit) {
    visit(std::string(text));
    for (std::size_t at = 0; at < text.size(); ++at)
        visit(std::string(text.substr(0, at)).append(text.substr(at + 1)));
}

} // namespace

void SlipFinder::add(const std::string& text, const std::string& name) {
    forEachShortened(text, [&](std::string left) { m_shortened.emplace(std::move(left), m_entries.size()); });
    m_entries.push_back({text, name});
}

std::vector<std::string> SlipFinder::oneSlipFrom(std::string_view text) const {
    std::set<std::size_t> found;
    forEachShortened(text, [&](const std::string& left) {
        const auto [begin, end] = m_shortened.equal_range(left);
        for (auto at = begin; at != end; ++at)
            if (isOneSlip(m_entries[at->second].text, text)) found.insert(at->second);
    });
    std::vector<std::string> names;
    for (const std::size_t place : found)
        names.push_back(m_entries[place].name);
    return names;
}

} // namespace core

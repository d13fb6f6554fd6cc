#pragma once

#include "core/exchange/import_draft.h"

#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace core {

/// Gives the names in touched rows the spelling of the row that they refer to, and rejects names of nothing.
/// Names that no row needs to define (boat classes, points, parts, events) take the spelling that was there
/// first.
class NameSpelling {
public:
    NameSpelling(ImportDraft& draft, Rejections& rejections);

    void spell(DraftRow& row);

private:
    /// By scope (such as the folded kit type) and folded name.
    using Spellings = std::map<std::pair<std::string, std::string>, std::string>;

    void learn();
    void spellReferences(DraftRow& row);
    void spellOne(DraftRow& row, int column);
    void spellList(DraftRow& row, int column);
    void spellLikeOthers(DraftRow& row, std::string_view column, const std::string& scope,
                         Spellings& spellings);
    void spellSize(DraftRow& row);
    void spellRule(DraftRow& row);
    /// Null: rejected, or not to be known because a file could not be read.
    const DraftRow* referred(DraftRow& row, int column, const std::string& name);
    std::string kitTypeOf(const std::string& code); ///< folded; empty: not known
    std::string classOf(const DraftRow& point); ///< boat class and phase: where a boat's own point replaces

    ImportDraft& m_draft;
    Rejections& m_rejections;
    Spellings m_classes;
    Spellings m_points;
    Spellings m_parts;
    Spellings m_events;
};

} // namespace core

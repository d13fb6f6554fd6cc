#pragma once

#include "core/register/item.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace app {

/// Finds kit by what is typed: every word must stand somewhere among an item's id, tag, kit type, size,
/// home, person, maker, serial, batch, note or state, in any spelling of case. A plain value.
class KitSearch {
public:
    KitSearch() = default;
    /// `shown`: of each item what else is shown of it, to be found too.
    explicit KitSearch(std::vector<core::Item> kit, const QStringList& shown = {});

    const std::vector<core::Item>& kit() const { return m_kit; }
    /// Places in `kit`, in its order; all for an empty text. A whole code typed or scanned finds that item
    /// alone.
    std::vector<std::size_t> find(const QString& typed) const;
    const core::Item* ofCode(const QString& code) const; ///< by id or tag; null: there is none

private:
    std::vector<core::Item> m_kit;
    std::vector<QString> m_words; ///< of each item, in lower case
};

} // namespace app

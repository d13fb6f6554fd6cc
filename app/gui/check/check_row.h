#pragma once

#include "app/gui/club/check_session.h"
#include "app/gui/widgets/list_row.h"
#include "core/check/boat_check.h"

#include <QString>

#include <optional>
#include <vector>

namespace app {

/// One line of the check page's list: what it shows, and what can be done with it. Its key is the same for
/// the same thing from answer to answer.
struct CheckRow : ListRow {
    enum class Section { StillToFind, Look, Found, Points };

    Section section = Section::StillToFind;
    QString detail;      ///< of an item: the whole of what is to be said, with rules and sources
    QString tag;         ///< that is on the item now; empty: it is about none
    bool counts = false; ///< the item fills a place
    std::optional<core::PointKind> pointKind; ///< of the line of a point

    bool operator==(const CheckRow&) const = default;
};

/// What is the matter and what to do, in as few words as a line of the list bears. The whole sentence, with
/// rule, anchor and source, is `reasonOf`.
QString shortReasonOf(const core::Finding& finding);

/// The four lists of a check, headings before rows, in the order in which a crew needs them.
/// The name of a code's kit type is looked up in the answer's lines.
std::vector<CheckRow> rowsOf(const core::CheckAnswer& answer, const CheckContext& context = {});

} // namespace app

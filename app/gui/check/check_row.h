#pragma once

#include "app/gui/theme/marks.h"
#include "app/text/printed_tags.h"
#include "core/check/boat_check.h"

#include <QString>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace app {

/// One line of the check page's list, ready to be shown: what it says, and what can be done with it.
struct CheckRow {
    enum class Kind { Heading, Kit, Point };
    enum class Section { StillToFind, Look, Found, Points };

    Kind kind = Kind::Kit;
    Section section = Section::StillToFind;
    QString key; ///< the same for the same thing from answer to answer
    Mark mark = Mark::StillToFind;
    QString title;
    QString aside; ///< at the right: "1 of 2", a tag code in groups, a measure with its unit
    bool asideIsCode = false;
    QString remark; ///< beneath; may be empty
    bool remarkIsLook = false;
    QString detail;      ///< of an item: the whole of what is to be said, with rules and sources
    QString code;        ///< of an item's row
    bool counts = false; ///< the item fills a place

    core::PointKind pointKind = core::PointKind::Look;
    QString unit;
    core::Range limits;
    std::optional<double> value;

    /// The whole line as it is read aloud: the mark's word, the thing, how many, the remark.
    QString aloud() const;

    bool operator==(const CheckRow& other) const;
};

/// What the lists say beside the answer itself.
struct CheckContext {
    std::vector<std::string> askWhom;       ///< return: who was aboard when the boat went out
    std::optional<core::Instant> launched;  ///< return: when the launch check was signed
    std::map<std::string, core::Item> worn; ///< by code: what a person of the answer wears
    PrintedTags tags;
};

/// The four lists of a check, headings before rows, in the order in which a crew needs them.
/// The name of a code's kit type is looked up in the answer's lines.
std::vector<CheckRow> rowsOf(const core::CheckAnswer& answer, const CheckContext& context = {});

/// Shows and says the tags that are on the things now. The rows' keys and codes stay the items'.
std::vector<CheckRow> withPrintedTags(std::vector<CheckRow> rows, const PrintedTags& tags);

} // namespace app

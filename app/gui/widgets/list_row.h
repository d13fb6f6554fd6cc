#pragma once

#include "app/gui/theme/marks.h"
#include "core/register/item_name.h"

#include <QString>

#include <optional>
#include <vector>

namespace app {

/// A number that can be typed into a line, and the one that stands there.
struct NumberEntry {
    QString unit; ///< a sign or a word, as it is shown
    std::optional<double> value;
    QString range{};              ///< what is allowed, in words with its unit; empty: anything
    std::optional<double> low{};  ///< the range itself, both ends allowed
    std::optional<double> high{}; ///< the same

    bool holds(double number) const { return !(low && number < *low) && !(high && number > *high); }
    bool operator==(const NumberEntry&) const = default;
};

/// One line of a list, ready to be shown, or the heading over some. A plain value.
struct ListRow {
    bool isHeading = false;
    QString key;                   ///< the same for the same thing from answer to answer; once in a list
    Mark mark = Mark::StillToFind; ///< of a line; headings have none
    QString title;
    QString aside; ///< at the right: "1 of 2", a tag code in groups, a measure with its unit
    bool asideIsCode = false;
    QString remark;            ///< beneath; may be empty
    bool remarkIsLook = false; ///< in the tone of what is to be looked at
    QString code;              ///< id of the item that it is about; empty: it is about none
    QString spoken;            ///< read aloud in the place of its parts; empty: the parts are read
    bool isPressable = false;  ///< a press is a wish, see `RowList::rowPressed`
    bool isLitByMouse = false; ///< while the mouse is over it
    std::optional<NumberEntry> number;

    /// The whole line as it is read aloud: the mark's word, the thing, what stands at the right, the remark.
    QString aloud() const;

    bool operator==(const ListRow&) const = default;
};

/// A heading over lines, with what stands at its right.
ListRow headingRow(const QString& key, const QString& title, const QString& aside = {});
/// A line; the tag that is on `item` is shown in groups at the right, and an item makes it pressable.
/// `markWord` is what the mark means here: a mark means something else on each page.
ListRow plainRow(const QString& key, Mark mark, const QString& markWord, const QString& title,
                 const QString& remark = {}, const core::ItemName& item = {});

/// Puts the rows under a heading that says how many they are. No rows: nothing, unless `evenEmpty`.
void addSection(std::vector<ListRow>& all, const QString& key, const QString& title,
                const std::vector<ListRow>& rows, bool evenEmpty = false);

} // namespace app

#pragma once

#include "app/flow/check_flow.h"
#include "app/gui/theme/sounds.h"
#include "core/club/club_checks.h"

#include <QString>

#include <optional>

namespace app {

struct ListRow;

/// What is said of a scan, and heard.
struct ScanWords {
    QString said; ///< may be empty
    bool toLookAt = false;
    std::optional<Sound> sound;
};

/// `text` is what was scanned; `row` the item's line in the list now, or null. For everything but control
/// tags, which act instead.
ScanWords wordsOf(const core::Scanned& scan, const QString& text, const ListRow* row);

/// What is said of a step that is no scan, or when its own way of being shown is not enough.
ScanWords wordsOf(const FlowStep& step);

/// "tow line K7Q2 4RMX 1P"
QString withCode(const core::Scanned& scan);

} // namespace app

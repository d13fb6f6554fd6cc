#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"

#include <QString>

#include <filesystem>
#include <optional>

namespace app {

/// What this machine knows of the copies of one club file; in its settings, and no fact of the club.
class CopySettings {
public:
    explicit CopySettings(const std::filesystem::path& clubFile);

    QString folder() const; ///< for a copy after each signed check; empty: none is made
    void setFolder(const QString& folder);
    std::optional<core::Instant> newest() const; ///< when the newest copy that is known was made
    void setNewest(core::Instant at);

private:
    QString m_key;
};

inline constexpr int daysToRemind = 30;

/// That a copy is old, or that there is none though the club is that old; empty: nothing is to be said.
QString copyReminder(std::optional<core::Instant> newest, std::optional<core::Instant> began,
                     core::CalendarDay today);

} // namespace app

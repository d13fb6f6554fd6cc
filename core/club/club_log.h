#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/register/boat.h"

#include <string>
#include <vector>

namespace core {

struct ClubState;

/// Remarks and defects on boats and items. See Club for what holds of every function.
class ClubLog {
public:
    explicit ClubLog(ClubState& state)
        : m_state(&state) {}

    /// Of all, or of one boat; open first, then newest first.
    Result<std::vector<LogEntry>> entries(const std::string& boat = {}) const;
    /// About a boat or an item (by name or code).
    Result<LogEntry> add(const std::string& about, const std::string& text, Severity severity,
                         const std::string& by, Moment moment);
    Outcome close(const std::string& entry, const std::string& closing, const std::string& by, Moment moment);

private:
    ClubState* m_state;
};

} // namespace core

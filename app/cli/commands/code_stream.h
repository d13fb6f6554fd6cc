#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/tag/tag_code.h"

#include <chrono>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace app {

/// Codes of one check, one after the other, from pictures or a hand-held scanner. Kit and people are recorded
/// as they come, control tags act.
class CodeStream {
public:
    /// `now` says when a code comes. `person` signs by the finish tag; empty: the first of those on board.
    CodeStream(core::Club& club, std::string check, std::function<core::Moment()> now, std::string person,
               std::string urgent);

    /// Takes one text; false when the stream ends here: signed, put aside, or the next boat is called.
    /// `typed` is what is looked up where a picture's symbol says more than its text.
    core::Result<bool> take(const std::string& text, core::SeenBy seenBy, const std::string& typed = {});

    const std::vector<std::string>& unread() const { return m_unread; } ///< as they came, each once
    bool isPutAside() const { return m_putAside; }
    const std::optional<core::SignedCheck>& signedCheck() const { return m_signed; }
    bool clockRuns() const { return m_clockSince.has_value(); }

private:
    core::Result<bool> act(core::ControlTag control);
    core::Result<bool> finish();
    core::Result<bool> undo();
    core::Result<bool> withdrawLast();
    core::Result<bool> turnClock();

    core::Club& m_club;
    std::string m_check;
    std::function<core::Moment()> m_now;
    std::string m_person;
    std::string m_urgent;
    std::string m_lastItem;
    std::vector<std::string> m_unread;
    std::optional<std::chrono::steady_clock::time_point> m_clockSince;
    std::string m_timedPoint;
    std::optional<core::SignedCheck> m_signed;
    bool m_putAside = false;
};

/// Signs where it may be done: empty, with a line on standard error, when a launch is incomplete without a
/// reason.
core::Result<std::optional<core::SignedCheck>> signIfAllowed(core::Club& club, const std::string& check,
                                                             const std::string& person,
                                                             const std::string& urgent, core::Moment moment);

} // namespace app

#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QString>

#include "core/club/club_checks.h"

namespace app {

/// A page, to a hand-held scanner: whatever has the keyboard on it, what is scanned comes here.
class ScanTaker {
public:
    virtual ~ScanTaker() = default;

    /// A code as the scanner, or a person, typed it. False: nothing on the page asks for one now, and nothing
    /// was done.
    virtual bool takeScan(const QString& /*text*/, core::SeenBy /*how*/) { return false; }
    /// Says it in the page, where it says what became of things.
    virtual void sayOfScan(const QString& sentence) = 0;
};

} // namespace app

#pragma once

#include <QString>

namespace app {

/// A page, to a hand-held scanner: whatever has the keyboard on it, what is scanned comes here.
class ScanTaker {
public:
    virtual ~ScanTaker() = default;

    /// A code as the scanner typed it. False: nothing on the page asks for one now, and nothing was done.
    virtual bool takeScan(const QString& /*text*/) { return false; }
    /// Says it in the page, where it says what became of things.
    virtual void sayOfScan(const QString& sentence) = 0;
};

} // namespace app

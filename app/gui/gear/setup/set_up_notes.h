#pragma once

#include <QString>

#include <filesystem>

namespace app {

/// What the record of a club does not know of its setting up: that tags were printed, that somebody wants to
/// see no more of it, and that it was all done once. Kept on this machine, in the settings, for each club
/// file; so another machine of the club asks again, which costs one press. Reads and writes at once.
class SetUpNotes {
public:
    explicit SetUpNotes(const std::filesystem::path& clubFile);

    bool arePrinted() const;
    void notePrinted();
    bool isPutAway() const;
    void putAway(bool isAway);
    /// Whether the board still says what is to do: until it was put away, or was done.
    bool isWanted() const;
    void noteDone();

private:
    bool is(const char* what) const;
    void set(const char* what, bool is) const;

    QString m_place;
};

} // namespace app

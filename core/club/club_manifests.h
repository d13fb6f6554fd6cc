#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <string>
#include <vector>

namespace core {

struct ClubState;
class ManifestRecord;
struct ManifestLine;
struct ManifestOwner;
struct PhasePoint;

/// What is asked of each boat and class (core/register/manifest_record.h). See Club for what holds of every
/// function.
class ClubManifests {
public:
    explicit ClubManifests(ClubState& state)
        : m_state(&state) {}

    /// What is asked now and was in every version. FileDamaged when a fact of it cannot be read.
    Result<ManifestRecord> read() const;
    /// Writes that line into the manifest of a class or as a boat's own difference: new, changed, or taken
    /// away with quantity 0. Refused as an import refuses it, with nothing written; no fact when it stands so
    /// already. A boat whose own line is like the class's differs no more, yet keeps it when the class
    /// changes. `seen`, when given, is what was asked when it was looked at: NotAllowed, with nothing
    /// written, when something else is asked by now. A line that comes anew, without `seen`, keeps the
    /// substitutes it had.
    Outcome changeLine(const ManifestOwner& owner, const ManifestLine& line, const std::string& by,
                       Moment moment, const ManifestLine* seen = nullptr);
    /// What may not be meant so when that line is asked of the owner (a kit type of which the club has no
    /// item), as an import of it would warn. Empty of a line that an import would refuse.
    std::vector<Error> warningsOfLine(const ManifestOwner& owner, const ManifestLine& line,
                                      CalendarDay today) const;
    /// Takes the boat's own line away: its class's holds again, and is followed when it changes. `seen` as
    /// above. NotFound: the boat has no line of its own for that kit type. Of a class that no boat has, whose
    /// lines cannot be changed here: takes its line away, as ClubRegister::remove does; NotAllowed when a
    /// boat has it by now.
    Outcome dropOwnLine(const ManifestOwner& owner, const ManifestLine& seen, const std::string& by,
                        Moment moment);
    /// The same for points. Without `seen` it is a new one; with another name or phase than `seen` the point
    /// is renamed in its place. BadInput: a point of that name is asked already. NotAllowed: a boat cannot
    /// rename its class's point, nor a class one that a boat of it has as its own.
    Outcome changePoint(const ManifestOwner& owner, const PhasePoint& point, const std::string& by,
                        Moment moment, const PhasePoint* seen = nullptr);
    /// Takes the owner's own point away; where it was a boat's difference, the class's holds again. NotFound:
    /// it is the class's, and a boat cannot leave that out.
    Outcome dropPoint(const ManifestOwner& owner, const PhasePoint& seen, const std::string& by,
                      Moment moment);

private:
    ClubState* m_state;
};

} // namespace core

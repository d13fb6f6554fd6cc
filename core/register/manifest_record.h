#pragma once

#include "core/base/instant.h"
#include "core/register/manifest.h"
#include "core/register/sheets.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// Whose manifest: that of a class of boat, or that of one boat with its own differences.
struct ManifestOwner {
    enum class Kind { BoatClass, Boat };
    Kind kind = Kind::BoatClass;
    std::string name; ///< any spelling

    bool operator==(const ManifestOwner&) const = default;
};

/// A manifest that held from one moment of the record until the next version.
struct ManifestVersion {
    std::string stamp; ///< of the last fact that made it
    Instant recordedAt = Instant::fromMillis(0);
    std::optional<Instant> at;           ///< when it was done, where the record says so; an import does not
    std::string by;                      ///< empty: the record names nobody, as of an import
    std::vector<ManifestChange> changes; ///< from the version before

    Instant since() const { return at.value_or(recordedAt); }
};

/// A row of the manifests, or of the boats, as one fact left it.
struct ManifestFact {
    std::string stamp;
    std::string machine;
    std::int64_t seq = 0;
    Instant recordedAt = Instant::fromMillis(0);
    std::optional<Instant> at;
    std::string by;
    SheetId sheet = SheetId::ManifestLines; ///< or Points, or Boats
    std::string key;
    int position = 0;
    Cells cells;
    bool isGone = false; ///< it took the row away
};

/// A check that was signed.
struct ManifestCheck {
    std::string stamp; ///< of its signature
    std::string boat;
    std::string phase; ///< "launch" or "return"
    std::string by;
    Instant at = Instant::fromMillis(0);
};

/// The manifests of a club through all its time. Holds values only. A moment of the record is a fact's stamp:
/// a check is judged by what had been recorded when it was signed, whatever the clocks said.
class ManifestRecord {
public:
    ManifestRecord() = default;
    /// Both by stamp, oldest first.
    ManifestRecord(std::vector<ManifestFact> facts, std::vector<ManifestCheck> checks);

    std::vector<std::string> classes() const;            ///< of today's boats, by name
    std::vector<std::string> classesWithoutBoat() const; ///< of today's lines and points alone, by name
    std::vector<std::string> boats() const;              ///< of today, by name
    std::vector<std::string> boatsOf(const std::string& boatClass) const; ///< today, by name
    Manifest now(const ManifestOwner& owner) const { return manifestIn(m_now, owner); }
    /// As it stood when the fact of that stamp had been recorded.
    Manifest asOf(const ManifestOwner& owner, const std::string& stamp) const;

    /// Oldest first. Facts that one machine recorded on end, for one person at one time, make one version:
    /// nothing, and so no check, came between them.
    std::vector<ManifestVersion> versionsOf(const ManifestOwner& owner) const;
    /// Checks of the boat, or of the class's boats of today, that were signed while `version` (one of
    /// `versions`) held; oldest first.
    std::vector<ManifestCheck> checksUnder(const ManifestOwner& owner,
                                           const std::vector<ManifestVersion>& versions,
                                           const ManifestVersion& version) const;

private:
    struct Row {
        int position = 0;
        Cells cells;
    };
    using Rows = std::map<std::string, Row>; ///< by key
    struct Tables {
        Rows lines, points, boats;
        void lay(const ManifestFact& fact);
    };

    static Manifest manifestIn(const Tables& tables, const ManifestOwner& owner);
    bool isOneActWithNext(std::size_t fact) const;

    std::vector<ManifestFact> m_facts;
    std::vector<ManifestCheck> m_checks;
    Tables m_now;
};

/// The newest of `versions` (oldest first) that is no younger than the day in this machine's time zone; null:
/// there was none yet.
const ManifestVersion* versionOn(const std::vector<ManifestVersion>& versions, CalendarDay day);

} // namespace core

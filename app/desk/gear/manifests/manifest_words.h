#pragma once

#include "app/desk/check/check_row.h"
#include "app/desk/gear/shared/plain_table.h"
#include "core/register/manifest_record.h"

#include <QString>

#include <vector>

namespace app {

// Manifests in a person's words.

/// What the page shows of one owner's manifest.
struct ManifestAnswer {
    core::ManifestOwner owner;
    core::ManifestRecord record;
    core::Manifest now;
    std::vector<core::ManifestVersion> versions; ///< oldest first
};

/// Makes the answer; takes a while in a big club.
ManifestAnswer answerOf(core::ManifestRecord record, core::ManifestOwner owner);

/// "Dabchick: 12 lines and 15 points; 3 differ from its class, inflatable."
QString summaryOf(const ManifestAnswer& answer);
/// "2", "2, not required", "2, or inflatable jacket"
QString inWords(const core::ManifestLine& line);
QString inWords(const core::BoatPoint& point); ///< "17 to 21 kPa", "60 to 300 s", "a look"
/// How the boat's own line differs; empty when it does not.
QString differenceOf(const core::AskedLine& line);

/// Tables of today's manifest, with what differs between boat and class in the last column.
std::vector<TableColumn> lineColumns(bool isOld);
std::vector<TableColumn> pointColumns(bool isOld);
std::vector<TableRow> lineRows(const ManifestAnswer& answer);
std::vector<TableRow> pointRows(const ManifestAnswer& answer);
/// Tables of an earlier version, with what is asked differently today in the last column.
std::vector<TableRow> lineRows(const core::Manifest& then, const core::Manifest& today);
std::vector<TableRow> pointRows(const core::Manifest& then, const core::Manifest& today);

/// Newest first; the key and code of a line are its version's stamp.
std::vector<CheckRow> versionLines(const ManifestAnswer& answer);
/// From when to when it held, who made it, and which checks were signed by it.
QString aboutVersion(const ManifestAnswer& answer, const core::ManifestVersion& version,
                     core::CalendarDay today);

} // namespace app

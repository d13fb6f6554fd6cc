#pragma once

#include "app/gui/widgets/list_row.h"
#include "app/gui/widgets/plain_table.h"
#include "core/register/manifest_record.h"

#include <QString>
#include <QStringList>

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
QString inWords(const core::BoatPoint& point); ///< "17 to 21 kPa", "1:00 to 5:00 min", "a look, not required"
QString kindInWords(core::PointKind kind);     ///< "a look", "a measure", "timed"
QString phaseInWords(const std::string& phase);
/// How the boat's own row differs; empty when it has none.
QString differenceOf(const core::AskedLine& line);
QString differenceOf(const core::AskedPoint& point);
/// A point's key in the table: its phase and name. A line's is its kit type.
QString keyOf(const core::AskedPoint& point);
/// The boats of the class shown that go on asking that thing by a row of their own; none for a boat.
QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedLine& line);
QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedPoint& point);

/// Tables of today's manifest, with what differs between boat and class in the last column.
std::vector<TableColumn> lineColumns(bool isOld);
std::vector<TableColumn> pointColumns(bool isOld);
std::vector<TableRow> lineRows(const ManifestAnswer& answer);
std::vector<TableRow> pointRows(const ManifestAnswer& answer);
/// Tables of an earlier version, with what is asked differently today in the last column.
std::vector<TableRow> lineRows(const core::Manifest& then, const core::Manifest& today);
std::vector<TableRow> pointRows(const core::Manifest& then, const core::Manifest& today);

/// Newest first; the key and code of a line are its version's stamp.
std::vector<ListRow> versionLines(const ManifestAnswer& answer);
/// From when to when it held, who made it, and which checks were signed by it.
QString aboutVersion(const ManifestAnswer& answer, const core::ManifestVersion& version,
                     core::CalendarDay today);

} // namespace app

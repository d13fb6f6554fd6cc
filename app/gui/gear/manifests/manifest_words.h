#pragma once

#include "core/register/manifest_record.h"

#include <QString>
#include <QStringList>

#include <utility>
#include <vector>

namespace app {

// Manifests in a person's words.

/// What the page shows of one owner's manifest.
struct ManifestAnswer {
    core::ManifestOwner owner;
    core::ManifestRecord record;
    core::Manifest now;
    std::vector<core::ManifestVersion> versions; ///< oldest first
    bool hasBoat = true; ///< false: a class that no boat has, such as an import brings
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
/// Its key in the table: of a line the kit type, of a point the phase and its name.
QString keyOf(const core::AskedLine& line);
QString keyOf(const core::AskedPoint& point);
/// "own", "removed"; empty when it does not differ.
QString wordOf(core::Difference difference);

/// The boats of the class shown, each with what it is asked; none for a boat.
std::vector<std::pair<QString, core::Manifest>> boatsOf(const ManifestAnswer& answer);
/// Whether both ask the same thing, however much of it.
bool isSame(const core::AskedLine& a, const core::AskedLine& b);
bool isSame(const core::AskedPoint& a, const core::AskedPoint& b);
/// The boats of the class shown that go on asking that thing by a row of their own; none for a boat.
QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedLine& line);
QStringList boatsWithOwn(const ManifestAnswer& answer, const core::AskedPoint& point);

} // namespace app

#pragma once

#include <QStringList>

class QComboBox;

namespace app {

class ClubThread;

/// Offers `all` (data: empty) and then the names, each once, in order; keeps what was chosen where it is
/// still offered.
void fillBox(QComboBox& box, const QString& all, QStringList names);
/// The club's places, read anew.
void fillWithPlaces(QComboBox& box, const QString& all, ClubThread& club);

} // namespace app

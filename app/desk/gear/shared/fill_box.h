#pragma once

#include <QStringList>

class QComboBox;

namespace app {

/// Offers `all` (data: empty) and then the names, each once, in order; keeps what was chosen where it is
/// still offered.
void fillBox(QComboBox& box, const QString& all, QStringList names);

} // namespace app

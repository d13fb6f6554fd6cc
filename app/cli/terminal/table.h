#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace app {

/// Rows in columns, left-aligned, two blanks between, indented by two; for a terminal with a fixed-width
/// font. Without rows the text is empty, without its heading too.
QString tableOf(const QStringList& heading, const std::vector<QStringList>& rows);

} // namespace app

#pragma once

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace app {

// A text of a club, a code, a file or a server on its way to a person, in the window, on a sheet or on the
// command line: whatever does not show itself but drives the page or the terminal (core::isUnseen) stands as
// `\x1b` or `\u202e`. What a text is kept as, or opened by, goes the other way: QString::fromStdString.

QString text(const std::string& utf8);
QString text(const QString& foreign);
QStringList texts(const std::vector<std::string>& utf8);

/// The same of a text of several lines, whose line ends stay.
QString textOfLines(const QString& lines);

} // namespace app

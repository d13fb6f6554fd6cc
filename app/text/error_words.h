#pragma once

#include <QString>

#include <optional>
#include <string>

namespace app {

// Core says in plain English what failed and what to do about it, and the command line prints that as it is.
// The window speaks other languages: here a sentence of core is known again by the table of error_table.h and
// said in the window's language, with the same names and numbers in it.

/// In the window's language; as it is when that is English, or when the table does not know it.
QString coreInWords(const std::string& english);

/// Nothing when the table does not know it. In English this gives the sentence back.
std::optional<QString> knownInWords(const QString& english);

} // namespace app

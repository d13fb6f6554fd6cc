#pragma once

#include <QString>

#include <vector>

namespace app {

/// An example register for a kind of boat: kit types with sizes and rules, a manifest, and points. Its rules
/// are examples, and each says so in its source.
struct Starter {
    QString name;  ///< "inflatable", as it is asked for
    QString title; ///< "an inflatable rescue boat with two aboard", in the language that is spoken
    QString about; ///< what is in it, a sentence
};

std::vector<Starter> starters();

/// Lays the CSV files of that starter into the folder, which is there. False: there is no such starter, or
/// the folder cannot be written.
bool writeStarter(const QString& name, const QString& folder);

} // namespace app

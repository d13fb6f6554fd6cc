#pragma once

#include <QString>

namespace app {

/// A sentence for somebody who fills in a form: where it names columns, choices or files of the register as
/// the command line and the CSV files spell them ("kit_type", "after_event", "sizes.csv"), it has the words
/// of the form. What is quoted in it stays as it was typed.
QString inWordsOfForms(const QString& sentence);

} // namespace app

#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace app {

// Small pieces of sentences, as a person writes them. None needs an application object.

QString inWords(core::CalendarDay day); ///< "1 March 2026"
/// "06:40 today", "06:40 yesterday", "06:40 on 12 March 2026", in the time zone of this machine.
QString inWords(core::Instant at, core::CalendarDay today);
QString codeInWords(const std::string& code); ///< "K7Q2 4RMX 1P"; another text as it is
QString numberInWords(double value);          ///< "18.5", "20": no zeros that say nothing
QString listed(const QStringList& words);     ///< "a, b and c"
QString listed(const std::vector<std::string>& words);
QString withCapital(const QString& sentence); ///< its first letter in upper case

/// The right form for `n`, with %n replaced. Give the two English forms through QT_TRANSLATE_N_NOOP("Words",
/// …): a translation may then have as many forms as its language.
QString counted(int n, const char* one, const char* many);

} // namespace app

#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/register/boat.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace app {

// Small pieces of sentences, as a person writes them. None needs an application object.

QString inWords(core::CalendarDay day);       ///< "1 March 2026"
QString inWords(const core::PartialDay& day); ///< "1 March 2026", "March 2026", "2026": as far as it is known
/// "06:40 today", "06:40 yesterday", "06:40 on 12 March 2026", in the time zone of this machine.
QString inWords(core::Instant at, core::CalendarDay today);
QString daysAgoInWords(int days);             ///< "9 days ago"; from 2 days on
QString timeInWords(core::Instant at);        ///< "06:40", in the time zone of this machine
QString secondsInWords(double seconds);       ///< "2:05" for 125 seconds
QString codeInWords(const std::string& code); ///< "K7Q2 4RMX 1P"; another text as it is
/// "18.5", "20": no zeros that say nothing, and at most so many decimals.
QString numberInWords(double value, int decimals = 3);
/// "18 to 22 kPa", "at least 1:00 min"; without the unit where it stands beside it already. Empty for a look,
/// and where there is no limit.
enum class WithUnit { No, Yes };
QString rangeInWords(const core::BoatPoint& point, WithUnit withUnit);
QString listed(const QStringList& words); ///< "a, b and c"
QString listed(const std::vector<std::string>& words);
/// "its tag is wearing out: print a new one"; empty where the print is good enough or nobody could tell.
/// `print`: what is left of it, 4 to 0.
QString wornTagInWords(std::optional<double> print);
QString withCapital(const QString& sentence); ///< its first letter in upper case

/// The right form for `n`, with %n replaced. Give the two English forms through QT_TRANSLATE_N_NOOP("Words",
/// …): a translation may then have as many forms as its language.
QString counted(int n, const char* one, const char* many);

} // namespace app

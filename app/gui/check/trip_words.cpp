#include "app/gui/check/trip_words.h"
#include "app/text/text.h"

#include "app/text/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QRegularExpression>
#include <QStringList>

namespace app {
namespace {

struct TripWordsText {
    Q_DECLARE_TR_FUNCTIONS(Trip)
};

QDateTime localOf(core::Instant at) {
    return QDateTime::fromMSecsSinceEpoch(at.millis());
}

QString timesInWords(const core::Operation& trip) {
    if (trip.left && trip.back)
        return TripWordsText::tr("%1 to %2").arg(timeInWords(*trip.left), timeInWords(*trip.back));
    if (trip.left) return TripWordsText::tr("left %1").arg(timeInWords(*trip.left));
    return trip.back ? TripWordsText::tr("back %1").arg(timeInWords(*trip.back)) : QString();
}

} // namespace

std::optional<core::Instant> timeOn(core::Instant day, const QString& typed) {
    static const QRegularExpression time(QStringLiteral("^([01]?[0-9]|2[0-3])[:.h]?([0-5][0-9])$"));
    const auto match = time.match(typed.trimmed());
    if (!match.hasMatch()) return std::nullopt;
    QDateTime at = localOf(day);
    at.setTime(QTime(match.captured(1).toInt(), match.captured(2).toInt()));
    return core::Instant::fromMillis(at.toMSecsSinceEpoch());
}

QString tripInWords(const core::Operation& trip) {
    QStringList parts;
    if (const QString times = timesInWords(trip); !times.isEmpty()) parts << times;
    if (!trip.people.empty()) parts << TripWordsText::tr("aboard: %1").arg(listed(trip.people));
    if (trip.hours) parts << TripWordsText::tr("engine %1 h").arg(numberInWords(*trip.hours));
    if (trip.launches > 1) parts << TripWordsText::tr("launched %1 times").arg(trip.launches);
    if (!trip.fuel.empty()) parts << TripWordsText::tr("fuel: %1").arg(text(trip.fuel));
    if (!trip.incidents.empty()) parts << text(trip.incidents);
    return parts.join(TripWordsText::tr(" · "));
}

} // namespace app

#include "app/gui/club/club_lock.h"

#include "app/gui/club/club_thread.h"
#include "core/base/instant.h"
#include "core/club/club_pins.h"
#include "core/record/pin.h"

#include <algorithm>
#include <limits>

namespace app {

ClubLock::ClubLock(ClubThread& club, QObject* parent)
    : QObject(parent)
    , m_club(club) {
    m_end.setSingleShot(true);
    connect(&m_end, &QTimer::timeout, this, &ClubLock::refresh);
}

void ClubLock::unlock(QObject* asker, const QString& person, std::shared_ptr<core::Pin> pin,
                      std::function<void(const core::Outcome&)> then) {
    m_club.ask(
        asker,
        [person = person.toStdString(), pin = std::move(pin)](core::Club& club) {
            return club.pins().unlock(person, *pin);
        },
        [this, then = std::move(then)](const core::Outcome& unlocked) {
            refresh();
            then(unlocked);
        });
}

void ClubLock::lock() {
    m_club.ask(
        this,
        [](core::Club& club) {
            club.pins().lock();
            return true;
        },
        [this](bool) { take({}, 0); });
}

void ClubLock::refresh() {
    m_club.ask(
        this,
        [](core::Club& club) {
            const auto unlocked = club.pins().unlocked();
            return std::pair(unlocked ? QString::fromStdString(unlocked->person) : QString(),
                             unlocked ? unlocked->until.millis() - core::Instant::now().millis() : 0);
        },
        [this](const std::pair<QString, std::int64_t>& read) { take(read.first, read.second); });
}

void ClubLock::take(const QString& person, qint64 millisLeft) {
    constexpr qint64 soonest = 200; // milliseconds
    const bool isOther = m_person != person;
    m_person = person;
    if (person.isEmpty())
        m_end.stop();
    else
        m_end.start(static_cast<int>(std::clamp<qint64>(millisLeft + soonest, soonest, 3'600'000)));
    if (isOther) emit changed();
}

} // namespace app

#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>
#include <QString>

#include "app/gui/club/club_thread.h"
#include "core/base/error.h"
#include "core/base/instant.h"
#include "core/club/club_exchange.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>

namespace app {

/// How it stands with the district's server.
struct HubNews {
    bool isJoined = false;                    ///< the file exchanges with one
    std::optional<core::Instant> exchanged{}; ///< the end of the last exchange that did not fail
    std::optional<core::Error> hindrance{};   ///< why the newest one failed
    std::int64_t waiting = 0;                 ///< facts there that come in when no check is being done
    core::CameIn cameIn{};                    ///< since the file was opened here
};

/// "Exchanged with the district 12:04 today.", "The district was not reached since …: working alone."; empty
/// where the file exchanges with none.
QString inWords(const HubNews& news, core::CalendarDay today);

/// Exchanges the open club's record with the district's server, on a thread of its own with a Club of its
/// own: each minute, and as soon as another machine has sent something. Nobody waits for it. GUI thread.
class HubWatch : public QObject {
    Q_OBJECT

public:
    explicit HubWatch(TimeSource time, QObject* parent = nullptr);
    /// A server that does not answer is not waited for.
    ~HubWatch() override;

    void watch(const std::filesystem::path& file); ///< that club from now on, from its beginning; empty: none
    void exchangeNow();                            ///< also after it was joined or left
    const HubNews& news() const { return m_news; }

signals:
    void changed(); ///< `news` is new
    void cameIn();  ///< something of it stands in the file now

private:
    struct Run;
    struct Report;
    void stop();
    void take(const Run* run, Report report);

    TimeSource m_time;
    std::filesystem::path m_file;
    std::shared_ptr<Run> m_run;
    HubNews m_news;
    bool m_isAgainWanted = false; ///< asked for while one was under way
};

} // namespace app

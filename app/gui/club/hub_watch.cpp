#include "app/gui/club/hub_watch.h"

#include "app/text/errors.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/club/club.h"
#include "core/club/club_hub.h"

#include <atomic>
#include <future>
#include <mutex>
#include <thread>

namespace app {
namespace {

using namespace std::chrono_literals;

constexpr auto exchangeEvery = 60s;
constexpr auto longestStop = 2s; ///< a line that is dead may keep its thread for minutes

std::string wordsOf(const core::NotReadyReason& reason) {
    return reasonOf(reason).toStdString();
}

} // namespace

/// What the thread tells of one moment.
struct HubWatch::Report {
    bool isJoined = false;
    std::optional<core::Instant> exchanged{};
    std::optional<core::Error> hindrance{};
    core::CameIn cameIn{};
    std::int64_t waiting = 0;
};

/// What the thread works with. It outlives the watch where a line keeps it.
struct HubWatch::Run {
    Run(std::filesystem::path of, TimeSource clock, HubWatch* teller)
        : file(std::move(of))
        , time(std::move(clock))
        , watch(teller) {}

    void work();
    void exchangeAlways(core::Club& club);
    void tell(Report report) {
        const std::lock_guard guard(mutex);
        if (!watch) return;
        auto* to = watch;
        QMetaObject::invokeMethod(to, [to, this, report = std::move(report)] { to->take(this, report); });
    }
    void leave() {
        const std::lock_guard guard(mutex);
        watch = nullptr;
    }

    const std::filesystem::path file;
    const TimeSource time;
    core::HubLink link;
    std::atomic<bool> isStopped = false;
    std::atomic<bool> isExchanging = false;
    std::promise<void> over;

private:
    std::mutex mutex;
    HubWatch* watch; ///< null: nobody is told any more
};

void HubWatch::Run::work() {
    try {
        auto club = core::Club::open(file);
        if (!club)
            tell({.hindrance = club.error()});
        else
            exchangeAlways(*club);
    } catch (const std::exception& thrown) {
        tell({.hindrance = core::errorOf(thrown)});
    }
    over.set_value();
}

void HubWatch::Run::exchangeAlways(core::Club& club) {
    if (!club.hub().place()) return tell({});
    tell({.isJoined = true, .exchanged = club.hub().lastExchanged()});
    while (!isStopped) {
        isExchanging = true;
        auto done = club.hub().exchange(link, time().today, wordsOf, core::TakingIn::GivesWay);
        isExchanging = false;
        if (!done && done.error().code == core::ErrorCode::HubNotJoined) return tell({}); // left meanwhile
        if (done)
            tell({.isJoined = true,
                  .exchanged = done->waiting > 0 ? club.hub().lastExchanged() : done->at,
                  .cameIn = std::move(done->cameIn),
                  .waiting = done->waiting});
        else
            tell({.isJoined = true, .exchanged = club.hub().lastExchanged(), .hindrance = done.error()});
        if (link.wait(exchangeEvery) == core::HubLink::Waited::Stopped) return;
    }
}

HubWatch::HubWatch(TimeSource time, QObject* parent)
    : QObject(parent)
    , m_time(std::move(time)) {}

HubWatch::~HubWatch() {
    stop();
    if (m_run) m_run->over.get_future().wait_for(longestStop);
}

void HubWatch::stop() {
    if (!m_run) return;
    m_run->isStopped = true;
    m_run->link.stop();
    m_run->leave();
}

void HubWatch::watch(const std::filesystem::path& file) {
    stop();
    m_run.reset();
    m_file = file;
    m_news = {};
    emit changed();
    if (!file.empty()) exchangeNow();
}

void HubWatch::exchangeNow() {
    m_isAgainWanted = m_run && m_run->isExchanging;
    if (m_file.empty() || m_isAgainWanted) return;
    stop(); // it waits, and ends by itself
    m_run = std::make_shared<Run>(m_file, m_time, this);
    std::thread([run = m_run] { run->work(); }).detach();
}

void HubWatch::take(const Run* run, Report report) {
    if (run != m_run.get()) return;
    m_news.isJoined = report.isJoined;
    m_news.exchanged = report.exchanged;
    m_news.hindrance = std::move(report.hindrance);
    m_news.waiting = report.waiting;
    const core::CameIn& in = report.cameIn;
    core::CameIn& all = m_news.cameIn;
    all.facts += in.facts;
    all.machines = std::max(all.machines, in.machines);
    all.checks += in.checks;
    all.sightings += in.sightings;
    all.changes += in.changes;
    all.lookAt.insert(all.lookAt.end(), in.lookAt.begin(), in.lookAt.end());
    emit changed();
    if (in.facts > 0) emit cameIn();
    if (m_isAgainWanted) exchangeNow();
}

QString inWords(const HubNews& news, core::CalendarDay today) {
    if (!news.isJoined) return {};
    const QString when = news.exchanged ? inWords(*news.exchanged, today) : QString();
    if (news.waiting > 0)
        return counted(
            static_cast<int>(news.waiting),
            QT_TRANSLATE_N_NOOP("Words", "%n fact of the district waits until no check is being done here."),
            QT_TRANSLATE_N_NOOP("Words", "%n facts of the district wait until no check is being done here."));
    if (!news.hindrance)
        return news.exchanged ? HubWatch::tr("Exchanged with the district %1.").arg(when)
                              : HubWatch::tr("Exchanging with the district…");
    if (news.hindrance->code == core::ErrorCode::HubNotReached)
        return news.exchanged
                   ? HubWatch::tr("The district was not reached since %1: working alone.").arg(when)
                   : HubWatch::tr("The district was not reached yet: working alone.");
    return HubWatch::tr("▲ Not exchanged with the district: %1.").arg(errorInWords(*news.hindrance));
}

} // namespace app

#include "app/gui/club/club_thread.h"

#include "core/exchange/csv_import.h"

#include <QTimer>

namespace app {
namespace {

using namespace std::chrono_literals;
constexpr auto lookEvery = 2s;

} // namespace

TimeSource machineTime() {
    return [] {
        const core::Instant now = core::Instant::now();
        return core::Moment{now, now.localDay()};
    };
}

ClubThread::ClubThread(QObject* parent)
    : QObject(parent)
    , m_worker(new QObject) {
    m_worker->moveToThread(&m_thread);
    m_thread.setObjectName("club");
    m_thread.start();
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, &ClubThread::lookAfterFile);
    timer->start(lookEvery);
}

/// A sync program may put another file in its place at any time, also while nobody records anything.
void ClubThread::lookAfterFile() {
    QMetaObject::invokeMethod(m_worker, [this] {
        if (!m_club) return;
        m_club->rest();
        if (!m_club->isInPlace()) QMetaObject::invokeMethod(this, [this] { emit fileReplaced(); });
    });
}

ClubThread::~ClubThread() {
    // A blocking job at the end of the queue: everything asked for before it has run by then.
    QMetaObject::invokeMethod(
        m_worker, [this] { m_club.reset(); }, Qt::BlockingQueuedConnection);
    m_worker->deleteLater();
    m_thread.quit();
    m_thread.wait();
}

void ClubThread::open(const std::filesystem::path& file, std::function<void(core::Outcome)> then) {
    // One file is never open twice: the system forgets the locks of both when one is closed.
    std::error_code none;
    const bool isSame = file == m_file || std::filesystem::equivalent(file, m_file, none);
    if (isSame) m_file.clear();
    QMetaObject::invokeMethod(m_worker, [this, file, isSame, then = std::move(then)] {
        if (isSame) m_club.reset();
        take(file, core::Club::open(file), then);
    });
}

void ClubThread::create(const std::filesystem::path& file, Make make, Made then) {
    QMetaObject::invokeMethod(m_worker, [this, file, make = std::move(make), then = std::move(then)] {
        auto made = std::make_shared<core::Result<core::ImportPlan>>(makeAndOpen(file, make));
        QMetaObject::invokeMethod(this, [this, file, made, then] {
            if (*made && (*made)->rejected.empty()) m_file = file;
            then(*made);
        });
    });
}

core::Result<core::ImportPlan> ClubThread::makeAndOpen(const std::filesystem::path& file, const Make& make) {
    try {
        auto made = make();
        if (!made || !made->rejected.empty()) return made;
        auto opened = core::Club::open(file);
        if (!opened) return opened.error();
        m_club = std::make_unique<core::Club>(std::move(opened).value());
        return made;
    } catch (const std::exception& thrown) {
        return core::errorOf(thrown);
    }
}

/// What was asked of the club that was open until now is still asked of that one.
void ClubThread::take(const std::filesystem::path& file, core::Result<core::Club> opened,
                      const std::function<void(core::Outcome)>& then) {
    if (!opened) {
        QMetaObject::invokeMethod(this, [then, error = opened.error()] { then(error); });
        return;
    }
    auto club = std::make_shared<std::unique_ptr<core::Club>>(
        std::make_unique<core::Club>(std::move(opened).value()));
    QMetaObject::invokeMethod(this, [this, file, club, then] {
        m_file = file;
        QMetaObject::invokeMethod(m_worker, [this, club] { m_club = std::move(*club); });
        then(core::Done{});
    });
}

} // namespace app

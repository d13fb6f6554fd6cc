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
    m_file = file;
    QMetaObject::invokeMethod(m_worker, [this, file, then = std::move(then)] {
        m_club.reset();
        take(core::Club::open(file), then);
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

void ClubThread::take(core::Result<core::Club> opened, const std::function<void(core::Outcome)>& then) {
    core::Outcome outcome = core::Done{};
    if (opened)
        m_club = std::make_unique<core::Club>(std::move(opened).value());
    else
        outcome = opened.error();
    QMetaObject::invokeMethod(this, [then, outcome] { then(outcome); });
}

} // namespace app

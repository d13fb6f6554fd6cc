#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/base/store_failure.h"
#include "core/club/club.h"

#include <QPointer>
#include <QString>
#include <QThread>

#include <filesystem>
#include <functional>
#include <memory>
#include <type_traits>
#include <utility>

namespace core {
class Pin;
struct ImportPlan;
} // namespace core

namespace app {

/// Says when something is done. Tests and pictures give a fixed one.
using TimeSource = std::function<core::Moment()>;
TimeSource machineTime();

/// A club file on a thread of its own, so that a slow disk never holds up the window.
///
/// Jobs run one after the other, in the order they were asked for. The destructor lets those that were asked
/// for finish: nothing that a person did is dropped.
class ClubThread : public QObject {
    Q_OBJECT

public:
    explicit ClubThread(QObject* parent = nullptr);
    ~ClubThread() override;

    /// Opens a file; `then` runs on the caller's thread. Replaces the open one.
    void open(const std::filesystem::path& file, std::function<void(core::Outcome)> then);
    /// Makes that file by `make`, on the club's thread, and opens it in place of the open one. Where it is
    /// refused, or rows are rejected, the open one stays.
    using Make = std::function<core::Result<core::ImportPlan>()>;
    using Made = std::function<void(const core::Result<core::ImportPlan>&)>;
    void create(const std::filesystem::path& file, Make make, Made then);

    /// The file that was opened or made last; empty while there was none. GUI thread.
    const std::filesystem::path& file() const { return m_file; }

    /// Runs `job` on the club's thread, then `then` with what it returned, on the GUI thread; `then` is
    /// dropped when `context` is gone by then. Only while a club is open. A job that throws has no answer:
    /// `failed` tells why.
    template <class Job, class Then>
    void ask(QObject* context, Job job, Then then) {
        QMetaObject::invokeMethod(m_worker, [this, asker = QPointer<QObject>(context), job = std::move(job),
                                             then = std::move(then)]() mutable {
            if (!m_club) return;
            try {
                auto answer = std::make_shared<std::invoke_result_t<Job, core::Club&>>(job(*m_club));
                // The asker is looked at on the GUI thread only, where it lives and dies.
                QMetaObject::invokeMethod(this, [asker, answer, then = std::move(then)]() mutable {
                    if (asker) then(std::move(*answer));
                });
            } catch (const std::exception& thrown) {
                QMetaObject::invokeMethod(this,
                                          [this, error = core::errorOf(thrown)] { emit failed(error); });
            }
        });
    }

    /// Whoever signed a check says so.
    void noteSigned() { emit checkSigned(); }

    /// Whoever signs has to prove it by a PIN; `sign` is given it.
    using SignWith = std::function<void(std::shared_ptr<core::Pin>)>;
    void askForSignersPin(QObject* asker, const QString& person, const core::Error& why,
                          const SignWith& sign) {
        emit signersPinWanted(asker, person, why, sign);
    }

signals:
    void signersPinWanted(QObject* asker, const QString& person, const core::Error& why,
                          const SignWith& sign);
    void checkSigned();                    ///< a check of any kind, and its signature is on disk
    void failed(const core::Error& error); ///< the disk, or a record of the file
    void fileReplaced(); ///< the file is no longer at its path: nothing is recorded any more

private:
    void lookAfterFile();
    void take(core::Result<core::Club> opened, const std::function<void(core::Outcome)>& then);
    core::Result<core::ImportPlan> makeAndOpen(const std::filesystem::path& file, const Make& make);

    std::filesystem::path m_file;
    QThread m_thread;
    QObject* m_worker = nullptr;        ///< lives on m_thread; jobs are its events
    std::unique_ptr<core::Club> m_club; ///< touched on m_thread only
};

} // namespace app

#include "app/gui/club/club_copies.h"

#include "app/gui/club/copy_names.h"
#include "app/gui/club/copy_settings.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/club/club.h"
#include "core/club/club_copy.h"
#include "core/club/club_pins.h"
#include "core/club/club_record.h"
#include "core/record/pin.h"

#include <QWidget>

namespace app {
namespace {

/// The oldest go when there are more than are kept. What cannot be removed is left: the copy is made.
void removeOld(const std::filesystem::path& folder, const std::string& origin) {
    std::error_code unknown;
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder, unknown))
        if (entry.symlink_status(unknown).type() == std::filesystem::file_type::regular)
            names.push_back(entry.path().filename().string());
    for (const std::string& name : copiesToRemove(names, origin))
        std::filesystem::remove(folder / name, unknown);
}

/// By a reader of its own, so that it is made also when the window is closed meanwhile.
core::Outcome copyInto(const std::filesystem::path& folder, const std::filesystem::path& file,
                       core::Instant at) {
    std::optional<core::ClubOrigin> origin;
    try {
        const auto club = core::Club::open(file, core::Club::Access::ReadOnly);
        if (!club) return club.error();
        origin = club->record().origin();
    } catch (const std::exception& thrown) {
        return core::errorOf(thrown);
    }
    if (!origin) return core::Done{};
    const auto copied = core::copyClub(file, folder / copyName(file, origin->fact, at), true);
    if (!copied) return copied.error();
    CopySettings(file).setNewest(at);
    // Older copies may be better than one of a damaged record.
    if (!copied->problems.empty())
        return core::Error{core::ErrorCode::RecordDamaged, {}, file.string(), {copied->problems.front()}};
    removeOld(folder, origin->fact);
    return core::Done{};
}

} // namespace

ClubCopies::ClubCopies(ClubThread& club, Choosers choosers, TimeSource time, QWidget* window)
    : QObject(window)
    , m_club(club)
    , m_choosers(std::move(choosers))
    , m_time(std::move(time))
    , m_window(window)
    , m_worker(new QObject) {
    m_worker->moveToThread(&m_thread);
    m_thread.setObjectName("copies");
    m_thread.start();
    connect(&m_club, &ClubThread::checkSigned, this, &ClubCopies::copyAfterCheck);
}

ClubCopies::~ClubCopies() {
    QMetaObject::invokeMethod(
        m_worker, [] {}, Qt::BlockingQueuedConnection); // behind what was begun
    m_worker->deleteLater();
    m_thread.quit();
    m_thread.wait();
}

template <class Job, class Then>
void ClubCopies::run(Job job, Then then) {
    QMetaObject::invokeMethod(m_worker, [this, job = std::move(job), then = std::move(then)] {
        auto outcome = job();
        QMetaObject::invokeMethod(this, [then, outcome = std::move(outcome)] { then(outcome); });
    });
}

bool ClubCopies::isOpen() {
    if (!m_club.file().empty()) return true;
    emit said(tr("Open a club file first."), true);
    return false;
}

void ClubCopies::backUp() {
    if (!isOpen()) return;
    const std::filesystem::path file = m_club.file();
    const core::Moment now = m_time();
    const QString proposed = QStringLiteral("%1 %2.tholepin")
                                 .arg(QString::fromStdString(file.stem().string()), text(now.today.iso()));
    QString to = fileToSave(m_choosers, m_window, proposed);
    if (to.isEmpty()) return;
    run([file, to] { return core::copyClub(file, to.toStdString(), true); },
        [this, file, to, at = now.at](const core::Result<core::Verification>& found) {
            if (!found) return emit said(errorSentence(found.error()), true);
            CopySettings(file).setNewest(at);
            if (m_failedFor == file) m_failed.clear();
            emit changed();
            if (found->problems.empty())
                emit said(tr("Backed up, and looked through: %1").arg(text(to)), false);
            else
                emit said(tr("Backed up to %1, but the record has a fault: %2.")
                              .arg(text(to), errorInWords(found->problems.front())),
                          true);
        });
}

void ClubCopies::restore() {
    const QString from = m_choosers.openCopy ? m_choosers.openCopy(m_window) : QString();
    if (from.isEmpty()) return;
    const QString to = m_choosers.newClub ? m_choosers.newClub(m_window) : QString();
    if (to.isEmpty()) return;
    restoreBy(from, to, {}, nullptr);
}

namespace {

struct TriedRestore {
    core::Result<core::Verification> found;
    std::vector<std::string> officers; ///< whose PIN is wanted; empty: nobody's
};

TriedRestore triedRestore(const std::string& from, const std::string& to, const std::string& person,
                          const core::Pin* pin) {
    TriedRestore tried{core::restoreClub(from, to, person, pin), {}};
    if (tried.found) return tried;
    const core::ErrorCode code = tried.found.error().code;
    if (code == core::ErrorCode::PinNeeded || code == core::ErrorCode::PinWrong)
        if (const auto backup = core::Club::open(from, core::Club::Access::ReadOnly))
            tried.officers = backup->pins().officers();
    return tried;
}

} // namespace

void ClubCopies::restoreBy(const QString& from, const QString& to, const QString& person,
                           const std::shared_ptr<core::Pin>& pin) {
    const auto restoreIt = [from, to, person, pin] {
        return triedRestore(from.toStdString(), to.toStdString(), person.toStdString(), pin.get());
    };
    run(restoreIt, [this, from, to, person](const TriedRestore& tried) {
        if (!tried.officers.empty())
            return emit pinWanted(
                texts(tried.officers), person, tried.found.error(),
                [this, from, to](const QString& by, const std::shared_ptr<core::Pin>& given) {
                    restoreBy(from, to, by, given);
                });
        if (!tried.found) return emit said(errorSentence(tried.found.error()), true);
        emit restored(to);
        emit said(tr("Restored from %1. What was recorded after that backup is not in it.").arg(text(from)),
                  false);
    });
}

void ClubCopies::chooseFolder() {
    if (!isOpen()) return;
    const QString folder = m_choosers.copyFolder ? m_choosers.copyFolder(m_window) : QString();
    if (folder.isEmpty()) return;
    CopySettings(m_club.file()).setFolder(folder);
    m_failed.clear();
    emit changed();
    emit said(tr("After each signed check a copy goes to %1; the last %2 are kept.")
                  .arg(text(folder))
                  .arg(copiesKept),
              false);
}

void ClubCopies::endCopies() {
    if (!isOpen()) return;
    CopySettings(m_club.file()).setFolder({});
    m_failed.clear();
    emit changed();
    emit said(tr("No more copies are made after checks. Those in the folder stay."), false);
}

bool ClubCopies::isCopying() const {
    return !m_club.file().empty() && !CopySettings(m_club.file()).folder().isEmpty();
}

QString ClubCopies::reminder(std::optional<core::Instant> began, core::CalendarDay today) const {
    if (m_club.file().empty()) return {};
    if (!m_failed.isEmpty() && m_failedFor == m_club.file())
        return tr("The copy after the last check failed. %1").arg(m_failed);
    return copyReminder(CopySettings(m_club.file()).newest(), began, today);
}

void ClubCopies::copyAfterCheck() {
    const std::filesystem::path file = m_club.file();
    const std::string folder = CopySettings(file).folder().toStdString();
    if (folder.empty()) return;
    run([file, folder, at = m_time().at] { return copyInto(folder, file, at); },
        [this, file](const core::Outcome& copied) {
            m_failedFor = file;
            m_failed = copied ? QString() : errorSentence(copied.error());
            emit changed();
        });
}

} // namespace app

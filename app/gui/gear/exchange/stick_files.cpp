#include "app/gui/gear/exchange/stick_files.h"

#include "app/gui/club/copy_names.h"
#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/club/club.h"
#include "core/club/club_record.h"

#include <QDateTime>
#include <QFileInfo>

#include <algorithm>

namespace app {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t mostOnAStick = 20; ///< each is opened and read

bool isClubFile(const fs::directory_entry& entry) {
    std::error_code unknown;
    const std::string name = entry.path().filename().string();
    return entry.is_regular_file(unknown) && entry.path().extension() == ".tholepin" && name.front() != '.' &&
           !isCopyName(name);
}

void gather(const fs::path& folder, bool alsoBeneath, std::vector<fs::path>& into) {
    std::error_code unknown;
    for (fs::directory_iterator at(folder, unknown), end; !unknown && at != end; at.increment(unknown)) {
        if (into.size() == mostOnAStick) return;
        std::error_code unreadable;
        if (isClubFile(*at))
            into.push_back(at->path());
        else if (alsoBeneath && at->is_directory(unreadable) && !at->is_symlink(unreadable))
            gather(at->path(), false, into);
    }
}

FoundFile looked(const fs::path& file, const fs::path& stick, const std::string& origin) {
    FoundFile found{FoundFile::Kind::OfAnotherClub, file, stick};
    const QDateTime written = QFileInfo(QString::fromStdString(file.string())).lastModified();
    if (written.isValid()) found.written = core::Instant::fromMillis(written.toMSecsSinceEpoch());
    try {
        const auto club = core::Club::open(file, core::Club::Access::ReadOnly);
        if (!club) {
            found.error = club.error();
        } else if (const auto theirs = club->record().origin(); theirs && theirs->fact == origin) {
            found.kind = FoundFile::Kind::OfThisClub;
        }
    } catch (const std::exception& thrown) {
        found.error = core::errorOf(thrown);
    }
    if (found.error)
        found.kind = found.error->kind() == core::ErrorKind::NotAClubFile ? FoundFile::Kind::NoClubFile
                                                                          : FoundFile::Kind::Unreadable;
    return found;
}

} // namespace

fs::path freeName(const fs::path& folder, const fs::path& own) {
    std::error_code unknown;
    fs::path name = folder / own.filename();
    for (int number = 2; fs::exists(fs::symlink_status(name, unknown)); ++number)
        name = folder / (own.stem().string() + ' ' + std::to_string(number) + own.extension().string());
    return name;
}

std::vector<FoundFile> filesOnSticks(const QStringList& sticks, const fs::path& own,
                                     const std::string& origin) {
    std::vector<FoundFile> all;
    for (const QString& each : sticks) {
        const fs::path stick = each.toStdString();
        std::vector<fs::path> files;
        gather(stick, true, files);
        std::sort(files.begin(), files.end());
        bool hasOurs = false;
        for (const fs::path& file : files) {
            std::error_code unknown;
            const bool isOwn = fs::equivalent(file, own, unknown);
            if (!isOwn) all.push_back(looked(file, stick, origin));
            hasOurs = hasOurs || isOwn || all.back().kind == FoundFile::Kind::OfThisClub;
        }
        if (!hasOurs) all.push_back({FoundFile::Kind::NoneYet, freeName(stick, own), stick});
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const FoundFile& a, const FoundFile& b) { return a.kind < b.kind; });
    return all;
}

} // namespace app

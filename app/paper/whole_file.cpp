#include "app/paper/whole_file.h"

#include "core/base/error_code.h"

#include <QFile>
#include <QSaveFile>

#include <algorithm>
#include <array>

namespace app {
namespace {

using core::ErrorCode;

ErrorCode codeOf(Paper paper) {
    switch (paper) {
    case Paper::Sheet:
        return ErrorCode::SheetNotSaved;
    case Paper::Picture:
        return ErrorCode::PictureNotSaved;
    case Paper::File:
        break;
    }
    return ErrorCode::FileNotSaved;
}

core::Error faultOf(const QSaveFile& out, Paper paper) {
    return {codeOf(paper), {out.errorString().toStdString()}, out.fileName().toStdString()};
}

/// By how it begins: a database of SQLite, its rollback journal or its write-ahead log (SQLite's file format,
/// sections 1.3, 3 and 4.1).
bool isOfDatabase(const QString& file) {
    static const std::array beginnings{QByteArray("SQLite format 3\0", 16),
                                       QByteArray("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7", 8),
                                       QByteArray("\x37\x7f\x06\x82", 4), QByteArray("\x37\x7f\x06\x83", 4)};
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) return false;
    const QByteArray begins = in.read(16);
    return std::any_of(beginnings.begin(), beginnings.end(),
                       [&](const QByteArray& each) { return begins.startsWith(each); });
}

/// What SQLite would take for the journal of a database that is there.
bool isBesideDatabase(const QString& file) {
    return std::ranges::any_of(std::array{"-journal", "-wal", "-shm"}, [&](const char* end) {
        return file.endsWith(QLatin1String(end)) &&
               isOfDatabase(file.chopped(static_cast<int>(qstrlen(end))));
    });
}

core::Outcome mayStandAt(const std::filesystem::path& file) {
    const QString name = QString::fromStdString(file.string());
    if (isBesideDatabase(name)) return core::Error{ErrorCode::OutputIsClub, {}, file.string()};
    std::error_code unknown;
    const auto status = std::filesystem::status(file, unknown); // of what a link leads to
    if (!std::filesystem::exists(status)) return core::Done{};
    if (!std::filesystem::is_regular_file(status))
        return core::Error{ErrorCode::OutputNotAFile, {}, file.string()};
    if (isOfDatabase(name)) return core::Error{ErrorCode::OutputIsClub, {}, file.string()};
    return core::Done{};
}

} // namespace

core::Outcome canWriteWholeFile(const std::filesystem::path& file, Paper paper) {
    if (auto may = mayStandAt(file); !may) return may;
    QSaveFile out(QString::fromStdString(file.string()));
    if (!out.open(QIODevice::WriteOnly)) return faultOf(out, paper);
    out.cancelWriting();
    return core::Done{};
}

core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes, Paper paper) {
    if (auto may = mayStandAt(file); !may) return may;
    QSaveFile out(QString::fromStdString(file.string()));
    if (out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit())
        return core::Done{};
    return faultOf(out, paper);
}

} // namespace app

#include "app/paper/whole_file.h"

#include "core/base/database_file.h"
#include "core/base/error_code.h"

#include <QSaveFile>

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

core::Outcome mayStandAt(const std::filesystem::path& file) {
    std::error_code unknown;
    const auto status = std::filesystem::status(file, unknown); // of what a link leads to
    if (std::filesystem::exists(status) && !std::filesystem::is_regular_file(status))
        return core::Error{ErrorCode::OutputNotAFile, {}, file.string()};
    if (core::isOfDatabase(file)) return core::Error{ErrorCode::OutputIsClub, {}, file.string()};
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

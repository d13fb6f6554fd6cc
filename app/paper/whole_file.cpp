#include "app/paper/whole_file.h"

#include "core/base/error_code.h"

#include <QSaveFile>

namespace app {
namespace {

core::Error faultOf(const QSaveFile& out, Paper paper) {
    const auto code = paper == Paper::Sheet ? core::ErrorCode::SheetNotSaved : core::ErrorCode::FileNotSaved;
    return {code, {out.errorString().toStdString()}, out.fileName().toStdString()};
}

} // namespace

core::Outcome canWriteWholeFile(const std::filesystem::path& file, Paper paper) {
    QSaveFile out(QString::fromStdString(file.string()));
    if (!out.open(QIODevice::WriteOnly)) return faultOf(out, paper);
    out.cancelWriting();
    return core::Done{};
}

core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes, Paper paper) {
    QSaveFile out(QString::fromStdString(file.string()));
    if (out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit())
        return core::Done{};
    return faultOf(out, paper);
}

} // namespace app

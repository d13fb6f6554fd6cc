#include "app/paper/whole_file.h"

#include <QSaveFile>

namespace app {
namespace {

core::Error faultOf(const QSaveFile& out, const std::string& what) {
    return {core::ErrorKind::DiskFailed,
            "the " + what + " cannot be written: " + out.errorString().toStdString(),
            out.fileName().toStdString(), "choose another place, or make room"};
}

} // namespace

core::Outcome canWriteWholeFile(const std::filesystem::path& file, const std::string& what) {
    QSaveFile out(QString::fromStdString(file.string()));
    if (!out.open(QIODevice::WriteOnly)) return faultOf(out, what);
    out.cancelWriting();
    return core::Done{};
}

core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes,
                             const std::string& what) {
    QSaveFile out(QString::fromStdString(file.string()));
    if (out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit())
        return core::Done{};
    return faultOf(out, what);
}

} // namespace app

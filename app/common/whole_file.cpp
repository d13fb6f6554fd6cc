#include "app/common/whole_file.h"

#include <QSaveFile>

namespace app {

core::Outcome writeWholeFile(const std::filesystem::path& file, const QByteArray& bytes,
                             const std::string& what) {
    QSaveFile out(QString::fromStdString(file.string()));
    if (out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size() && out.commit())
        return core::Done{};
    return core::Error{core::ErrorKind::DiskFailed,
                       "the " + what + " cannot be written: " + out.errorString().toStdString(),
                       file.string(), "choose another place, or make room"};
}

} // namespace app

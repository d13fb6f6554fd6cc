#include "tests/scanner/reader/scored_frames.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include <ctime>

namespace scored {

std::optional<QJsonArray> framesIn(const QString& folder, int most) {
    QFile file(folder + "/truth.json");
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    QJsonArray frames = QJsonDocument::fromJson(file.readAll()).object()["frames"].toArray();
    while (frames.size() > most)
        frames.removeLast();
    return frames;
}

QImage pictureOf(const QString& folder, const QJsonObject& frame) {
    return QImage(folder + "/" + frame["file"].toString()).convertToFormat(QImage::Format_Grayscale8);
}

scanner::GreyView viewOf(const QImage& image) {
    return {image.constBits(), image.width(), image.height(), static_cast<int>(image.bytesPerLine()), 1};
}

double cpuMilliseconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) * 1e-6;
}

} // namespace scored

#include "tests/scanner/reader/read_apart.h"

#include "tests/scanner/reader/scored_frames.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include <cstdio>
#include <cstdlib>
#include <sys/wait.h>
#include <unistd.h>

namespace scored {
namespace {

QJsonObject outcomeOf(const QString& folder, const QJsonObject& frame, const TextReader& reader) {
    const QImage image = pictureOf(folder, frame);
    const double start = cpuMilliseconds();
    const Texts texts = reader(viewOf(image));
    QJsonObject outcome{{"ms", cpuMilliseconds() - start}, {"height", image.height()}};
    QJsonObject told;
    for (const auto& [text, howRead] : texts)
        told[QString::fromStdString(text)] = static_cast<int>(howRead);
    outcome["texts"] = told;
    return outcome;
}

FrameOutcome fromJson(const QJsonObject& object) {
    FrameOutcome outcome{{}, object["height"].toInt(), object["ms"].toDouble(), false};
    const QJsonObject told = object["texts"].toObject();
    for (auto it = told.begin(); it != told.end(); ++it)
        outcome.texts.emplace(it.key().toStdString(), static_cast<scanner::HowRead>(it->toInt()));
    return outcome;
}

/// In the child: one line of JSON a frame into the pipe; does not return.
[[noreturn]] void readFrom(qsizetype first, const QString& folder, const QJsonArray& frames,
                           const TextReader& reader, int pipeEnd) {
    for (qsizetype i = first; i < frames.size(); ++i) {
        const QByteArray line =
            QJsonDocument(outcomeOf(folder, frames[i].toObject(), reader)).toJson(QJsonDocument::Compact) +
            '\n';
        if (write(pipeEnd, line.constData(), static_cast<std::size_t>(line.size())) != line.size()) break;
    }
    _exit(0);
}

} // namespace

std::vector<FrameOutcome> readApart(const QString& folder, const QJsonArray& frames,
                                    const TextReader& reader) {
    std::vector<FrameOutcome> outcomes;
    std::fflush(nullptr); // or the child would print it again
    while (static_cast<qsizetype>(outcomes.size()) < frames.size()) {
        int ends[2];
        if (pipe(ends) != 0) std::abort();
        const pid_t child = fork();
        if (child < 0) std::abort();
        if (child == 0) readFrom(static_cast<qsizetype>(outcomes.size()), folder, frames, reader, ends[1]);
        close(ends[1]);
        QFile lines;
        if (!lines.open(ends[0], QIODevice::ReadOnly, QFileDevice::AutoCloseHandle)) std::abort();
        for (QByteArray line = lines.readLine(); line.endsWith('\n'); line = lines.readLine())
            outcomes.push_back(fromJson(QJsonDocument::fromJson(line).object()));
        int status = 0;
        waitpid(child, &status, 0);
        if (static_cast<qsizetype>(outcomes.size()) < frames.size()) outcomes.push_back({{}, 0, 0, true});
    }
    return outcomes;
}

} // namespace scored

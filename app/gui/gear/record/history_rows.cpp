#include "app/gui/gear/record/history_rows.h"

#include "app/text/history_words.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>

namespace app {
namespace {

struct HistoryRowsText {
    Q_DECLARE_TR_FUNCTIONS(HistoryWords)
};

Mark markOf(const core::HistoryLine& line, const QJsonObject& body) {
    const QString state = body["set"].toObject()["state"].toString();
    if (!state.isEmpty() && state != "serviceable") return Mark::Look;
    if (line.kind != "check-signed") return Mark::NotAsked;
    return body["answer"].toObject()["outcome"].toString() == "incomplete" ? Mark::Look : Mark::Found;
}

QString whereInWords(const core::HistoryLine& line, core::CalendarDay today) {
    QString words = inWords(line.at.value_or(line.recordedAt), today);
    if (!line.by.empty()) words += HistoryRowsText::tr(", by %1").arg(text(line.by));
    return HistoryRowsText::tr("%1 · number %2 of machine %3")
        .arg(withCapital(words))
        .arg(line.seq)
        .arg(text(line.machine).left(8));
}

} // namespace

std::vector<ListRow> linesOf(const std::vector<core::HistoryLine>& history, core::CalendarDay today) {
    std::vector<ListRow> rows;
    for (auto line = history.rbegin(); line != history.rend(); ++line) {
        const QJsonObject body = QJsonDocument::fromJson(QByteArray::fromStdString(line->body)).object();
        const Mark mark = markOf(*line, body);
        rows.push_back(plainRow(QStringLiteral("%1/%2").arg(text(line->machine)).arg(line->seq), mark,
                                mark == Mark::Look ? HistoryRowsText::tr("look") : QString(),
                                withCapital(inWords(*line)), whereInWords(*line, today)));
        rows.back().remarkIsLook = false;
    }
    return rows;
}

} // namespace app

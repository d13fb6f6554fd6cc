#include "app/gui/gear/log/log_words.h"

#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct LogWordsText {
    Q_DECLARE_TR_FUNCTIONS(ClubLog)
};

bool stops(const LoggedEntry& logged) {
    return !logged.entry.closed && logged.entry.severity == core::Severity::Stop;
}

QString written(const core::LogEntry& entry) {
    return entry.by.empty() ? inWords(entry.day)
                            : LogWordsText::tr("%1, by %2").arg(inWords(entry.day), text(entry.by));
}

ListRow lineOf(const LoggedEntry& logged) {
    const core::LogEntry& entry = logged.entry;
    QString remark = LogWordsText::tr("%1 · %2").arg(aboutInWords(logged), written(entry));
    if (stops(logged)) remark += LogWordsText::tr(" · stops it until it is closed");
    if (entry.closed)
        remark += LogWordsText::tr("\nClosed %1: %2").arg(inWords(*entry.closed), text(entry.closing));
    const Mark mark = entry.closed ? Mark::Found : stops(logged) ? Mark::Look : Mark::StillToFind;
    const QString word = entry.closed ? LogWordsText::tr("closed") : LogWordsText::tr("open");
    ListRow row = plainRow(text(entry.id), mark, word, text(entry.text), remark);
    row.isPressable = true;
    return row;
}

} // namespace

QString aboutInWords(const LoggedEntry& logged) {
    if (!logged.entry.boat.empty()) return text(logged.entry.boat);
    return QStringLiteral("%1 %2").arg(text(logged.kitType), codeInWords(logged.entry.item.tag));
}

QString summaryOf(const std::vector<LoggedEntry>& log) {
    const auto open = static_cast<int>(
        std::count_if(log.begin(), log.end(), [](const LoggedEntry& each) { return !each.entry.closed; }));
    const auto stopping = static_cast<int>(std::count_if(log.begin(), log.end(), stops));
    if (open == 0) return LogWordsText::tr("No entry is open.");
    const QString words = counted(open, QT_TRANSLATE_N_NOOP("Words", "%n entry open"),
                                  QT_TRANSLATE_N_NOOP("Words", "%n entries open"));
    return stopping ? LogWordsText::tr("%1, %2 of them stopping a boat or item.").arg(words).arg(stopping)
                    : LogWordsText::tr("%1.").arg(words);
}

std::vector<ListRow> linesOf(const std::vector<LoggedEntry>& log) {
    std::vector<LoggedEntry> ordered = log;
    std::stable_sort(ordered.begin(), ordered.end(), [](const LoggedEntry& a, const LoggedEntry& b) {
        const auto rank = [](const LoggedEntry& each) { return each.entry.closed ? 2 : stops(each) ? 0 : 1; };
        return rank(a) < rank(b);
    });
    std::vector<ListRow> rows;
    const auto firstClosed = std::find_if(ordered.begin(), ordered.end(), [](const LoggedEntry& each) {
        return each.entry.closed.has_value();
    });
    const auto add = [&](const QString& key, const QString& title, auto from, auto to) {
        if (from == to) return;
        rows.push_back(headingRow(key, title, QString::number(to - from)));
        for (auto each = from; each != to; ++each)
            rows.push_back(lineOf(*each));
    };
    add("open", LogWordsText::tr("open"), ordered.begin(), firstClosed);
    add("closed", LogWordsText::tr("closed"), firstClosed, ordered.end());
    return rows;
}

} // namespace app

#include "app/common/printed_tags.h"

#include "app/common/words.h"

#include <QRegularExpression>

#include <algorithm>

namespace app {

std::string printedTag(const PrintedTags& tags, const std::string& code) {
    const auto found = tags.find(code);
    return found == tags.end() ? code : found->second;
}

std::string itemOfPrintedTag(const PrintedTags& tags, const std::string& tag) {
    const auto found =
        std::find_if(tags.begin(), tags.end(), [&](const auto& each) { return each.second == tag; });
    return found == tags.end() ? tag : found->first;
}

QString inPrintedTags(QString sentence, const PrintedTags& tags) {
    if (tags.empty()) return sentence;
    static const QRegularExpression code(QStringLiteral("\\bK[0-9A-Z]{3} [0-9A-Z]{4} [0-9A-Z]{2}\\b"));
    for (auto match = code.match(sentence); match.hasMatch();) {
        const std::string first = match.captured().remove(QLatin1Char(' ')).toStdString();
        // Grouped codes are all of one length, so the next one is looked for behind this one.
        sentence.replace(match.capturedStart(), match.capturedLength(), codeInWords(printedTag(tags, first)));
        match = code.match(sentence, match.capturedEnd());
    }
    return sentence;
}

} // namespace app

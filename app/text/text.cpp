#include "app/text/text.h"

#include "core/base/plain_text.h"

#include <algorithm>

namespace app {
namespace {

/// All that is unseen lies in Unicode's first plane: one QChar each.
bool isUnseen(QChar c) {
    return core::isUnseen(c.unicode());
}

QString escapeOf(QChar c) {
    const bool isByte = c.unicode() < 0x100;
    return QLatin1String(isByte ? "\\x" : "\\u") +
           QString::number(c.unicode(), 16).rightJustified(isByte ? 2 : 4, QLatin1Char('0'));
}

QString visible(const QString& text, bool keepsLineEnds) {
    QString all;
    all.reserve(text.size());
    for (const QChar c : text)
        if (isUnseen(c) && !(keepsLineEnds && c == QLatin1Char('\n')))
            all += escapeOf(c);
        else
            all += c;
    return all;
}

bool hasUnseen(const QString& text) {
    return std::any_of(text.begin(), text.end(), isUnseen);
}

} // namespace

QString text(const std::string& utf8) {
    return text(QString::fromStdString(utf8));
}

QString text(const QString& foreign) {
    return hasUnseen(foreign) ? visible(foreign, false) : foreign;
}

QStringList texts(const std::vector<std::string>& utf8) {
    QStringList list;
    for (const std::string& each : utf8)
        list << text(each);
    return list;
}

QString textOfLines(const QString& lines) {
    return hasUnseen(lines) ? visible(lines, true) : lines;
}

} // namespace app

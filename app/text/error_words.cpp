#include "app/text/error_words.h"

#include "app/text/error_table.h"
#include "app/text/text.h"

#include <QCoreApplication>

#include <array>

namespace app {
namespace {

constexpr const char* quoted = QT_TRANSLATE_NOOP("Errors", "'%1'");
constexpr qsizetype longest =
    4000; // of a sentence that is looked up; whatever is longer was not written by core

QString inLanguage(const char* english) {
    return QCoreApplication::translate("Errors", english);
}

/// Without a translation the source comes back: then there is nothing to look up.
bool isEnglish() {
    return inLanguage(quoted) == QLatin1String(quoted);
}

/// Core quotes with ' what it was given: such a quote is taken whole, or not at all.
bool isWhole(QStringView argument) {
    return !argument.startsWith(u'\'') || (argument.size() > 1 && argument.endsWith(u'\''));
}

/// Is `text` made by this sentence, in which %1, %2 … stand for anything. Each is as short as it can be.
bool fits(QStringView sentence, QStringView text, std::array<QStringView, 5>& arguments) {
    const qsizetype at = sentence.indexOf(u'%');
    if (at < 0) return sentence == text;
    if (text.left(at) != sentence.left(at)) return false;
    const auto number = static_cast<std::size_t>(sentence[at + 1].digitValue());
    const QStringView rest = sentence.mid(at + 2);
    const QStringView given = text.mid(at);
    const qsizetype next = rest.indexOf(u'%');
    const QStringView words = next < 0 ? rest : rest.left(next);
    qsizetype end = next < 0 ? given.size() - words.size() : given.indexOf(words);
    for (; end >= 0; end = next < 0 ? -1 : given.indexOf(words, end + 1)) {
        if (!isWhole(given.left(end)) || !fits(rest, given.mid(end), arguments)) continue;
        arguments.at(number) = given.left(end);
        return true;
    }
    return false;
}

std::optional<QString> lookedUp(QStringView text);

QString argumentInWords(QStringView argument, bool isReason) {
    if (isReason)
        if (auto known = lookedUp(argument)) return *known;
    if (argument.size() < 2 || !argument.startsWith(u'\'')) return argument.toString();
    return inLanguage(quoted).arg(argument.mid(1, argument.size() - 2));
}

QString filled(const ErrorSentence& sentence, const std::array<QStringView, 5>& arguments) {
    // All at once, for an argument may hold a %1 of its own.
    const QString said = inLanguage(sentence.english);
    QString whole;
    for (qsizetype i = 0; i < said.size(); ++i) {
        const int number = said[i] == u'%' && i + 1 < said.size() ? said[i + 1].digitValue() : -1;
        if (number < 1 || number > 4) {
            whole += said[i];
            continue;
        }
        whole += argumentInWords(arguments.at(static_cast<std::size_t>(number)), number == sentence.reason);
        ++i;
    }
    return whole;
}

std::optional<QString> lookedUp(QStringView text) {
    for (const auto& table : {clubErrors(), fileErrors(), importErrors()})
        for (const ErrorSentence& sentence : table) {
            std::array<QStringView, 5> arguments;
            if (fits(QString::fromLatin1(sentence.english), text, arguments))
                return filled(sentence, arguments);
        }
    return std::nullopt;
}

} // namespace

std::optional<QString> knownInWords(const QString& english) {
    if (english.size() > longest) return std::nullopt;
    // Of a bad tag code an import says what is wrong and what to do, each a sentence of the tables.
    for (qsizetype at = english.indexOf(u": "); at >= 0; at = english.indexOf(u": ", at + 1)) {
        const auto mend = lookedUp(QStringView(english).mid(at + 2));
        const auto what = mend ? lookedUp(QStringView(english).left(at)) : std::nullopt;
        if (what) return *what + QStringLiteral(": ") + *mend;
    }
    return lookedUp(QStringView(english));
}

QString coreInWords(const std::string& english) {
    const QString said = text(english);
    return isEnglish() ? said : knownInWords(said).value_or(said);
}

} // namespace app

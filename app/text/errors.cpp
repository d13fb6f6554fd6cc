#include "app/text/errors.h"

#include "app/text/error_texts.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <iterator>

namespace app {
namespace {

QString inLanguage(const char* english) {
    return QCoreApplication::translate("Errors", english);
}

const ErrorText& textOf(core::ErrorCode code) {
    for (const auto& table :
         {fileTexts(), recordTexts(), hubTexts(), registerTexts(), checkTexts(), pinTexts(), manifestTexts(),
          tagTexts(), importTexts(), cellTexts(), warningTexts(), spreadsheetTexts(), programTexts()})
        if (code <= table.back().code)
            return table[static_cast<std::size_t>(code) - static_cast<std::size_t>(table.front().code)];
    return fileTexts().front();
}

/// What SQLite and the system say comes in English; here stands what can be said in other languages.
constexpr const char* saidOutside[] = {
    QT_TRANSLATE_NOOP("Errors", "database is locked"),
    QT_TRANSLATE_NOOP("Errors", "file is not a database"),
    QT_TRANSLATE_NOOP("Errors", "database disk image is malformed"),
    QT_TRANSLATE_NOOP("Errors", "attempt to write a readonly database"),
    QT_TRANSLATE_NOOP("Errors", "unable to open database file"),
    QT_TRANSLATE_NOOP("Errors", "disk I/O error"),
    QT_TRANSLATE_NOOP("Errors", "database or disk is full"),
    QT_TRANSLATE_NOOP("Errors", "Permission denied"),
    QT_TRANSLATE_NOOP("Errors", "No such file or directory"),
    QT_TRANSLATE_NOOP("Errors", "Not a directory"),
    QT_TRANSLATE_NOOP("Errors", "Is a directory"),
    QT_TRANSLATE_NOOP("Errors", "Read-only file system"),
    QT_TRANSLATE_NOOP("Errors", "No space left on device"),
};

QString outsideInWords(const std::string& said) {
    const auto known = std::find(std::begin(saidOutside), std::end(saidOutside), said);
    return known == std::end(saidOutside) ? text(said) : inLanguage(*known);
}

QStringList argumentsOf(const core::Error& error) {
    QStringList arguments = texts(error.arguments);
    if (const std::size_t outside = textOf(error.code).outside; outside > 0)
        arguments[static_cast<qsizetype>(outside) - 1] = outsideInWords(error.arguments.at(outside - 1));
    for (const core::Error& cause : error.cause)
        arguments << rejectionInWords(cause);
    return arguments;
}

/// All at once, for an argument may hold a %1 of its own.
QString filled(const QString& text, const QStringList& arguments) {
    QString whole;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const int number = text[i] == u'%' && i + 1 < text.size() ? text[i + 1].digitValue() : -1;
        if (number < 1 || number > arguments.size()) {
            whole += text[i];
            continue;
        }
        whole += arguments[number - 1];
        ++i;
    }
    return whole;
}

QString said(const char* english, const core::Error& error) {
    return english == nullptr ? QString() : filled(inLanguage(english), argumentsOf(error));
}

} // namespace

QString errorInWords(const core::Error& error) {
    return said(textOf(error.code).sentence, error);
}

QString mendInWords(const core::Error& error) {
    return said(textOf(error.code).mend, error);
}

QString placeInWords(const core::Error& error) {
    const char* inRecord = textOf(error.code).place;
    QStringList places{inRecord != nullptr ? said(inRecord, error) : text(error.where)};
    for (const core::Error& cause : error.cause)
        places << placeInWords(cause);
    places.removeAll(QString());
    return places.join(QStringLiteral(": "));
}

QString rejectionInWords(const core::Error& reason) {
    const QString mend = mendInWords(reason);
    return mend.isEmpty() ? errorInWords(reason) : errorInWords(reason) + QStringLiteral(": ") + mend;
}

QString errorLine(const core::Error& error) {
    QString line = errorInWords(error);
    if (const QString place = placeInWords(error); !place.isEmpty())
        line += QStringLiteral(" (%1)").arg(place);
    if (const QString mend = mendInWords(error); !mend.isEmpty()) line += QStringLiteral("; ") + mend;
    return line.replace(QLatin1Char('\n'), QLatin1Char(' '));
}

QString errorSentence(const core::Error& error) {
    return withCapital(errorLine(error)) + QLatin1Char('.');
}

} // namespace app

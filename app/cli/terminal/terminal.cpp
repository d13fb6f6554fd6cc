#include "app/cli/terminal/terminal.h"

#include "core/base/error_code.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QGuiApplication>

#include <cstdio>

namespace app {
namespace {

bool outputFailed = false;

int exitOf(core::ErrorKind kind) {
    switch (kind) {
    case core::ErrorKind::FileUnfinished:
    case core::ErrorKind::FileLocked:
    case core::ErrorKind::FileDamaged:
    case core::ErrorKind::DiskFailed:
        return ExitFailed;
    default:
        return ExitBadInput;
    }
}

} // namespace

void say(const std::string& text) {
    if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size()) outputFailed = true;
}

void sayText(const QString& text) {
    say(textOfLines(text).toStdString());
}

void sayLine(const QString& line) {
    sayText(line + QLatin1Char('\n'));
}

void flushOutput() {
    if (std::fflush(stdout) != 0) outputFailed = true;
}

int finishOutput(int exit) {
    flushOutput();
    if (!outputFailed) return exit;
    return fail({core::ErrorCode::AnswerNotWritten, {}, "standard output"});
}

void note(const QString& line) {
    const std::string whole = "tholepinctl: " + text(line).toStdString() + '\n';
    std::fwrite(whole.data(), 1, whole.size(), stderr);
}

int fail(const core::Error& error) {
    note(errorLine(error));
    return exitOf(error.kind());
}

int failWith(const std::string& what, const std::string& where, const std::string& mend) {
    QString line = QString::fromStdString(what).replace(QLatin1Char('\n'), QLatin1Char(' '));
    if (!where.empty()) line += QStringLiteral(" (%1)").arg(text(where));
    if (!mend.empty()) line += QStringLiteral("; ") + text(mend);
    note(line);
    return ExitBadInput;
}

std::string placeIn(const std::string& file, int row, const std::string& column) {
    std::string place = file;
    if (row > 0) place.append(1, ':').append(std::to_string(row));
    if (!column.empty()) place.append(1, ':').append(column);
    return place;
}

Painting::Painting() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static int count = 1;
    static char name[] = "tholepinctl";
    static char* arguments[] = {name, nullptr};
    m_application = std::make_unique<QGuiApplication>(count, arguments);
}

Painting::~Painting() = default;

} // namespace app

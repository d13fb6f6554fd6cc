#include "app/cli/terminal/terminal.h"

#include "core/base/error_code.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QFontDatabase>
#include <QGuiApplication>

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <unistd.h>

namespace app {
namespace {

bool isRecorded = false; ///< what was asked stands in the club file
bool isMade = false;     ///< or in a file of its own
bool outputFailed = false;
bool isSilent = false;
int keptChannel = -1; ///< standard error, while it is turned away

/// More than fontconfig takes to look through the fonts of a machine, in bytes. Where memory gives out in
/// that, it writes down that there are no fonts, and every program of the machine believes it from then on.
constexpr std::size_t roomToReadFonts = std::size_t{48} << 20U;

void writeAll(int channel, const std::string& text) {
    for (std::size_t at = 0; at < text.size();) {
        const ssize_t done = write(channel, text.data() + at, text.size() - at);
        if (done < 0 && errno != EINTR) return; // nobody is left to be told
        if (done > 0) at += static_cast<std::size_t>(done);
    }
}

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

void sayNothing() {
    isSilent = true;
}

void say(const std::string& text) {
    if (isSilent) return;
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

void noteMade() {
    std::signal(SIGPIPE, SIG_IGN);
    isMade = true;
}

void noteRecorded() {
    isRecorded = true;
}

int finishOutput(int exit) {
    flushOutput();
    if (!outputFailed) return exit;
    return fail({isRecorded ? core::ErrorCode::RecordedAnswerNotWritten
                 : isMade   ? core::ErrorCode::MadeAnswerNotWritten
                            : core::ErrorCode::AnswerNotWritten,
                 {},
                 "standard output"});
}

int errorChannel() {
    return keptChannel < 0 ? STDERR_FILENO : keptChannel;
}

LibrariesQuiet::LibrariesQuiet() {
    const int nowhere = open("/dev/null", O_WRONLY | O_CLOEXEC);
    if (nowhere < 0) return;
    keptChannel = fcntl(STDERR_FILENO, F_DUPFD_CLOEXEC, 3);
    if (keptChannel >= 0) dup2(nowhere, STDERR_FILENO);
    close(nowhere);
}

LibrariesQuiet::~LibrariesQuiet() {
    if (keptChannel < 0) return;
    dup2(keptChannel, STDERR_FILENO);
    close(keptChannel);
    keptChannel = -1;
}

void note(const QString& line) {
    const std::string whole = "tholepinctl: " + text(line).toStdString() + '\n';
    writeAll(errorChannel(), whole);
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
    ::operator delete(::operator new(roomToReadFonts)); // throws where it is not to be had
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static int count = 1;
    static char name[] = "tholepinctl";
    static char* arguments[] = {name, nullptr};
    m_application = std::make_unique<QGuiApplication>(count, arguments);
    (void)QFontDatabase::families(); // they are read here, not when memory has been taken by what is painted
}

Painting::~Painting() = default;

} // namespace app

#include "app/cli/terminal/last_words.h"

#include "app/cli/terminal/terminal.h"
#include "app/text/errors.h"
#include "app/text/text.h"
#include "core/base/error_code.h"

#include <QString>

#include <csignal>
#include <cstring>
#include <exception>
#include <new>
#include <unistd.h>

namespace app {
namespace {

/// As errorLine has it, made while there was memory; until then as it stands here.
char memoryLine[256] =
    "tholepinctl: there is not enough memory; close other programs, or ask for less at once\n";

[[noreturn]] void endWith(const char* line) {
    const auto written = write(errorChannel(), line, std::strlen(line));
    static_cast<void>(written); // nobody is left to be told
    _exit(ExitFailed);
}

[[noreturn]] void onTerminate() {
    endWith(memoryLine);
}

/// Memory may give out while what is needed before `main` is made.
[[gnu::constructor(101)]] void endWithOneLine() {
    std::set_terminate(onTerminate);
}

void onQtMessage(QtMsgType type, const QMessageLogContext&, const QString& said) {
    if (type != QtFatalMsg) return;
    flushOutput();
    const std::string line = "tholepinctl: " + text(said).toStdString() + '\n';
    endWith(line.c_str());
}

} // namespace

void prepareLastWords() {
    const std::string line = "tholepinctl: " + errorLine({core::ErrorCode::MemoryShort}).toStdString() + '\n';
    std::strncpy(memoryLine, line.c_str(), sizeof memoryLine - 1);
    qInstallMessageHandler(onQtMessage);
    std::signal(SIGXFSZ, SIG_IGN);
}

} // namespace app

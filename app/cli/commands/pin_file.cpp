#include "app/cli/commands/pin_file.h"

#include "app/cli/terminal/terminal.h"
#include "core/base/database_file.h"
#include "core/base/error_code.h"
#include "core/base/plain_text.h"

#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <iterator>
#include <sys/stat.h>
#include <system_error>
#include <termios.h>
#include <unistd.h>

namespace app {
namespace {

constexpr std::size_t mostBytes = 1024; // bytes of a file that may be one of a PIN

core::Error unreadable(int reason, const std::string& path) {
    return {core::ErrorCode::PinFileUnreadable, {std::generic_category().message(reason)}, path};
}

termios shown, silent; // of the terminal, for what a signal does
constexpr int ending[] = {SIGINT, SIGTERM, SIGHUP, SIGQUIT, SIGTSTP};

extern "C" void showAgainAtSignal(int signal);

/// Of a signal that nobody told the program to ignore; it does what it does by itself afterwards.
void watch(int signal) {
    struct sigaction now {};
    if (::sigaction(signal, nullptr, &now) != 0 || now.sa_handler == SIG_IGN) return;
    now = {};
    now.sa_handler = showAgainAtSignal;
    // As if it came anew, it ends or stops the program while it is handled.
    now.sa_flags = static_cast<int>(SA_RESETHAND) | SA_NODEFER;
    ::sigemptyset(&now.sa_mask);
    ::sigaction(signal, &now, nullptr);
}

/// The terminal would stay as it is with whoever types there next. Calls only what a handler may call
/// (signal-safety(7)).
extern "C" void showAgainAtSignal(int signal) {
    const int reason = errno;
    ::tcsetattr(STDIN_FILENO, TCSANOW, &shown);
    ::tcflush(STDIN_FILENO, TCIFLUSH); // half a PIN is nothing for a shell
    ::raise(signal);
    // Only who was stopped comes here, when it goes on.
    watch(signal);
    ::tcsetattr(STDIN_FILENO, TCSANOW, &silent);
    errno = reason;
}

/// Keeps what is typed at a terminal from being shown, while it lives. One at a time.
class NotShown {
public:
    NotShown() {
        if (::isatty(STDIN_FILENO) == 0 || ::tcgetattr(STDIN_FILENO, &shown) != 0) return;
        m_isTerminal = true;
        silent = shown;
        silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        for (std::size_t i = 0; i < std::size(ending); ++i) {
            ::sigaction(ending[i], nullptr, &m_before[i]);
            watch(ending[i]);
        }
        ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &silent);
        note(QStringLiteral("type the PIN; it is not shown"));
    }
    ~NotShown() {
        if (!m_isTerminal) return;
        ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &shown);
        for (std::size_t i = 0; i < std::size(ending); ++i)
            ::sigaction(ending[i], &m_before[i], nullptr);
    }
    NotShown(const NotShown&) = delete;
    NotShown& operator=(const NotShown&) = delete;
    bool isTerminal() const { return m_isTerminal; }

private:
    struct sigaction m_before[std::size(ending)]{};
    bool m_isTerminal = false;
};

core::Result<core::Pin> readPin(int file, const std::string& path, bool oneLine) {
    std::string text(mostBytes, '\0');
    std::size_t size = 0;
    for (ssize_t got = 1; got != 0 && size < mostBytes;) {
        got = ::read(file, text.data() + size, mostBytes - size);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) {
            const int reason = errno;
            core::wipe(text);
            return unreadable(reason, path);
        }
        size += static_cast<std::size_t>(got);
        if (oneLine && size > 0 && text[size - 1] == '\n') break;
    }
    text.resize(size);
    const bool isOneLine = size < mostBytes && core::withoutOuterBlanks(text).find('\n') == std::string::npos;
    auto pin = core::Pin::from(std::move(text));
    if (!isOneLine) return core::Error{core::ErrorCode::PinFileNotOneLine, {}, path};
    if (pin) return pin;
    core::Error error = pin.error();
    error.where = path;
    return error;
}

/// A file that others can read keeps no secret. What is no file is a pipe from another program.
bool isOpenToOthers(const struct stat& status) {
    return S_ISREG(status.st_mode) &&
           ((status.st_mode & 0077) != 0 || (status.st_uid != ::geteuid() && status.st_uid != 0));
}

} // namespace

core::Result<core::Pin> pinFrom(const std::string& path) {
    if (path == "-") {
        const NotShown silent;
        return readPin(STDIN_FILENO, "standard input", silent.isTerminal());
    }
    // The club's own file is never opened aside: to close it would drop the locks that are held on it.
    if (core::OpenDatabase::isOne(path)) return core::Error{core::ErrorCode::PinFileNotOneLine, {}, path};
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) return unreadable(errno, path);
    struct stat status {};
    core::Result<core::Pin> pin = ::fstat(file, &status) != 0 ? unreadable(errno, path)
                                  : isOpenToOthers(status)
                                      ? core::Error{core::ErrorCode::PinFileOpenToOthers, {}, path}
                                      : readPin(file, path, false);
    ::close(file);
    return pin;
}

} // namespace app

#include "app/cli/terminal/progress.h"

#include "app/cli/terminal/terminal.h"

#include <algorithm>
#include <cstdio>
#include <unistd.h>

namespace app {

using namespace std::chrono_literals;

Progress::Progress(QString what)
    : m_what(std::move(what))
    , m_terminal(isatty(STDERR_FILENO) == 1)
    , m_began(std::chrono::steady_clock::now())
    , m_last(m_began) {}

Progress::~Progress() {
    if (m_shown) dprintf(errorChannel(), "\r\033[K");
}

void Progress::show(double share) {
    const auto now = std::chrono::steady_clock::now();
    if (!m_terminal || now - m_began < 1s || now - m_last < 100ms) return;
    m_last = now;
    m_shown = true;
    constexpr int width = 30;
    const int done = std::clamp(static_cast<int>(share * width), 0, width);
    const std::string bar = std::string(static_cast<std::size_t>(done), '=') +
                            std::string(static_cast<std::size_t>(width - done), ' ');
    dprintf(errorChannel(), "\r%s [%s] %3d %%", m_what.toUtf8().constData(), bar.c_str(),
            static_cast<int>(share * 100));
}

} // namespace app

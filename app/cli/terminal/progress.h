#pragma once

#include <QString>

#include <chrono>

namespace app {

/// A bar on standard error for what takes longer than a second; nothing at all when that is no terminal.
class Progress {
public:
    explicit Progress(QString what);
    ~Progress(); ///< wipes the bar
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void show(double share); ///< 0 to 1
    void show(int done, int of) {
        if (of > 0) show(static_cast<double>(done) / of);
    }

private:
    QString m_what;
    bool m_terminal;
    bool m_shown = false;
    std::chrono::steady_clock::time_point m_began;
    std::chrono::steady_clock::time_point m_last;
};

} // namespace app

#include "tests/support/ctl_process.h"

#include "tests/support/scratch_folder.h"

#include <csignal>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <sys/resource.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace support {
namespace {

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/// In the child: the three channels are files, so that no full pipe can stop it.
[[noreturn]] void become(const std::filesystem::path& program, const std::vector<std::string>& arguments,
                         const ScratchFolder& channels, const Limits& limits) {
    for (const auto& [what, bytes] :
         {std::pair(RLIMIT_FSIZE, limits.fileBytes), std::pair(RLIMIT_AS, limits.addressBytes)}) {
        const rlimit limit{bytes, bytes};
        if (bytes > 0) setrlimit(what, &limit);
    }
    dup2(open((channels / "in").c_str(), O_RDONLY), STDIN_FILENO);
    dup2(open((channels / "out").c_str(), O_WRONLY | O_CREAT, 0600), STDOUT_FILENO);
    dup2(open((channels / "err").c_str(), O_WRONLY | O_CREAT, 0600), STDERR_FILENO);
    setenv("TZ", limits.zone.c_str(), 1);
    if (!limits.fonts.empty()) setenv("FONTCONFIG_FILE", limits.fonts.c_str(), 1);
    std::vector<char*> words{const_cast<char*>(program.c_str())};
    for (const std::string& argument : arguments)
        words.push_back(const_cast<char*>(argument.c_str()));
    words.push_back(nullptr);
    execv(program.c_str(), words.data());
    _exit(127);
}

} // namespace

Ran runProgram(const std::filesystem::path& program, const std::vector<std::string>& arguments,
               const std::string& input, const Limits& limits) {
    if (access(program.c_str(), X_OK) != 0) throw std::runtime_error("no such program: " + program.string());
    const ScratchFolder channels;
    std::ofstream(channels / "in", std::ios::binary) << input;
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("cannot start a process");
    if (child == 0) become(program, arguments, channels, limits);
    if (limits.killAfter) {
        std::this_thread::sleep_for(*limits.killAfter);
        kill(child, SIGKILL);
    }
    int status = 0;
    rusage usage{};
    wait4(child, &status, 0, &usage);
    Ran ran;
    ran.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    ran.out = contentOf(channels / "out");
    ran.err = contentOf(channels / "err");
    ran.peakKilobytes = usage.ru_maxrss;
    return ran;
}

Ran ctl(const std::vector<std::string>& arguments, const std::string& input, const Limits& limits) {
    return runProgram(THOLEPINCTL, arguments, input, limits);
}

} // namespace support

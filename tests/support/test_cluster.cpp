#include "tests/support/test_cluster.h"

#include <chrono>
#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <memory>
#include <pwd.h>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace support {
namespace {

using namespace std::chrono_literals;

/// The newest server that is installed, as Debian places it.
std::string programFolder() {
    std::string newest;
    int version = 0;
    for (const auto& entry : std::filesystem::directory_iterator("/usr/lib/postgresql"))
        if (const int each = std::atoi(entry.path().filename().c_str()); each > version) {
            version = each;
            newest = entry.path() / "bin";
        }
    if (newest.empty())
        throw std::runtime_error("no PostgreSQL server is installed: apt-get install postgresql");
    return newest;
}

std::string quotedForShell(const std::string& text) {
    std::string quoted = "'";
    for (const char c : text)
        quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return quoted + "'";
}

const passwd& unprivileged() {
    static const passwd* nobody = getpwnam("nobody");
    return *nobody;
}

} // namespace

std::string TestCluster::run(const std::string& program, const std::string& arguments) const {
    const std::string command = "cd / && " + programFolder() + "/" + program + " " + arguments + " 2>&1";
    const std::string asWhom =
        ::geteuid() == 0 ? "runuser -u nobody -- sh -c " + quotedForShell(command) : command;
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(asWhom.c_str(), "r"), [](FILE*) { return 0; });
    std::string said;
    char part[4096];
    while (const std::size_t size = fread(part, 1, sizeof part, pipe.get()))
        said.append(part, size);
    if (pclose(pipe.get()) != 0) throw std::runtime_error(program + ": " + said);
    return said;
}

TestCluster::TestCluster() {
    const auto data = m_folder / "data";
    std::filesystem::permissions(m_folder.path(), std::filesystem::perms(0755));
    std::filesystem::create_directory(data);
    if (::geteuid() == 0)
        for (const auto& folder : {m_folder.path(), data})
            if (::chown(folder.c_str(), unprivileged().pw_uid, unprivileged().pw_gid) != 0)
                throw std::runtime_error("chown");
    run("initdb", "-D " + data.string() +
                      " -U office --auth=trust -E UTF8 --locale=C.UTF-8 --no-sync --no-instructions");
    std::ofstream(data / "postgresql.conf", std::ios::app)
        << "listen_addresses = ''\nunix_socket_directories = '" << m_folder.path().string()
        << "'\nfsync = off\nmax_connections = 100\nautovacuum = off\nshared_buffers = 64MB\n"
        << "log_line_prefix = '%u '\n";
    start();
}

TestCluster::~TestCluster() {
    if (m_server > 0) kill();
}

void TestCluster::start() {
    const std::string program = programFolder() + "/postgres";
    const std::string data = m_folder / "data";
    const std::string log = m_folder / "log";
    m_server = ::fork();
    if (m_server == 0) {
        const int out = ::open(log.c_str(), O_CREAT | O_APPEND | O_WRONLY, 0644);
        ::dup2(out, 1);
        ::dup2(out, 2);
        ::close(0);
        if (::geteuid() == 0 &&
            (::setgid(unprivileged().pw_gid) != 0 || ::setuid(unprivileged().pw_uid) != 0))
            ::_exit(1);
        ::prctl(PR_SET_PDEATHSIG, SIGQUIT); // its own "immediate shutdown"
        ::execl(program.c_str(), program.c_str(), "-D", data.c_str(), nullptr);
        ::_exit(1);
    }
    for (const auto end = std::chrono::steady_clock::now() + 60s; std::chrono::steady_clock::now() < end;) {
        try {
            ask("postgres", "SELECT 1");
            return;
        } catch (const std::runtime_error&) {
            std::this_thread::sleep_for(20ms); // between two looks
        }
    }
    throw std::runtime_error("the server did not start: " + this->log());
}

void TestCluster::kill() {
    answerAgain();
    ::kill(m_server, SIGQUIT);
    ::waitpid(m_server, nullptr, 0);
    m_server = -1;
}

namespace {

/// The server and its children, which are leaders of sessions of their own (proc(5)).
void signalAll(pid_t server, int number) {
    std::ifstream children("/proc/" + std::to_string(server) + "/task/" + std::to_string(server) +
                           "/children");
    ::kill(server, number);
    for (pid_t child = 0; children >> child;)
        ::kill(child, number);
}

} // namespace

void TestCluster::stopAnswering() {
    signalAll(m_server, SIGSTOP);
}

void TestCluster::answerAgain() {
    signalAll(m_server, SIGCONT);
}

std::string TestCluster::url(const std::string& database, const std::string& role) const {
    std::string folder;
    for (const char c : m_folder.path().string())
        folder += c == '/' ? std::string("%2F") : std::string(1, c);
    return "postgresql://" + role + "@" + folder + "/" + database;
}

std::string TestCluster::ask(const std::string& database, const std::string& sql,
                             const std::string& role) const {
    return run("psql", "-qAtX -v ON_ERROR_STOP=1 " + quotedForShell(url(database, role)) + " -c " +
                           quotedForShell(sql));
}

void TestCluster::makeDatabase(const std::string& name) {
    ask("postgres", "CREATE DATABASE \"" + name + "\"");
}

void TestCluster::makeRole(const std::string& name) {
    if (ask("postgres", "SELECT 1 FROM pg_roles WHERE rolname = '" + name + "'").empty())
        ask("postgres", "CREATE ROLE \"" + name + "\" LOGIN");
}

std::string TestCluster::log() const {
    std::ifstream file(m_folder / "log");
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

TestCluster& testCluster() {
    static TestCluster cluster;
    return cluster;
}

} // namespace support

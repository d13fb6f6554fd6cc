#include "tests/support/test_cluster.h"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <memory>
#include <netinet/in.h>
#include <pwd.h>
#include <sstream>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <vector>

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
    return runAsServer("cd / && " + programFolder() + "/" + program + " " + arguments);
}

std::string TestCluster::runAsServer(const std::string& script) {
    const std::string command = script + " 2>&1";
    const std::string asWhom =
        ::geteuid() == 0 ? "runuser -u nobody -- sh -c " + quotedForShell(command) : command;
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(asWhom.c_str(), "r"), [](FILE*) { return 0; });
    std::string said;
    char part[4096];
    while (const std::size_t size = fread(part, 1, sizeof part, pipe.get()))
        said.append(part, size);
    if (pclose(pipe.get()) != 0) throw std::runtime_error(script + ": " + said);
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

namespace {

int freePort() {
    const int line = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    auto* any = reinterpret_cast<sockaddr*>(&address);
    if (::bind(line, any, size) != 0 || ::getsockname(line, any, &size) != 0)
        throw std::runtime_error("no port is free");
    ::close(line);
    return ntohs(address.sin_port);
}

/// OpenSSL, "openssl-req(1)", "openssl-x509(1)". Puts server.key, server.crt and root.crt there.
constexpr const char* makeCertificates =
    "set -e; new='openssl req -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes'; "
    "$new -x509 -days 2 -subj '/CN=Tests' -keyout root.key -out root.crt; "
    "$new -subj '/CN=localhost' -keyout server.key -out server.csr; "
    "echo subjectAltName=DNS:localhost > names; "
    "openssl x509 -req -in server.csr -CA root.crt -CAkey root.key -CAcreateserial -days 2 -extfile names "
    "-out server.crt; chmod 600 server.key";

} // namespace

TestCluster::Encrypted TestCluster::encrypt() {
    const std::string data = m_folder / "data";
    runAsServer("cd " + data + " && { " + makeCertificates + "; }");
    const Encrypted encrypted{freePort(), m_folder / "root.crt"};
    std::filesystem::copy_file(m_folder / "data" / "root.crt", encrypted.root);
    std::ofstream(m_folder / "data" / "postgresql.conf", std::ios::app)
        << "listen_addresses = '127.0.0.1'\nport = " << encrypted.port << "\nssl = on\n";
    std::ofstream(m_folder / "data" / "pg_hba.conf")
        << "local all all trust\nhostssl all all 127.0.0.1/32 trust\n";
    kill();
    m_port = encrypted.port;
    start();
    return encrypted;
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
std::vector<pid_t> processesOf(pid_t server) {
    std::ifstream children("/proc/" + std::to_string(server) + "/task/" + std::to_string(server) +
                           "/children");
    std::vector<pid_t> processes{server};
    for (pid_t child = 0; children >> child;)
        processes.push_back(child);
    return processes;
}

void signalAll(pid_t server, int number) {
    for (const pid_t each : processesOf(server))
        ::kill(each, number);
}

/// utime, stime and the same of waited-for children: the 14th to 17th field of proc(5), /proc/pid/stat.
long ticksOf(pid_t process) {
    std::ifstream file("/proc/" + std::to_string(process) + "/stat");
    std::string stat{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    std::istringstream fields(stat.substr(std::min(stat.size(), stat.rfind(')') + 1)));
    std::string skipped;
    for (int i = 3; i < 14; ++i)
        fields >> skipped;
    long all = 0;
    for (long ticks = 0, i = 0; i < 4 && fields >> ticks; ++i)
        all += ticks;
    return all;
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
    return "postgresql://" + role + "@" + folder + (m_port == 0 ? "" : ":" + std::to_string(m_port)) + "/" +
           database;
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

double TestCluster::processorSeconds() const {
    long ticks = 0;
    for (const pid_t each : processesOf(m_server))
        ticks += ticksOf(each);
    return static_cast<double>(ticks) / static_cast<double>(::sysconf(_SC_CLK_TCK));
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

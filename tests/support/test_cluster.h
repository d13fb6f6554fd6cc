#pragma once

#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <string>
#include <sys/types.h>

namespace support {

/// A PostgreSQL server of the tests' own: its files in a temporary folder, reached by a socket there and by
/// no network, without syncing, as the user nobody when root runs the tests (the server refuses root). It
/// ends with this object, or with the process, however that ends.
class TestCluster {
public:
    TestCluster();
    ~TestCluster();
    TestCluster(const TestCluster&) = delete;
    TestCluster& operator=(const TestCluster&) = delete;

    /// A URL without a password, for the server asks for none.
    std::string url(const std::string& database, const std::string& role = "office") const;
    void makeDatabase(const std::string& name);
    void makeRole(const std::string& name); ///< that may connect; one that is there stays
    /// What psql prints of it, unaligned, as whoever administers the server. Throws what it says when it
    /// fails.
    std::string ask(const std::string& database, const std::string& sql,
                    const std::string& role = "office") const;
    std::string log() const; ///< what the server wrote
    /// What the server and its processes, also those that ended, took of the processor since it was started.
    double processorSeconds() const;

    struct Encrypted {
        int port = 0;
        std::filesystem::path root; ///< certificate of who signed the server's
    };
    /// Starts it anew: it is also reached at 127.0.0.1, with TLS alone and a certificate for "localhost" that
    /// an authority of its own signed.
    Encrypted encrypt();

    void start();
    void kill();          ///< as when the power goes: nothing is ended properly
    void stopAnswering(); ///< SIGSTOP to all its processes
    void answerAgain();

private:
    std::string run(const std::string& program, const std::string& arguments) const;
    static std::string runAsServer(const std::string& script); ///< what it says; throws it when it fails

    ScratchFolder m_folder;
    pid_t m_server = -1;
    int m_port = 0; ///< 0: the usual one, of a socket's name
};

/// The one of this test program; made when it is first asked for.
TestCluster& testCluster();

} // namespace support

#include "tests/core/hub/hub_support.h"
#include "tests/support/ctl_process.h"

#include <gmock/gmock.h>

namespace {

using support::ctl;
using testing::HasSubstr;

/// What is said of it is one sentence of ours with what the library says within it.
void expectRefused(const support::Ran& ran, const char* why) {
    EXPECT_EQ(ran.exit, 3);
    EXPECT_THAT(ran.err, HasSubstr("the hub was not reached"));
    EXPECT_THAT(ran.err, HasSubstr(why));
    EXPECT_EQ(ran.out, "");
}

// PostgreSQL, "SSL Support" of libpq: verify-full asks for a certificate that a trusted authority signed and
// that is of the name in the URL.
TEST(HubTls, aCertificateIsLookedThroughAndNothingIsSentInPlain) {
    support::TestCluster server;
    server.makeDatabase("hub");
    const auto tls = server.encrypt();
    const auto url = [&](const std::string& host, const std::string& settings) {
        return "postgresql://office@" + host + ":" + std::to_string(tls.port) + "/hub?" + settings;
    };
    const std::string trusting = "sslmode=verify-full&sslrootcert=" + tls.root.string();

    const auto prepared = ctl({"hub", "prepare", url("localhost", trusting)});
    EXPECT_EQ(prepared.exit, 0) << prepared.err;
    EXPECT_EQ(server.ask("hub", "SELECT count(*) FROM tholepin.club"), "0\n");

    expectRefused(ctl({"hub", "prepare", url("127.0.0.1", trusting)}), "does not match host name");
    expectRefused(ctl({"hub", "prepare", url("localhost", "sslmode=disable")}), "no encryption");
    support::TestCluster stranger;
    const std::string its = "sslmode=verify-full&sslrootcert=" + stranger.encrypt().root.string();
    expectRefused(ctl({"hub", "prepare", url("localhost", its)}), "certificate verify failed");
    const auto none = ctl({"hub", "prepare", url("localhost", "sslmode=verify-full&sslrootcert=/no/such")});
    expectRefused(none, "root certificate file");
}

} // namespace

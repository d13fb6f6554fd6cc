#include "core/base/error_code.h"
#include "core/hub/hub_url.h"

#include <gmock/gmock.h>

// PostgreSQL 15 manual, 34.1.1 "Connection Strings": what a URI may hold, and which keywords there are.

namespace {

using core::ErrorCode;
using core::hubUrlFrom;
using testing::HasSubstr;
using testing::Not;

TEST(HubUrl, isReadAndKept) {
    const auto url = hubUrlFrom("postgresql://sandbay@db.example.org:5433/tholepin?connect_timeout=3");
    ASSERT_TRUE(url);
    EXPECT_EQ(url->text, "postgresql://sandbay@db.example.org:5433/tholepin?connect_timeout=3");
    for (const char* part : {"user='sandbay'", "host='db.example.org'", "port='5433'", "dbname='tholepin'",
                             "connect_timeout='3'", "statement_timeout=60s"})
        EXPECT_THAT(url->connection, HasSubstr(part));
    EXPECT_TRUE(hubUrlFrom("postgres://db.example.org/t"));
}

TEST(HubUrl, aPasswordIsRefusedInWhateverForm) {
    for (const char* text :
         {"postgresql://sandbay:secret@db/t", "postgresql://db/t?password=secret",
          "postgresql://db/t?pass%77ord=secret", "postgresql://db/t?user=x&password=secret",
          "postgresql://db/t?sslpassword=secret"}) {
        const auto refused = hubUrlFrom(text);
        ASSERT_FALSE(refused) << text;
        EXPECT_EQ(refused.error().code, ErrorCode::HubUrlWithPassword) << text;
        EXPECT_TRUE(refused.error().arguments.empty()) << "it would be said";
        EXPECT_TRUE(refused.error().where.empty());
    }
}

TEST(HubUrl, whatIsNoneIsRefusedWithoutSayingIt) {
    for (const char* text : {"", "db.example.org", "host=db password=secret", "http://db/t",
                             "postgresql://[::1/t", "postgresql://db/t?nonsense=1", "postgresql://db/t\nx",
                             "postgresql://db/a b", "postgresql://sandbay:%zz@db/t"}) {
        const auto refused = hubUrlFrom(text);
        ASSERT_FALSE(refused) << text;
        EXPECT_EQ(refused.error().code, ErrorCode::HubUrlUnreadable) << text;
        EXPECT_TRUE(refused.error().arguments.empty());
        EXPECT_TRUE(refused.error().where.empty());
    }
}

TEST(HubUrl, theServersNameIsLookedThroughUnlessItIsThisMachine) {
    for (const char* far :
         {"postgresql://db.example.org/t", "postgresql://localhost,db.example.org/t",
          "postgresql:///t?hostaddr=192.0.2.1", "postgresql://localhost/t?hostaddr=192.0.2.1",
          "postgresql:///t?service=hub", "postgresql://localhost.example.org/t"})
        EXPECT_THAT(hubUrlFrom(far)->connection, HasSubstr("sslmode='verify-full'")) << far;
    for (const char* near : {"postgresql:///t", "postgresql://localhost/t", "postgresql://127.0.0.1/t",
                             "postgresql://[::1]/t", "postgresql://%2Frun%2Fpostgresql/t"})
        EXPECT_THAT(hubUrlFrom(near)->connection, Not(HasSubstr("sslmode"))) << near;
    EXPECT_THAT(hubUrlFrom("postgresql://db.example.org/t?sslmode=require")->connection,
                HasSubstr("sslmode='require'"))
        << "as the URL says";
}

TEST(HubUrl, whatAnEnvironmentSaysOfTheHostIsNotThisMachine) {
    setenv("PGHOST", "db.example.org", 1);
    EXPECT_THAT(hubUrlFrom("postgresql:///t")->connection, HasSubstr("sslmode='verify-full'"));
    EXPECT_THAT(hubUrlFrom("postgresql://localhost/t")->connection, Not(HasSubstr("sslmode")));
    unsetenv("PGHOST");
}

// Nothing that a URL holds becomes another keyword.
TEST(HubUrl, valuesAreQuoted) {
    const auto url = hubUrlFrom("postgresql://a'%20host='x@db.example.org/t%5C'");
    ASSERT_TRUE(url);
    EXPECT_THAT(url->connection, HasSubstr("user='a\\' host=\\'x'"));
    EXPECT_THAT(url->connection, HasSubstr("dbname='t\\\\\\''"));
}

} // namespace

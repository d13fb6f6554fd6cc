#include "core/hub/time_limit.h"

#include <gtest/gtest.h>
#include <sys/socket.h>
#include <unistd.h>

namespace {

using namespace std::chrono_literals;

/// A line whose other end says nothing.
struct SilentLine {
    SilentLine() { EXPECT_EQ(::socketpair(AF_UNIX, SOCK_STREAM, 0, ends), 0); }
    ~SilentLine() {
        ::close(ends[0]);
        ::close(ends[1]);
    }
    int ends[2] = {-1, -1};
    char byte = 0;
};

TEST(TimeLimit, endsACallThatNobodyAnswers) {
    SilentLine line;
    core::TimeLimit limit(20ms);
    const core::TimeLimit::Call call(limit, line.ends[0]);
    EXPECT_EQ(::read(line.ends[0], &line.byte, 1), 0) << "it would read for ever";
}

TEST(TimeLimit, leavesACallThatIsOverAlone) {
    SilentLine line;
    core::TimeLimit limit(20ms);
    { const core::TimeLimit::Call call(limit, line.ends[0]); }
    SilentLine later;
    {
        const core::TimeLimit::Call call(limit, later.ends[0]);
        EXPECT_EQ(::read(later.ends[0], &later.byte, 1), 0) << "so the time of the first is past, too";
    }
    EXPECT_EQ(::write(line.ends[0], "x", 1), 1);
    EXPECT_EQ(::read(line.ends[1], &line.byte, 1), 1);
}

} // namespace

#include "tests/app/cli/small_club.h"

#include <sys/stat.h>

namespace small_club {
namespace {

using testing::HasSubstr;

/// Every command that makes a file, given a place where none may be made.
class Output : public SmallClub, public testing::WithParamInterface<std::vector<std::string>> {
protected:
    Ran runTo(const std::filesystem::path& out) {
        std::vector<std::string> words = GetParam();
        words.insert(words.end(), {"--out", out, "--today", today});
        return run(words);
    }
    void expectRefused(const std::filesystem::path& out, const char* why) {
        const std::string before = content();
        const Ran ran = runTo(out);
        EXPECT_EQ(ran.exit, 2) << out;
        // The order sheet knows its kind by its name, and looks at that first.
        EXPECT_THAT(ran.err, testing::AnyOf(HasSubstr(why), HasSubstr("is no kind of sheet"),
                                            HasSubstr("has more than one name")))
            << out;
        expectOneErrorLine(ran);
        EXPECT_EQ(content(), before) << out << ": nothing is recorded either";
    }
};

TEST_P(Output, neverTakesTheClubsPlaceWhateverLeadsThere) {
    const char* why = "this is a club file, or part of one";
    expectRefused(m_file, why);
    std::filesystem::create_symlink(m_file, m_folder / "link.pdf");
    expectRefused(m_folder / "link.pdf", why);
    std::filesystem::create_hard_link(m_file, m_folder / "second name.pdf");
    expectRefused(m_folder / "second name.pdf", why);
    std::filesystem::remove(m_folder / "second name.pdf");
    for (const char* end : {"-journal", "-wal", "-shm"})
        expectRefused(m_file.string() + end, why);
}

TEST_P(Output, norThatOfAFolderAPipeOrADevice) {
    const char* why = "this is a folder or a device";
    std::filesystem::create_directory(m_folder / "folder.pdf");
    expectRefused(m_folder / "folder.pdf", why);
    ASSERT_EQ(mkfifo((m_folder / "pipe.pdf").c_str(), 0600), 0);
    expectRefused(m_folder / "pipe.pdf", why);
    expectRefused("/dev/null", why);
}

TEST_P(Output, takesThatOfAnyOtherFile) {
    const std::string out = write("old.pdf", "an older sheet");
    const Ran ran = runTo(out);
    EXPECT_LE(ran.exit, 1) << ran.err;
    EXPECT_NE(textOf(out), "an older sheet");
    EXPECT_GT(textOf(out).size(), 0u);
}

INSTANTIATE_TEST_SUITE_P(Commands, Output,
                         testing::Values(std::vector<std::string>{"tags"},
                                         std::vector<std::string>{"replace"},
                                         std::vector<std::string>{"retag", knife},
                                         std::vector<std::string>{"receive", "--kit-type", "paddle"}),
                         [](const auto& info) { return info.param.front(); });

} // namespace
} // namespace small_club

#include "core/base/plain_text.h"
#include "tests/app/cli/small_club.h"
#include "tests/support/tag_picture.h"
#include "tests/support/unchecked_club.h"

#include <QImage>

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;

// ECMA-48 for the sequences that begin with ESC, and with U+009B as one character; UAX #9 for the direction.
const std::map<std::string, std::string> hostile{
    {"Teal", "Te\x1B]0;owned\aal"},
    {"Ada Thorne", "Ada\u202EThorne"},
    {"Shed", "Sh\u009B2Jed"},
    {"knife", "kni\x7F"
              "fe"},
    {"life jacket", "life\x1B[2Jjacket"},
    {"tow line", "tow\u2028line"},
    {"hull", "hu\nll"},
    {"yearly look", "yearly\u2066look"},
    {"club order 3", "club\tor\x1B[31mder"},
    {"R-7", "R\x1B"
            "c7"},
    {"kPa", "k\u200FPa"},
    {"inflatable", "in\x08"
                   "flatable"},
};

std::string hostileOf(const char* name) {
    return hostile.at(name);
}

/// What drives a terminal, however it is written there; a line end is not.
void expectNothingUnseen(const std::string& text) {
    std::string oneLine = text;
    std::erase(oneLine, '\n');
    EXPECT_FALSE(core::holdsUnseen(oneLine)) << core::visibleText(text);
}

/// A club in which every name that people read drives a terminal.
class ForeignText : public testing::Test {
protected:
    ForeignText() {
        std::map<std::string, std::string> files = csvFiles();
        files["log.csv"] =
            "boat,day,text,severity,by\nTeal,2026-03-01,\"torn\x1B[5m\nhere\",remark,Ada Thorne\n";
        for (auto& [name, text] : files)
            text = support::replaced(text, hostile);
        for (auto& [name, text] : files) // a line break is text only within quotes
            text = support::replaced(text, {{hostileOf("hull"), '"' + hostileOf("hull") + '"'}});
        support::writeUnchecked(m_file, "Small\x1B[31m Club", files);
    }
    Ran run(std::vector<std::string> words, const std::string& input = {}) const {
        words.insert(words.begin() + 1, m_file);
        words.insert(words.end(), {"--today", today});
        return ctl(words, input);
    }
    Ran launch(std::vector<std::string> more = {}) const {
        std::ofstream(m_folder / "points.csv")
            << "point,value\n\"" + hostileOf("hull") + "\",done\nbow chamber,99\nengine run,60\n";
        std::vector<std::string> words{"check",
                                       "--boat",
                                       hostileOf("Teal"),
                                       "--phase",
                                       "launch",
                                       "--driver",
                                       hostileOf("Ada Thorne"),
                                       "--crew",
                                       "Bo Lind",
                                       "--codes",
                                       "-",
                                       "--points",
                                       m_folder / "points.csv"};
        words.insert(words.end(), more.begin(), more.end());
        return run(words,
                   lines(wholeKit()) + "]d2\x1D\x1B[31mnothing\nhttp://\u202Eexample\n" + unknownTag + '\n');
    }

    support::ScratchFolder m_folder;
    std::filesystem::path m_file = m_folder / "club.tholepin";
};

TEST_F(ForeignText, drivesNoTerminalFromAnyAnswer) {
    const Ran check =
        launch({"--sign", hostileOf("Ada Thorne"), "--event", "Lake day", "--urgent", "swimmer"});
    ASSERT_EQ(check.exit, 1) << check.err << check.out;
    EXPECT_THAT(check.out, HasSubstr("Te\\x1b]0;owned\\x07al"));
    EXPECT_THAT(check.out, HasSubstr("life\\x1b[2Jjacket"));
    EXPECT_THAT(check.out, HasSubstr("hu\\x0all")) << "no row of a table breaks";
    EXPECT_THAT(check.out, HasSubstr("]d2\\x1d\\x1b[31mnothing"));
    EXPECT_THAT(check.out, HasSubstr("http://\\u202eexample"));
    expectNothingUnseen(check.out + check.err);
    const std::vector<std::vector<std::string>> commands{
        {"boats"},
        {"missing"},
        {"missing", "--event", "Lake day"},
        {"due", "--within", "9999d"},
        {"make-ready"},
        {"replace"},
        {"lasting"},
        {"tags", "--out", m_folder / "tags.pdf"},
        {"tags", "--mint", "2"},
        {"stocktake", "--place", hostileOf("Shed"), "--codes", "-"},
        {"service", "--rule", hostileOf("yearly look"), "--day", today, "--by", hostileOf("Ada Thorne"),
         "--codes", "-"},
        {"log"},
        {"log", "--boat", hostileOf("Teal")},
        {"history", towLine},
        {"history", hostileOf("Teal")},
        {"history", hostileOf("Ada Thorne")},
        {"aboard", "--boat", hostileOf("Teal"), "--on", "2026-03-14T23:00:00Z"},
        {"verify"},
        {"export", m_folder / "out"},
        {"scene", "--boat", hostileOf("Teal"), "--out", m_folder / "scene"},
        {"receive", "--kit-type", hostileOf("knife"), "--boat", hostileOf("Teal"), "--out",
         m_folder / "new.pdf"},
        {"retag", paddle1},
        {"write-off", paddle2, "--why", "worn"},
    };
    int answered = 0;
    for (std::vector<std::string> words : commands)
        for (const bool json : {false, true}) {
            if (json) words.push_back("--json");
            const Ran ran =
                run(words, words[0] == "service" ? towLine + "\n\x1B[31mcode\n" : "\x1B[31mcode\n");
            EXPECT_TRUE(ran.exit == 0 || ran.exit == 1 || json) << words[0] << ": " << ran.err;
            answered += !ran.out.empty();
            SCOPED_TRACE(words[0]);
            expectNothingUnseen(ran.out + ran.err);
            EXPECT_TRUE(!json || ran.exit > 1 || Json::accept(ran.out));
        }
    EXPECT_GT(answered, 40);
}

// RFC 8259, section 7: any character may be escaped, and means the same.
TEST_F(ForeignText, isTheSameValueInADocument) {
    const Ran boats = run({"boats", "--json"});
    EXPECT_EQ(Json::parse(boats.out)["boats"].at(1)["boat"], hostileOf("Teal"));
    const Ran rules = run({"due", "--within", "9999d", "--json"});
    EXPECT_THAT(rules.out, HasSubstr("yearly\\u2066look"));
    EXPECT_EQ(Json::parse(rules.out)["due"].at(0)["rule"], hostileOf("yearly look"));
}

TEST_F(ForeignText, drivesNoTerminalFromAnError) {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"check", "--boat", "No\x1B[31mne", "--phase", "launch", "--codes", "-"},
             {"check", "--boat", hostileOf("Teal"), "--phase", "lau\x1B[31mnch", "--codes", "-"},
             {"history", "K80\x1B[31m"},
             {"log-add", "--boat", hostileOf("Teal"), "--text", "torn\x1B[31m"},
             {"missing", "--event", "\u202Eday"},
             {"tags", "--out", "no\x1B[31m/such/folder.pdf"},
             {"no\x1B[31msuch"},
             {"import", "no\x1B[31m/such/folder"},
             {"replace", "--out", "or\u202E.der"}}) {
        const Ran ran = run(words);
        EXPECT_GE(ran.exit, 2) << words[0];
        expectOneErrorLine(ran);
        expectNothingUnseen(ran.out + ran.err);
    }
}

TEST_F(ForeignText, ofAPictureAndItsNameDrivesNoTerminal) {
    const std::string path = m_folder / "a\x1B[31m\u202Eb.png";
    ASSERT_TRUE(support::tagPicture({"http://\u202Eexample/\x1B[31m"}).save(QString::fromStdString(path)));
    const Ran ran = ctl({"read", path});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("http://\\u202eexample/\\x1b[31m"));
    EXPECT_THAT(ran.out, HasSubstr("a\\x1b[31m\\u202eb.png"));
    expectNothingUnseen(ran.out + ran.err);
    const Ran json = ctl({"read", "--json", path});
    EXPECT_EQ(Json::parse(json.out)["pictures"][0]["path"], path);
    expectNothingUnseen(json.out);
}

TEST_F(ForeignText, standsOnNoSheetForPeople) {
    for (const char* end : {"csv", "ics"}) {
        const std::string out = m_folder / (std::string("order.") + end);
        ASSERT_LE(run({"replace", "--months", "120", "--out", out}).exit, 1);
        std::string sheet = textOf(out);
        std::erase(sheet, '\r');
        expectNothingUnseen(sheet);
        EXPECT_THAT(sheet, HasSubstr("tow\\"));
    }
}

} // namespace
} // namespace small_club

#include "tests/app/cli/small_club.h"

#include "tests/support/tag_picture.h"

#include <QImage>

namespace small_club {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using Words = std::vector<std::string>;

class CheckInput : public SmallClub {
protected:
    /// That the words are refused as bad input with one line that holds `hint`, and nothing is recorded.
    void expectRefused(const Words& more, const std::string& hint, const std::string& boat = "Teal") {
        const std::string before = content();
        Words words{"check", "--boat", boat, "--phase", "launch", "--json", "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = run(words, lines(wholeKit()));
        EXPECT_EQ(ran.exit, 2);
        EXPECT_TRUE(ran.out.empty()) << ran.out;
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr(hint));
        EXPECT_EQ(content(), before);
    }
};

TEST_F(CheckInput, unknownBoatIsRefused) {
    expectRefused({"--codes", "-"}, "Swan", "Swan");
}

TEST_F(CheckInput, boatMayBeNamedByItsTagAndInAnyCase) {
    for (const char* boat : {"teal", " TEAL ", "bvwm v0jq qg"}) {
        const Ran ran =
            run({"check", "--boat", boat, "--phase", "launch", "--codes", "-", "--json", "--today", today});
        EXPECT_EQ(Json::parse(ran.out)["boat"], "Teal") << boat;
    }
}

TEST_F(CheckInput, unknownPeopleAreRefused) {
    expectRefused({"--codes", "-", "--driver", "Nobody"}, "Nobody");
    expectRefused({"--codes", "-", "--driver", "Ada Thorne", "--crew", "Nobody"}, "Nobody");
    expectRefused({"--codes", "-", "--sign", "Nobody"}, "Nobody");
}

TEST_F(CheckInput, codesFileThatIsNotThereIsRefused) {
    expectRefused({"--codes", m_folder / "none.txt"}, "none.txt");
    expectRefused({"--codes", m_folder.path()}, m_folder.path());
}

TEST_F(CheckInput, aByteOrderMarkIsNoPartOfTheFirstCode) {
    const Json told = Json::parse(
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            "\xEF\xBB\xBF" + knife + "\n")
            .out);
    EXPECT_TRUE(told["unread"].empty());
}

TEST_F(CheckInput, anEmptyValueIsRefused) {
    expectRefused({"--codes", ""}, "--codes");
    expectRefused({"--codes", "-", "--driver", ""}, "--driver");
    EXPECT_EQ(run({"due", "--today", ""}).exit, 2);
}

// What stands behind a NUL is part of the line: the code before it was not scanned.
TEST_F(CheckInput, aLineIsReadWhole) {
    const std::string line = knife + std::string(1, '\0') + "x\n";
    const Words words{"check",   "--boat", "Teal",   "--phase", "launch",
                      "--codes", "-",      "--json", "--today", today};
    EXPECT_EQ(Json::parse(run(words, line).out)["unread"].size(), 1U);
    EXPECT_EQ(Json::parse(run(words, knife + "\n").out)["unread"].size(), 0U);
}

// 4,096 bytes are a line still: an unread code, after which the next is taken.
TEST_F(CheckInput, aLineThatIsTooLongIsRefusedBeforeAnythingOfItsFileIsRecorded) {
    const auto codes = [&](std::size_t length) {
        return write("codes.txt", knife + "\n" + std::string(length, 'x') + "\n" + paddle1 + "\n");
    };
    expectRefused({"--codes", codes(4097)}, "codes.txt");
    const Ran taken = run(
        {"check", "--boat", "Teal", "--phase", "launch", "--codes", codes(4095), "--json", "--today", today});
    EXPECT_EQ(taken.exit, 1) << taken.err;
    EXPECT_EQ(Json::parse(taken.out)["unread"].size(), 1U);
}

// A pipe is not there twice.
TEST_F(CheckInput, aPipeThatCannotBeReadFurtherSaysThatTheRestIsRecorded) {
    const std::string before = content();
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--today", today},
                        knife + "\n" + std::string(5000, 'x') + "\n");
    EXPECT_EQ(ran.exit, 3);
    EXPECT_THAT(ran.err, HasSubstr("is recorded"));
    EXPECT_NE(content(), before);
}

TEST_F(CheckInput, pointsFileIsRefusedByRow) {
    const auto refused = [&](const std::string& text, const std::string& hint) {
        expectRefused({"--codes", "-", "--points", write("bad.csv", text)}, hint);
    };
    refused("point,value\nhull,done\nkeel,done\n", "bad.csv:3:point");
    refused("point,value\nhull,yes\n", "bad.csv:2:value");
    refused("point,value\nbow chamber,done\n", "bad.csv:2:value");
    refused("point,value\nbow chamber,\"20,5\"\n", "bad.csv:2:value");
    refused("point,value\nengine run,-3\n", "bad.csv:2:value");
    refused("point,value\nhull\n", "bad.csv:2");
    refused("place,value\nhull,done\n", "bad.csv:1");
    refused("", "bad.csv:1");
    expectRefused({"--codes", "-", "--points", m_folder / "none.csv"}, "none.csv");
}

TEST_F(CheckInput, unreadablePictureIsRefused) {
    expectRefused({"--from", write("bad.jpg", "no picture")}, "bad.jpg");
    expectRefused({"--from", m_folder / "none.png"}, "none.png");
    std::filesystem::create_directories(m_folder / "empty");
    expectRefused({"--from", m_folder / "empty"}, "empty");
}

TEST_F(CheckInput, picturesAreReadInOrder) {
    std::filesystem::create_directories(m_folder / "heap");
    const auto picture = [&](const Words& codes, const char* name) {
        ASSERT_TRUE(
            support::tagPicture(codes).save(QString::fromStdString((m_folder / "heap" / name).string())));
    };
    picture({knife, paddle1, paddle2, towLine}, "1.png");
    picture({jacketM, jacketL, radio, adaTag, boTag}, "2.png");
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "launch", "--json", "--today", today, "--from",
                         m_folder / "heap", "--points",
                         write("points.csv", "point,value\nhull,done\nbow chamber,20\nengine run,9\n")});
    EXPECT_EQ(ran.exit, 0) << ran.out;
    const Json report = Json::parse(ran.out);
    EXPECT_EQ(report["outcome"], "complete");
    for (const Json& line : report["lines"])
        for (const Json& item : line["items"])
            EXPECT_GT(item["print_grade"].get<double>(), 3) << item; // drawn a moment ago
    EXPECT_EQ(run({"tags", "--worn", "--out", m_folder / "worn.pdf"}).out,
              "no tag is known to be wearing out\n");
    EXPECT_FALSE(std::filesystem::exists(m_folder / "worn.pdf"));
}

TEST_F(CheckInput, whatIsNoCodeOfTheClubIsUnreadOnceAsItCame) {
    std::string text = lines(wholeKit());
    text += "hello\r\n\nhello\nKD0XPAMAJH\n" + cootTag + "\n" + tealTag + "\n";
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--crew",
                         "Bo Lind", "--json", "--today", today, "--codes", "-", "--points",
                         write("points.csv", "point,value\nhull,done\nbow chamber,20\nengine run,9\n")},
                        text);
    EXPECT_EQ(ran.exit, 0) << ran.out;
    const Json report = Json::parse(ran.out);
    EXPECT_THAT(report["unread"], ElementsAre("hello", "KD0XPAMAJH", cootTag));
    EXPECT_EQ(report["outcome"], "complete");
}

TEST_F(CheckInput, anUnknownTagIsARemark) {
    Words codes = wholeKit();
    codes.push_back(unknownTag);
    const Ran ran = check(codes);
    EXPECT_EQ(ran.exit, 0);
    const Json report = Json::parse(ran.out);
    ASSERT_EQ(report["findings"].size(), 1U);
    EXPECT_EQ(report["findings"][0]["kind"], "unknown-tag");
    EXPECT_EQ(report["findings"][0]["code"], unknownTag);
}

TEST_F(CheckInput, codesMayBeTypedForgivingly) {
    Words codes = without(wholeKit(), knife);
    codes.push_back("kdox pama-jg");
    EXPECT_EQ(check(codes).exit, 0);
}

TEST_F(CheckInput, aMakersLabelNamesTheItemOfItsGtinAndSerial) {
    Words codes = without(wholeKit(), radio);
    EXPECT_EQ(Json::parse(check(codes).out)["outcome"], "complete-with-remarks");
    // GS1 element string: AI 01 GTIN, AI 17 expiry, AI 21 serial (GS1 General Specifications 3.2).
    const Ran ran = check({"]d2010200000010001217270131"
                           "21R-7"});
    EXPECT_EQ(Json::parse(ran.out)["outcome"], "complete") << ran.out;
}

TEST_F(CheckInput, bytesThatAreNoTextStayValidJson) {
    const Ran ran =
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            "\xFF\xFE\n");
    ASSERT_TRUE(Json::accept(ran.out));
    EXPECT_EQ(Json::parse(ran.out)["unread"].size(), 1U);
}

TEST_F(CheckInput, codesMayComeFromAFile) {
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "launch", "--json", "--today", today,
                         "--codes", write("codes.txt", lines({knife}))});
    EXPECT_EQ(Json::parse(ran.out)["best"]["required"], 1);
}

/// What is told has happened. A day further is borne: of two time zones one may be there already.
TEST_F(CheckInput, anInstantToComeOrBefore1970IsRefused) {
    const auto checkAt = [&](const std::string& at, std::vector<std::string> more = {}) {
        std::vector<std::string> words{"check",   "--boat", "Teal", "--phase", "launch",
                                       "--codes", "-",      "--at", at};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, lines({knife}));
    };
    const std::string before = content();
    for (const char* at : {"9999-12-31T23:30:00Z", "2999-01-01T00:00:00Z", "1969-12-31T23:59:59Z"}) {
        const Ran ran = checkAt(at);
        EXPECT_EQ(ran.exit, 2) << at;
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr("is before 1970 or still to come"));
    }
    EXPECT_EQ(run({"due", "--today", "9999-12-31"}).exit, 2) << "a day that is none of another time zone";
    EXPECT_EQ(content(), before);
    EXPECT_EQ(checkAt("2026-03-14T06:40:00Z").exit, 1) << "which has happened, though the kit is incomplete";
    EXPECT_EQ(checkAt("2999-01-01T12:00:00Z", {"--today", "2999-01-01"}).exit, 1)
        << "on a day to try things on";
}

} // namespace
} // namespace small_club

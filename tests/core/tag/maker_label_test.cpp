#include "core/tag/maker_label.h"

#include "core/tag/gs1_identifiers.h"
#include "tests/core/base/days.h"
#include "tests/support/errors.h"

#include <gmock/gmock.h>

namespace core {
namespace {

// Strings marked [dictionary] or [engine] are published with GS1's own Barcode Syntax Dictionary (commit
// ff2eb4b) and Syntax Engine (commit 50657db), both Apache-2.0; [stdnum] with the tests of python-stdnum.

/// `^` stands for FNC1, which a reader transmits as GS.
std::string transmitted(std::string text) {
    std::replace(text.begin(), text.end(), '^', '\x1D');
    return text;
}

MakerLabel labelOf(const std::string& text, int currentYear = 2026) {
    const auto label = parseMakerLabel(transmitted(text), currentYear);
    EXPECT_TRUE(label) << text << ": " << (label ? "" : support::described(label.error()));
    return label ? *label : MakerLabel{};
}

bool isRefused(const std::string& text) {
    const auto label = parseMakerLabel(transmitted(text), 2026);
    return !label && label.error().kind() == ErrorKind::BadInput;
}

TEST(MakerLabel, readsWhatALabelSays) {
    const auto label = labelOf("010952110153000110AB-123^17210119^11190203^21SN/7");
    EXPECT_EQ(label.gtin, "09521101530001");
    EXPECT_EQ(label.batch, "AB-123");
    EXPECT_EQ(label.serial, "SN/7");
    EXPECT_EQ(label.stamped, known("2021-01-19"));
    EXPECT_EQ(label.made, known("2019-02-03"));
}

TEST(MakerLabel, readsPublishedStrings) {
    EXPECT_EQ(labelOf("013842587609507417181119371").stamped, known("2018-11-19")); // [stdnum]
    EXPECT_EQ(labelOf("(01)38425876095074(17)260400(10)123456").stamped->lastDay(),
              day("2026-04-30"));                                                       // [stdnum]
    EXPECT_EQ(labelOf("(01)58425876097843(10)123456(17)181119(37)18").batch, "123456"); // [stdnum]
    EXPECT_EQ(labelOf("0158425876097843"
                      "10123456^17181119"
                      "3718")
                  .stamped,
              known("2018-11-19"));                                                        // [stdnum]
    EXPECT_EQ(labelOf("^01123456789012311012345").batch, "12345");                         // [engine]
    EXPECT_EQ(labelOf("^1012345^11991225").made, known("1999-12-25"));                     // [engine]
    EXPECT_EQ(labelOf("^01095211015300011721011910AB-123").batch, "AB-123");               // [dictionary]
    EXPECT_EQ(labelOf("^010952110153000110AB-123^17210119").stamped, known("2021-01-19")); // [dictionary]
    EXPECT_EQ(labelOf("]d2011231231231233310ABC123^99TESTING").batch, "ABC123");           // [engine]
    EXPECT_EQ(labelOf("^0112345678901231^991234").gtin, "12345678901231");                 // [engine]
    EXPECT_EQ(labelOf("(01)03453120000011(17)120508(10)ABCD1234(410)9501101020917").stamped,
              known("2012-05-08"));
}

TEST(MakerLabel, readsAReturnableThingsNumberOnlyWithItsCheckDigit) {
    EXPECT_FALSE(isRefused("^800302112345678900ABC"));              // [engine]
    EXPECT_TRUE(isRefused("^800302112345678901ABC"));               // [engine] check digit
    EXPECT_TRUE(isRefused("(8003)112345678901281234567890123456")); // [engine] first digit must be 0
}

TEST(MakerLabel, refusesWhatGs1Refuses) {
    // [engine] and [dictionary]
    for (const char* text :
         {"(10)(11)98765", "(1A)12345", "(12345)12345", "(15", "(17)9(90)217", "(01)123456789012312(10)12345",
          "^891234", "^0112345678901234", "(01)95012345678903(11)131313"})
        EXPECT_TRUE(isRefused(text)) << text;
}

TEST(MakerLabel, refusesWhatIsCutShortEmptyOrAgainstItsCharacters) {
    for (const char* text : {"",
                             "^",
                             "]d2",
                             "01",
                             "0112345678901",
                             "17",
                             "1726",
                             "10",
                             "10^",
                             "21^17270101",
                             "(",
                             "(01",
                             "(01)12345678901231x(10)1",
                             "1121 203",
                             "1012345678901234567890X",
                             "10A B",
                             "10A\x07",
                             "10\xC3\x84",
                             "011234567890123A",
                             "17260a01",
                             "(17)",
                             "x(17)260101",
                             "hello",
                             "K7Q24RMX1P"})
        EXPECT_TRUE(isRefused(text)) << text;
    EXPECT_FALSE(isRefused("1012345678901234567890")) << "twenty characters are allowed";
    EXPECT_FALSE(isRefused("10!\"%&'()*+,-./:;<=>?_")) << "all marks of the character set 82";
}

TEST(MakerLabel, takesTheCharacterSet82AndNoOther) {
    // GS1 General Specifications, figure 7.11-1: 82 characters of ISO/IEC 646.
    const std::string set82 =
        "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";
    ASSERT_EQ(set82.size(), 82u);
    for (int c = 0; c < 256; ++c) {
        const char character = static_cast<char>(c);
        if (character == '\x1D') continue; // ends the element
        EXPECT_EQ(isRefused(std::string("10A") + character + "B"), set82.find(character) == set82.npos) << c;
    }
}

TEST(MakerLabel, takesAsManyCharactersAsGs1Allows) {
    // GS1 Barcode Syntax Dictionary, commit ff2eb4b; those of 22, 241, 243, 251, 254, 30, 400, 8020 and 8200
    // from memory.
    const std::vector<std::pair<std::string, std::size_t>> most{
        {"10", 20},   {"21", 20},   {"22", 20},   {"240", 30}, {"241", 30}, {"243", 20},
        {"250", 30},  {"251", 30},  {"254", 20},  {"30", 8},   {"37", 8},   {"400", 30},
        {"8004", 30}, {"8020", 25}, {"8200", 70}, {"90", 30},  {"91", 90},  {"99", 90}};
    for (const auto& [ai, length] : most) {
        EXPECT_FALSE(isRefused(ai + std::string(length, '1'))) << ai;
        EXPECT_TRUE(isRefused(ai + std::string(length + 1, '1'))) << ai;
    }
}

TEST(MakerLabel, refusesOneElementWithTwoValues) {
    EXPECT_TRUE(isRefused("10A^10B"));
    EXPECT_FALSE(isRefused("10A^10A"));
}

TEST(MakerLabel, namesTheElementThatIsWrong) {
    const auto label = parseMakerLabel("0112345678901234", 2026);
    ASSERT_FALSE(label);
    EXPECT_EQ(label.error(), (Error{ErrorCode::LabelCheckDigit, {"01", "12345678901234"}}));
    EXPECT_EQ(parseMakerLabel("10A B", 2026).error(), (Error{ErrorCode::LabelCharacter, {"10", "A B"}}));
    EXPECT_EQ(parseMakerLabel("10A\xC3~", 2026).error(), (Error{ErrorCode::LabelCharacter, {"10", "A?~"}}))
        << "plain ASCII only";
    EXPECT_EQ(parseMakerLabel("89123", 2026).error(), (Error{ErrorCode::LabelElementUnknown, {"8912"}}));
    EXPECT_EQ(parseMakerLabel("(15", 2026).error(), Error{ErrorCode::LabelBracketOpen});
    const std::string forty(40, 'x');
    EXPECT_EQ(parseMakerLabel("10" + forty + "yy", 2026).error(),
              (Error{ErrorCode::LabelLength, {"10", forty}}));
}

TEST(MakerLabel, inBracketsHoldsNothingButAnIdentifier) {
    EXPECT_TRUE(isRefused("(101)ABC"));
    EXPECT_TRUE(isRefused("(10 )ABC"));
    EXPECT_EQ(labelOf("(10)1ABC").batch, "1ABC");
}

TEST(MakerLabel, isTheSameWithAndWithoutASymbologyIdentifier) {
    // Identifiers: GS1 Syntax Engine, scandata.c.
    for (const char* symbol : {"]d2", "]Q3", "]C1", "]e0", ""})
        EXPECT_EQ(labelOf(std::string(symbol) + "0112345678901231"
                                                "21AB7\r\n")
                      .serial,
                  "AB7")
            << symbol;
    for (const char* symbol : {"]d1", "]Q1", "]E0"})
        EXPECT_TRUE(isRefused(std::string(symbol) + "0112345678901231")) << symbol;
}

TEST(MakerLabel, readsDayNoughtAsTheMonth) {
    // GS1 General Specifications on (17): the last day of the month, leap years included. For (11) the first
    // day is ours: the age is then never too low.
    const std::vector<std::pair<std::string, std::string>> lastDays{
        {"130200", "2013-02-28"}, {"160200", "2016-02-29"}, {"260400", "2026-04-30"},
        {"261200", "2026-12-31"}, {"280200", "2028-02-29"}, {"270200", "2027-02-28"}};
    for (const auto& [yymmdd, last] : lastDays) {
        EXPECT_EQ(labelOf("17" + yymmdd).stamped->lastDay(), day(last));
        EXPECT_EQ(labelOf("11" + yymmdd).made->firstDay().day(), 1);
        EXPECT_FALSE(labelOf("17" + yymmdd).stamped->isExact());
    }
}

TEST(MakerLabel, putsTwoDigitYearsWithin49YearsBackAnd50Ahead) {
    // GS1 General Specifications 7.12; rows recomputed from GS1's lint_yymmd0.c.
    const auto year = [](int now, const char* yy) {
        return labelOf("17" + std::string(yy) + "0601", now).stamped->lastDay().year();
    };
    EXPECT_EQ(year(1996, "00"), 2000);
    EXPECT_EQ(year(1996, "26"), 2026);
    EXPECT_EQ(year(1996, "49"), 1949);
    EXPECT_EQ(year(1996, "96"), 1996);
    EXPECT_EQ(year(2000, "50"), 2050);
    EXPECT_EQ(year(2000, "51"), 1951);
    EXPECT_EQ(year(2026, "27"), 2027);
    EXPECT_EQ(year(2026, "75"), 2075);
    EXPECT_EQ(year(2026, "76"), 2076);
    EXPECT_EQ(year(2026, "77"), 1977);
    EXPECT_EQ(year(2049, "99"), 2099);
    EXPECT_EQ(year(2049, "00"), 2000);
    EXPECT_EQ(year(2050, "00"), 2100);
    EXPECT_EQ(year(2050, "01"), 2001);
    EXPECT_EQ(year(2051, "01"), 2101);
    EXPECT_EQ(year(2051, "26"), 2026);
    EXPECT_EQ(year(2099, "00"), 2100);
    EXPECT_EQ(year(2099, "49"), 2149);
    EXPECT_EQ(year(2099, "50"), 2050);
}

TEST(MakerLabel, takesOnlyDaysThatExist) {
    // GS1 dictionary, lint_yymmd0.c and lint_yymmdd.c.
    for (const char* good : {"000229", "040229", "240229", "960229", "200229", "200131", "200430", "200600"})
        EXPECT_FALSE(isRefused("17" + std::string(good))) << good;
    for (const char* bad :
         {"200010", "201310", "209910", "200132", "200230", "210229", "220229", "230229", "240230", "200431",
          "200631", "200931", "201131", "1", "11111", "1111111", "x00131", "20013x"})
        EXPECT_TRUE(isRefused("17" + std::string(bad))) << bad;
    EXPECT_FALSE(parseMakerLabel("17000229", 2060)) << "2100 is no leap year";
    EXPECT_TRUE(parseMakerLabel("17000228", 2060));
}

TEST(MakerLabel, takesTheBestBeforeDayWhereThereIsNoExpiry) {
    EXPECT_EQ(labelOf("15270301").stamped, known("2027-03-01"));
    EXPECT_EQ(labelOf("15270301"
                      "17280401")
                  .stamped,
              known("2028-04-01"));
    EXPECT_EQ(labelOf("12270301"
                      "13270301"
                      "16270301")
                  .stamped,
              std::nullopt)
        << "payment, packing and sale are none";
}

TEST(MakerLabel, isKnownByAWholeArticleNumberInFront) {
    EXPECT_TRUE(looksLikeMakerLabel("0112345678901231"));        // [engine]
    EXPECT_TRUE(looksLikeMakerLabel("01123456789012311012345")); // [engine] digits may follow
    EXPECT_FALSE(looksLikeMakerLabel("2112345678901231")) << "another element in front";
    EXPECT_FALSE(looksLikeMakerLabel("0112345670")) << "EAN-8, with a good check digit, is too short";
}

TEST(MakerLabel, isKnownByItsSignsBeforeItIsRead) {
    for (const char* text : {"]d2anything", "]C1", "0112345678901231",
                             "0112345678901231"
                             "21A",
                             "(01)1", "10A^17260101"})
        EXPECT_TRUE(looksLikeMakerLabel(transmitted(text))) << text;
    for (const char* text : {"", "01", "K7Q24RMX1P", "0112345678901234", "011234567890123",
                             "011234567890123x", "]d1012", "https://example.org", "21ABC"})
        EXPECT_FALSE(looksLikeMakerLabel(transmitted(text))) << text;
}

TEST(Gs1CheckDigit, agreesWithPublishedNumbers) {
    // gs1.org, "How to calculate a check digit manually"; GS1 Sweden; GS1 India; GS1 dictionary, lint_csum.c.
    for (const char* good : {"6291041500213", "7300011000017", "8904000210037", "40987650000223", "02345673",
                             "416000336108", "1234567890128", "12345678901231", "123456789012345675"})
        EXPECT_TRUE(hasGs1CheckDigit(good)) << good;
    for (const char* bad :
         {"12345673", "416000336109", "1234567890129", "12345678901232", "123456789012345670"})
        EXPECT_FALSE(hasGs1CheckDigit(bad)) << bad;
    EXPECT_TRUE(hasGs1CheckDigit("6291041050213")) << "a known blind spot: neighbours that differ by five";
    EXPECT_FALSE(hasGs1CheckDigit(""));
}

TEST(Gs1CheckDigit, seesEverySingleWrongDigit) {
    const std::string good = "12345678901231";
    for (std::size_t at = 0; at < good.size(); ++at)
        for (char digit = '0'; digit <= '9'; ++digit) {
            std::string changed = good;
            changed[at] = digit;
            EXPECT_EQ(hasGs1CheckDigit(changed), changed == good) << changed;
        }
}

TEST(Gs1Identifiers, tellAWrongMonthAlsoWhereTheDayIsNought) {
    // GS1 Syntax Dictionary, lint_yymmd0.c: months 00 and 13 fail, a day 00 does not.
    std::size_t length = 0;
    const Gs1Identifier& expiry = *gs1IdentifierAt("17", length);
    EXPECT_EQ(gs1Fault(expiry, "261300"), ErrorCode::LabelMonth);
    EXPECT_EQ(gs1Fault(expiry, "260000"), ErrorCode::LabelMonth);
    EXPECT_EQ(gs1Fault(expiry, "261232"), ErrorCode::LabelDay);
    EXPECT_EQ(gs1Fault(expiry, "261200"), std::nullopt);
}

TEST(Gs1Identifiers, takeEveryLengthOfTheirFormatAndNoOther) {
    // GS1 Barcode Syntax Dictionary, commit ff2eb4b; 22, 241, 243, 251, 254, 30, 37, 400, 422, 8006, 8020 and
    // 8200 from memory. `begin` is what a value must begin with (check digits), then any characters follow.
    struct Format {
        const char* ai;
        std::string begin;
        std::size_t least, most;
    };
    const std::string gtin = "12345678901231", grai = "02112345678900"; // [engine]
    const std::vector<Format> formats{
        {"10", "", 1, 20},      {"20", "", 2, 2},    {"21", "", 1, 20},   {"22", "", 1, 20},
        {"240", "", 1, 30},     {"241", "", 1, 30},  {"243", "", 1, 20},  {"250", "", 1, 30},
        {"251", "", 1, 30},     {"254", "", 1, 20},  {"30", "", 1, 8},    {"3103", "", 6, 6},
        {"37", "", 1, 8},       {"400", "", 1, 30},  {"422", "", 3, 3},   {"8003", grai, 14, 30},
        {"8006", gtin, 18, 18}, {"8004", "", 4, 30}, {"8020", "", 1, 25}, {"8200", "", 1, 70},
        {"90", "", 1, 30},      {"91", "", 1, 90},   {"99", "", 1, 90},   {"01", gtin, 14, 14},
        {"02", gtin, 14, 14}};
    for (const Format& format : formats) {
        std::size_t aiLength = 0;
        const Gs1Identifier* identifier = gs1IdentifierAt(format.ai, aiLength);
        ASSERT_TRUE(identifier) << format.ai;
        for (std::size_t length = 0; length <= format.most + 2; ++length) {
            std::string value = format.begin.substr(0, length);
            value.resize(length, '1');
            EXPECT_EQ(!gs1Fault(*identifier, value), format.least <= length && length <= format.most)
                << format.ai << ' ' << value;
        }
    }
}

TEST(Gs1Identifiers, haveFormsThatCannotBeMistakenForEachOther) {
    std::size_t length = 0;
    for (const Gs1Identifier& identifier : gs1Identifiers()) {
        EXPECT_EQ(identifier.first.size(), identifier.last.size());
        EXPECT_LE(identifier.first, identifier.last);
        for (std::string_view ai : {identifier.first, identifier.last}) {
            EXPECT_EQ(gs1IdentifierAt(ai, length), &identifier) << ai;
            EXPECT_EQ(length, ai.size());
        }
        EXPECT_TRUE(!identifier.predefined || identifier.least() == identifier.most()) << identifier.first;
    }
}

TEST(Gs1Identifiers, ofPredefinedLengthAreThoseOfTheTable) {
    // GS1 General Specifications, predefined-length table: AI and data together.
    const std::vector<std::pair<std::string, int>> lengths{{"00", 20}, {"01", 16}, {"02", 16},   {"11", 8},
                                                           {"12", 8},  {"13", 8},  {"15", 8},    {"16", 8},
                                                           {"17", 8},  {"20", 4},  {"3103", 10}, {"410", 16}};
    std::size_t length = 0;
    for (const auto& [ai, whole] : lengths) {
        const Gs1Identifier* identifier = gs1IdentifierAt(ai, length);
        ASSERT_TRUE(identifier) << ai;
        EXPECT_TRUE(identifier->predefined) << ai;
        EXPECT_EQ(static_cast<int>(ai.size()) + identifier->most(), whole) << ai;
    }
    for (const char* ai : {"10", "21", "37", "240", "250", "8003", "8004", "8006", "90", "99", "400"}) {
        ASSERT_TRUE(gs1IdentifierAt(ai, length)) << ai;
        EXPECT_FALSE(gs1IdentifierAt(ai, length)->predefined) << ai;
    }
}

} // namespace
} // namespace core

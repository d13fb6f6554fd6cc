#include "app/gui/theme/language.h"
#include "app/text/errors.h"
#include "tests/app/text/error_cases.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace app {
namespace {

using core::Error;
using core::ErrorCode;

std::vector<ErrorCase> allCases() {
    std::vector<ErrorCase> all;
    for (const auto* cases : {&fileCases, &hubCases, &clubCases, &tagCases, &importCases, &spreadsheetCases})
        all.insert(all.end(), cases->begin(), cases->end());
    return all;
}

std::string numbered(const ErrorCase& each) {
    return "code " + std::to_string(static_cast<int>(each.error.code)) + ": " + each.sentence;
}

/// Speaks English again when it is gone.
class ErrorTexts : public testing::Test {
protected:
    void TearDown() override { speak("en"); }
};

bool hasPlaceholder(const QString& text) {
    for (qsizetype at = text.indexOf(u'%'); at >= 0; at = text.indexOf(u'%', at + 1))
        if (at + 1 < text.size() && text[at + 1].isDigit()) return true;
    return false;
}

/// What the system or SQLite says is said in German where it can be; all else stays as it was given.
bool isSaidByOthers(ErrorCode code) {
    static const std::set<ErrorCode> codes{
        ErrorCode::FileNotMade,          ErrorCode::DatabaseLocked,   ErrorCode::DatabaseForeign,
        ErrorCode::DatabaseDamaged,      ErrorCode::DatabaseFailed,   ErrorCode::FileNotWritten,
        ErrorCode::FileNotReplaced,      ErrorCode::FolderUnreadable, ErrorCode::FileNotSaved,
        ErrorCode::PinFileUnreadable,    ErrorCode::SheetNotSaved,    ErrorCode::PictureNotSaved,
        ErrorCode::PictureFolderNotMade,
    };
    return codes.contains(code);
}

void expectGerman(const ErrorCase& each) {
    const QString sentence = errorInWords(each.error);
    const QString mend = mendInWords(each.error);
    const QString line = errorLine(each.error);
    EXPECT_FALSE(hasPlaceholder(line)) << line.toStdString();
    EXPECT_EQ(mend.isEmpty(), each.mend.empty());
    if (!mend.isEmpty()) {
        EXPECT_NE(mend.toStdString(), each.mend);
    }
    if (!each.place.empty()) {
        EXPECT_NE(placeInWords(each.error).toStdString(), each.place);
    }
    // What an integrity check of SQLite finds is not in German; where it found it is.
    if (each.error.code != ErrorCode::FileUnsound) {
        EXPECT_NE(sentence.toStdString(), each.sentence);
    }
    if (isSaidByOthers(each.error.code)) return;
    for (const std::string& argument : each.error.arguments)
        EXPECT_TRUE(line.contains(QString::fromStdString(argument)))
            << argument << " in " << line.toStdString();
}

TEST_F(ErrorTexts, everyCodeHasItsCase) {
    std::multiset<ErrorCode> codes;
    for (const ErrorCase& each : allCases())
        codes.insert(each.error.code);
    for (int code = 0; code < static_cast<int>(ErrorCode::EndOfCodes); ++code)
        EXPECT_EQ(codes.count(static_cast<ErrorCode>(code)), 1U) << "code " << code;
}

TEST_F(ErrorTexts, everyCodeSaysItsSentenceInEnglish) {
    for (const ErrorCase& each : allCases()) {
        SCOPED_TRACE(numbered(each));
        EXPECT_EQ(errorInWords(each.error).toStdString(), each.sentence);
        EXPECT_EQ(mendInWords(each.error).toStdString(), each.mend);
        EXPECT_EQ(placeInWords(each.error).toStdString(), each.place);
        EXPECT_EQ(core::kindOf(each.error.code), each.kind);
        EXPECT_FALSE(hasPlaceholder(errorLine(each.error)));
    }
}

TEST_F(ErrorTexts, everyCodeIsGermanInTheGermanWindow) {
    speak("de");
    for (const ErrorCase& each : allCases()) {
        SCOPED_TRACE(numbered(each));
        expectGerman(each);
    }
}

TEST_F(ErrorTexts, aLineSaysWhatWhereAndHowToMendIt) {
    EXPECT_EQ(errorLine({ErrorCode::DayUnreadable, {"soon"}, "--today"}).toStdString(),
              "'soon' is no day (--today); write it like 2026-03-14");
    EXPECT_EQ(errorLine({ErrorCode::NothingToTakeBack}).toStdString(),
              "nothing stands in this check that could be taken back");
    EXPECT_EQ(errorLine({ErrorCode::NotSeen, {"two\nlines"}}).toStdString(),
              "two\\x0alines was not seen in this check");
}

TEST_F(ErrorTexts, aCauseIsSaidWithinAndSaysWhereItStands) {
    const Error changed{ErrorCode::FactChanged, {"7", "a1b2"}};
    const Error damaged{ErrorCode::RecordDamaged, {}, "club.tholepin", {changed}};
    EXPECT_EQ(
        errorLine(damaged).toStdString(),
        "the record is damaged: it was changed after it was written (club.tholepin: fact 7 of machine a1b2); "
        "take an older backup, or look at it with `verify`");
    speak("de");
    EXPECT_EQ(errorLine(damaged).toStdString(),
              "das Protokoll ist beschädigt: sie wurde nach dem Schreiben geändert (club.tholepin: Zeile 7 "
              "von Gerät "
              "a1b2); eine ältere Sicherung nehmen oder mit `verify` nachsehen");
}

TEST_F(ErrorTexts, aRejectionSaysHowToMendIt) {
    EXPECT_EQ(rejectionInWords({ErrorCode::TagLength, {"K12", "3"}}).toStdString(),
              "'K12' has 3 characters where a tag code has 10: type the ten characters under the tag");
    EXPECT_EQ(rejectionInWords({ErrorCode::CellNegative, {"-2"}}).toStdString(),
              "'-2' is negative: write 0 or more");
}

TEST_F(ErrorTexts, aNameMayHoldWhatASentenceIsMadeOf) {
    const Error error{ErrorCode::NoSuchSize, {"%2", "%1 in this club"}};
    EXPECT_EQ(errorInWords(error).toStdString(), "%2 has no size '%1 in this club'");
    speak("de");
    EXPECT_EQ(errorInWords(error).toStdString(), "%2 gibt es nicht in Größe „%1 in this club“");
}

TEST_F(ErrorTexts, whatTheSystemSaysIsSaidInTheWindowsLanguageWhereItIsKnown) {
    speak("de");
    EXPECT_EQ(errorInWords({ErrorCode::FileNotMade, {"No space left on device"}}).toStdString(),
              "die Datei lässt sich nicht anlegen: kein Platz mehr");
    EXPECT_EQ(errorInWords({ErrorCode::FileNotMade, {"oil on the disk"}}).toStdString(),
              "die Datei lässt sich nicht anlegen: oil on the disk");
    EXPECT_EQ(errorInWords({ErrorCode::NoSuchKitType, {"Permission denied"}}).toStdString(),
              "die Art „Permission denied“ gibt es in diesem Verein nicht")
        << "a name is the club's own";
}

} // namespace
} // namespace app

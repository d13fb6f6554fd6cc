#include "core/answers/history.h"
#include "core/base/error_code.h"
#include "core/club/club_answers.h"
#include "core/club/club_copy.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_photos.h"
#include "core/club/club_record.h"
#include "core/store/database.h"
#include "tests/core/club/small_club.h"

#include <gmock/gmock.h>

namespace {

using core::Database;
using core::ErrorCode;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const char* const rustyKnife = "KGFB6J8WF9";

std::string jpeg(const std::string& inside) {
    return "\xFF\xD8\xFF" + inside + "\xFF\xD9";
}

class PhotosOfAClub : public testing::Test {
protected:
    core::Photo addToKnife(const std::string& inside) {
        return small.club.photos().addToItem(rustyKnife, jpeg(inside), "Bram Oke", small.now).value();
    }
    std::vector<ErrorCode> problemsAfter(const std::string& sql) {
        Database(small.file(), Database::Mode::ReadWrite).script(sql);
        std::vector<ErrorCode> codes;
        const auto verified = small.club.record().verify(false);
        for (const core::Error& problem : verified->problems)
            codes.push_back(problem.code);
        return codes;
    }
    std::vector<std::string> kindsOf(const std::string& subject) {
        std::vector<std::string> kinds;
        const auto history = *small.club.answers().history(subject);
        for (const core::HistoryLine& line : history)
            kinds.push_back(line.kind);
        return kinds;
    }
    support::SmallClub small;
};

TEST_F(PhotosOfAClub, areOfItemsAndOfLogEntriesAndComeBackAsTheyWere) {
    const core::Photo photo = addToKnife("rust");
    EXPECT_EQ(photo.size, 9);
    EXPECT_EQ(photo.by, "Bram Oke");
    EXPECT_EQ(photo.sha256.size(), 64u);
    const auto entry =
        small.club.log().add("Petrel", "keel scratched", core::Severity::Remark, "Bram Oke", small.now);
    const auto damage =
        small.club.log().add(rustyKnife, "tip broken", core::Severity::Stop, "Bram Oke", small.now);
    ASSERT_TRUE(small.club.photos().addToEntry(entry->id, jpeg("keel"), "Bram Oke", small.now));
    ASSERT_TRUE(small.club.photos().addToEntry(damage->id, jpeg("tip"), "Bram Oke", small.now));
    EXPECT_THAT(small.club.photos().all(), SizeIs(3));
    ASSERT_THAT(small.club.photos().ofItem(rustyKnife), SizeIs(2));
    EXPECT_EQ(small.club.photos().ofItem(rustyKnife)[1].entry, damage->id);
    ASSERT_THAT(small.club.photos().ofEntry(entry->id), SizeIs(1));
    EXPECT_EQ(*small.club.photos().jpegOf(small.club.photos().ofEntry(entry->id)[0].sha256), jpeg("keel"));
    EXPECT_THAT(kindsOf(rustyKnife), testing::IsSupersetOf({"photo-added", "photo-added"}));
    EXPECT_EQ(kindsOf("Petrel").back(), "photo-added");
    const auto verified = *small.club.record().verify(true);
    EXPECT_THAT(verified.problems, IsEmpty());
    EXPECT_EQ(verified.photos, 3);
    EXPECT_EQ(verified.photoBytes, 9 + 9 + 8);
    EXPECT_THAT(small.club.photos().ofEntry(entry->id), SizeIs(1)) << "made anew from the record";
}

TEST_F(PhotosOfAClub, stayWithAnEntryWhoseBoatHasAnotherName) {
    const auto entry =
        small.club.log().add("Petrel", "keel scratched", core::Severity::Remark, "Bram Oke", small.now);
    ASSERT_TRUE(small.club.photos().addToEntry(entry->id, jpeg("keel"), "Bram Oke", small.now));
    ASSERT_TRUE(small.club.register_().rename(core::Named::Boat, "Petrel", "Stormy", {}, ""));
    const auto renamed = small.club.log().entries("Stormy")->front();
    EXPECT_THAT(small.club.photos().ofEntry(renamed.id), SizeIs(1));
    EXPECT_THAT(kindsOf("Stormy"), testing::Contains("photo-added"));
    EXPECT_THAT(small.club.record().verify(false)->problems, IsEmpty());
}

TEST_F(PhotosOfAClub, theSamePictureOfTheSameThingIsThereOnce) {
    const core::Photo first = addToKnife("rust");
    EXPECT_EQ(addToKnife("rust").id, first.id);
    EXPECT_THAT(small.club.photos().all(), SizeIs(1));
    // Of another thing it is told, and kept once.
    ASSERT_TRUE(small.club.photos().addToItem("K80NSC1FX4", jpeg("rust"), "", small.now));
    EXPECT_THAT(small.club.photos().all(), SizeIs(2));
    EXPECT_EQ(small.club.record().verify(false)->photos, 1);
}

TEST_F(PhotosOfAClub, whatIsNoJpegOrTooHeavyOrOfNothingIsRefused) {
    const auto refused = [&](const std::string& bytes) {
        return small.club.photos().addToItem(rustyKnife, bytes, "", small.now).error().code;
    };
    EXPECT_EQ(refused(""), ErrorCode::PhotoNotJpeg);
    EXPECT_EQ(refused("\x89PNG"), ErrorCode::PhotoNotJpeg);
    EXPECT_EQ(refused(jpeg("cut short").substr(0, 10)), ErrorCode::PhotoNotJpeg);
    EXPECT_EQ(refused(jpeg(std::string(core::ClubPhotos::mostBytes - 4, 'x'))), ErrorCode::PhotoTooHeavy);
    EXPECT_TRUE(small.club.photos().addToItem(
        rustyKnife, jpeg(std::string(core::ClubPhotos::mostBytes - 5, 'x')), "", small.now));
    EXPECT_EQ(small.club.photos().addToItem("K00000009T", jpeg("x"), "", small.now).error().code,
              ErrorCode::NoSuchItem);
    EXPECT_EQ(small.club.photos().addToEntry("0123456789", jpeg("x"), "", small.now).error().code,
              ErrorCode::NoSuchLogEntry);
    EXPECT_EQ(small.club.photos().jpegOf("00ff").error().code, ErrorCode::NoSuchPhoto);
}

TEST_F(PhotosOfAClub, oneOfTheWrongThingIsTakenBack) {
    const core::Photo wrong = addToKnife("another knife"), right = addToKnife("rust");
    const auto takeBack = [&](const std::vector<std::string>& ids) {
        return small.club.photos().takeBack(ids, "Bram Oke", small.now);
    };
    EXPECT_EQ(takeBack({wrong.id, "00ff"}).error().code, ErrorCode::NoSuchPhoto);
    EXPECT_THAT(small.club.photos().ofItem(rustyKnife), SizeIs(2)) << "all or none";
    ASSERT_TRUE(takeBack({wrong.id}));
    ASSERT_THAT(small.club.photos().ofItem(rustyKnife), SizeIs(1));
    EXPECT_EQ(small.club.photos().ofItem(rustyKnife)[0].id, right.id);
    EXPECT_EQ(takeBack({wrong.id}).error().code, ErrorCode::NoSuchPhoto);
    EXPECT_THAT(kindsOf(rustyKnife), testing::IsSupersetOf({"photo-added", "photo-added", "act-taken-back"}));
    EXPECT_THAT(small.club.record().verify(true)->problems, IsEmpty());
    EXPECT_THAT(small.club.photos().ofItem(rustyKnife), SizeIs(1)) << "made anew from the record";
    addToKnife("another knife");
    EXPECT_THAT(small.club.photos().ofItem(rustyKnife), SizeIs(2)) << "it may be of it after all";
}

TEST_F(PhotosOfAClub, changedRemovedOrAddedTheyShow) {
    const core::Photo photo = addToKnife("rust");
    EXPECT_THAT(problemsAfter("SELECT 1"), IsEmpty());
    EXPECT_THAT(problemsAfter("UPDATE photo SET bytes = x'ffd8ff00ffd9'"),
                ElementsAre(ErrorCode::PhotoChanged));
    EXPECT_FALSE(small.club.photos().jpegOf(photo.sha256));
    EXPECT_THAT(problemsAfter("UPDATE photo SET sha256 = '00ff'"),
                ElementsAre(ErrorCode::PhotoMissing, ErrorCode::PhotoStray));
    EXPECT_THAT(problemsAfter("DELETE FROM photo"), ElementsAre(ErrorCode::PhotoMissing));
    EXPECT_THAT(problemsAfter("UPDATE photo_of SET size = 1"), testing::Contains(ErrorCode::TableDiffers));
}

TEST_F(PhotosOfAClub, goIntoACopy) {
    const core::Photo photo = addToKnife("rust");
    const auto copied = core::copyClub(small.file(), small.folder / "copy.tholepin", false);
    ASSERT_TRUE(copied);
    EXPECT_EQ(copied->photos, 1);
    const auto copy = core::Club::open(small.folder / "copy.tholepin");
    EXPECT_EQ(*copy->photos().jpegOf(photo.sha256), jpeg("rust"));
}

} // namespace

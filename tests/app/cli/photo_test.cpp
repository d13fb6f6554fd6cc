#include "tests/app/cli/small_club.h"
#include "tests/support/picture_bombs.h"

#include <QImage>
#include <QString>

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;

class Photographs : public SmallClub {
protected:
    std::string picture(const std::string& name, QSize size) const {
        QImage image(size, QImage::Format_RGB32);
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                image.setPixel(x, y, qRgb(x * 7 % 256, y * 5 % 256, (x * y) % 256));
        const std::string path = m_folder / name;
        EXPECT_TRUE(image.save(QString::fromStdString(path)));
        return path;
    }
};

TEST_F(Photographs, ofAnItemAndAnEntryAreKeptAndComeOut) {
    const std::string big = picture("big.png", {3000, 2000});
    const Ran added = run({"photo", "--code", jacketM, big, "--by", "Bo Lind", "--today", today, "--json"});
    ASSERT_EQ(added.exit, 0) << added.err;
    const Json photo = Json::parse(added.out);
    EXPECT_EQ(photo["code"], jacketM);
    EXPECT_LE(photo["kb"], 300);
    const std::string hash = photo["photo"];
    const std::string out = m_folder / "out.jpg";
    ASSERT_EQ(run({"photo", "--show", hash, "--out", out}).exit, 0);
    const QImage shown(QString::fromStdString(out));
    EXPECT_EQ(shown.size(), QSize(1280, 853));
    const Ran entry = run({"log-add", "--boat", "Teal", "--text", "hull scratched", "--by", "Bo Lind",
                           "--today", today, "--json"});
    ASSERT_EQ(entry.exit, 0) << entry.err;
    const std::string id = Json::parse(entry.out)["entry"];
    ASSERT_EQ(run({"photo", "--entry", id, big, "--today", today}).exit, 0);
    const Json log = Json::parse(run({"log", "--json"}).out)["log"];
    ASSERT_EQ(log.size(), 1U);
    EXPECT_EQ(log[0]["photos"][0]["photo"], hash) << "the same picture";
    const Json history = Json::parse(run({"history", jacketM, "--json"}).out);
    EXPECT_EQ(history["photos"][0]["photo"], hash);
    EXPECT_EQ(history["photos"][0]["by"], "Bo Lind");
    const Json verified = Json::parse(run({"verify", "--json"}).out);
    EXPECT_EQ(verified["photos"]["count"], 1);
    EXPECT_EQ(verified["photos"]["kb"], photo["kb"]);
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
    const std::string copy = m_folder / "copy.tholepin";
    ASSERT_EQ(run({"backup", copy}).exit, 0);
    EXPECT_EQ(ctl({"photo", copy, "--show", hash, "--out", m_folder / "again.jpg"}).exit, 0);
    EXPECT_EQ(textOf(m_folder / "again.jpg"), textOf(out));
    // It was of the hull alone.
    const Ran taken = run({"photo", "--take-back", hash, "--code", jacketM, "--today", today, "--json"});
    ASSERT_EQ(taken.exit, 0) << taken.err;
    EXPECT_EQ(Json::parse(taken.out)["taken_back"][0]["code"], jacketM);
    EXPECT_EQ(Json::parse(run({"history", jacketM, "--json"}).out)["photos"].size(), 0U);
    EXPECT_EQ(Json::parse(run({"log", "--json"}).out)["log"][0]["photos"].size(), 1U);
    EXPECT_EQ(run({"photo", "--take-back", hash, "--code", jacketM}).exit, 2) << "it is of that no more";
    EXPECT_EQ(run({"photo", "--take-back", hash}).exit, 0);
    EXPECT_EQ(Json::parse(run({"log", "--json"}).out)["log"][0]["photos"].size(), 0U);
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(Photographs, whatIsNoPictureOrABombIsRefusedAndNothingIsChanged) {
    const std::string small = picture("small.png", {30, 20});
    const std::string before = content();
    const auto refused = [&](const std::vector<std::string>& words) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 2) << ran.err;
        expectOneErrorLine(ran);
    };
    refused({"photo", "--code", jacketM, write("note.txt", "no picture at all")});
    for (const auto& [ending, bytes] : support::pictureBombs(60000, 60000)) {
        const std::string bomb = m_folder / ("bomb." + ending);
        std::ofstream(bomb, std::ios::binary) << bytes;
        refused({"photo", "--code", jacketM, bomb});
    }
    refused({"photo", "--code", jacketM, m_folder / "nowhere.png"});
    refused({"photo", "--code", "K00000009T", small});
    refused({"photo", "--entry", "0123456789", small});
    refused({"photo", small});
    refused({"photo", "--show", "00ff", "--out", m_folder / "x.jpg"});
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"photo", "--code", jacketM, small, "--today", today}).exit, 0);
}

} // namespace
} // namespace small_club

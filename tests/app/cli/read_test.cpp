#include "tests/app/cli/small_club.h"

#include "tests/support/tag_picture.h"

#include <QImage>

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::UnorderedElementsAre;

class Read : public testing::Test {
protected:
    std::string picture(const std::string& name, const std::vector<std::string>& codes) const {
        const std::string path = m_folder / name;
        EXPECT_TRUE(support::tagPicture(codes).save(QString::fromStdString(path)));
        return path;
    }
    support::ScratchFolder m_folder;
};

TEST_F(Read, listsTheCodesOfAPicture) {
    const std::string path = picture("a.png", {knife, "https://example.org/"});
    const Ran ran = ctl({"read", path, "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    const Json pictures = Json::parse(ran.out)["pictures"];
    ASSERT_EQ(pictures.size(), 1U);
    EXPECT_EQ(pictures[0]["path"], path);
    EXPECT_FALSE(pictures[0].contains("frames"));
    ASSERT_EQ(pictures[0]["seen"].size(), 2U);
    for (const Json& seen : pictures[0]["seen"]) {
        EXPECT_EQ(seen["symbology"], "qr");
        EXPECT_EQ(seen["gs1"], false);
        EXPECT_EQ(seen["corners"].size(), 4U);
        EXPECT_EQ(seen["corners"][0].size(), 2U);
        const bool tag = seen["text"] == knife;
        EXPECT_EQ(seen["tag"], tag ? Json(knife) : Json(nullptr));
        if (tag)
            EXPECT_GT(seen["print_grade"].get<double>(), 3); // printed a moment ago
        else
            EXPECT_TRUE(seen["print_grade"].is_null());
    }
}

TEST_F(Read, theFastPassAloneReadsLessOfHardPictures) {
    const std::string samples = std::string(DEMO_FOLDER) + "/../tests/samples/";
    const auto codesOf = [&](const std::string& effort) {
        const Ran ran = ctl({"read", samples + "f0019.jpg", samples + "f0034.jpg", samples + "f0096.jpg",
                             "--effort", effort, "--seconds", "20", "--json"});
        std::size_t codes = 0;
        const Json document = Json::parse(ran.out);
        for (const Json& each : document["pictures"])
            for (const Json& seen : each["seen"]) {
                ++codes;
                EXPECT_THAT((std::vector<std::string>{"plain", "region", "fitted", "guessed"}),
                            testing::Contains(seen["how_read"].get<std::string>()));
            }
        EXPECT_GT(codes, 0U);
        return codes;
    };
    EXPECT_LT(codesOf("fast"), codesOf("full"));
    expectOneErrorLine(ctl({"read", samples + "f0019.jpg", "--effort", "great"}));
    expectOneErrorLine(ctl({"read", samples + "f0019.jpg", "--seconds", "0"}));
}

TEST_F(Read, readsStreamsAsALiveViewDoes) {
    for (int k = 0; k < 12; ++k) { // a build for testing may need several for one tag
        picture("bow_" + std::to_string(k) + ".png",
                k == 0 ? std::vector<std::string>{} : std::vector<std::string>{knife});
        picture("stern_" + std::to_string(k) + ".png", {paddle1, paddle2});
    }
    const Ran ran = ctl({"read", "--burst", m_folder / "", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    const Json streams = Json::parse(ran.out)["streams"];
    ASSERT_EQ(streams.size(), 2U);
    EXPECT_EQ(streams[0]["name"], "bow");
    EXPECT_EQ(streams[0]["frames"], 12);
    ASSERT_EQ(streams[0]["seen"].size(), 1U);
    const Json seen = streams[0]["seen"][0];
    EXPECT_EQ(seen, (Json{{"text", knife},
                          {"symbology", "qr"},
                          {"tag", knife},
                          {"guessed", false},
                          {"frame", seen["frame"]}}));
    EXPECT_GE(seen["frame"], 1);
    EXPECT_LT(seen["frame"], 12);
    EXPECT_EQ(streams[1]["seen"].size(), 2U);
}

TEST_F(Read, refusesStreamsThatAreNotWhole) {
    const auto refusal = [&](const std::string& what) {
        const Ran ran = ctl({"read", "--burst", m_folder / "", "--json"});
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr(what));
    };
    refusal("no stream");
    picture("a_0.png", {knife});
    picture("a_2.png", {knife});
    refusal("frame 1 is missing");
    picture("a_1.png", {knife});
    for (int k = 3; k < 12; ++k) // a build for testing may need several
        picture("a_" + std::to_string(k) + ".png", {knife});
    EXPECT_EQ(ctl({"read", "--burst", m_folder / ""}).exit, 0);
    picture("a_01.png", {knife});
    refusal("frame 1 is there twice");
    std::filesystem::remove(m_folder / "a_01.png");
    std::ofstream(m_folder / "a_1.png") << "no picture";
    refusal("a_1.png");
    expectOneErrorLine(ctl({"read", "--burst", m_folder / "nowhere"}));
    expectOneErrorLine(ctl({"read", "--burst", m_folder / "", "--effort", "fast"}));
}

TEST_F(Read, takesSeveralPathsAndFolders) {
    std::filesystem::create_directories(m_folder / "more");
    picture("a.png", {knife});
    picture("more/b.png", {paddle1});
    picture("more/c.png", {paddle2});
    const Ran ran = ctl({"read", m_folder / "a.png", m_folder / "more", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    std::vector<std::string> texts;
    const Json document = Json::parse(ran.out);
    for (const Json& each : document["pictures"])
        texts.push_back(each["seen"][0]["text"]);
    EXPECT_EQ(texts, (std::vector<std::string>{knife, paddle1, paddle2}));
}

TEST_F(Read, aPictureWithoutACodeNeedsSomebody) {
    const Ran ran = ctl({"read", picture("a.png", {knife}), picture("b.png", {}), "--json"});
    EXPECT_EQ(ran.exit, 1);
    EXPECT_EQ(Json::parse(ran.out)["pictures"].size(), 2U);
}

TEST_F(Read, whatIsNotThereOrNoPictureIsBadInput) {
    std::ofstream(m_folder / "words.jpg") << "words";
    for (const char* name : {"none.png", "words.jpg"}) {
        const Ran ran = ctl({"read", m_folder / name, "--json"});
        EXPECT_EQ(ran.exit, 2);
        EXPECT_TRUE(ran.out.empty()) << ran.out;
        expectOneErrorLine(ran);
        EXPECT_THAT(ran.err, HasSubstr(name));
    }
}

TEST_F(Read, oneBadPictureDoesNotHideTheOthers) {
    std::ofstream(m_folder / "words.jpg") << "words";
    const Ran ran = ctl({"read", picture("a.png", {knife}), m_folder / "words.jpg", "--json"});
    EXPECT_EQ(ran.exit, 2);
    ASSERT_EQ(Json::parse(ran.out)["pictures"].size(), 1U);
    EXPECT_EQ(Json::parse(ran.out)["pictures"][0]["seen"][0]["tag"], knife);
}

TEST_F(Read, needsLittleMemory) {
    EXPECT_LT(ctl({"read", picture("a.png", {knife, paddle1})}).peakKilobytes, 150 * 1024);
}

} // namespace
} // namespace small_club

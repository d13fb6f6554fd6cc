// What is asked of a camera, by controls that stand for one: no webcam of a test machine has any.
#include "scanner/live/camera_light.h"

#include <gmock/gmock.h>

namespace scanner {
namespace {

using namespace std::chrono_literals;
using testing::ElementsAre;
using testing::IsEmpty;

/// Notes what it is asked for.
class FakeLight : public LightControls {
public:
    struct Takes {
        bool night = false, compensation = false;
        std::optional<double> exposure{};
        std::optional<int> iso{};
    };
    FakeLight(const Takes& takes, std::vector<std::string>& asked)
        : m_takes(takes)
        , m_asked(asked) {}

    bool takesNightMode() const override { return m_takes.night; }
    bool takesCompensation() const override { return m_takes.compensation; }
    std::optional<double> longestExposure() const override { return m_takes.exposure; }
    std::optional<int> highestIso() const override { return m_takes.iso; }
    void setNightMode(bool isNight) override { m_asked.push_back(isNight ? "night" : "no night"); }
    void setCompensation(double stops) override { note("stops", stops); }
    void setExposure(std::optional<double> s) override { note("ms", s ? *s * 1000 : 0); }
    void setIso(std::optional<int> iso) override { note("iso", iso.value_or(0)); }

private:
    void note(const std::string& what, double value) {
        m_asked.push_back(what + " " + std::to_string(static_cast<int>(value + 0.5)));
    }

    Takes m_takes;
    std::vector<std::string>& m_asked;
};

class CameraLightTest : public testing::Test {
protected:
    void useOne(const FakeLight::Takes& takes) {
        light = std::make_unique<CameraLight>(std::make_unique<FakeLight>(takes, asked));
    }
    /// Thirty frames a second of one grey.
    void show(int grey, std::chrono::milliseconds length) {
        const GreyPicture frame(64, 48, static_cast<std::uint8_t>(grey));
        for (const auto end = now + length; now < end; now += 33ms)
            light->look(frame.view(), now);
    }

    std::vector<std::string> asked;
    std::unique_ptr<CameraLight> light;
    std::chrono::milliseconds now{5000};
};

TEST_F(CameraLightTest, asksStepByStepWhileThePictureStaysDark) {
    useOne({true, true, 0.5, 3200});
    show(20, 500ms);
    EXPECT_THAT(asked, IsEmpty());
    show(20, 400ms);
    EXPECT_THAT(asked, ElementsAre("night"));
    show(20, 10s);
    EXPECT_THAT(asked, ElementsAre("night", "stops 1", "stops 2", "ms 40", "iso 3200"));
}

TEST_F(CameraLightTest, asksNoMoreThanHelps) {
    useOne({true, true, 0.5, 3200});
    show(20, 900ms);
    show(120, 5s);
    EXPECT_THAT(asked, ElementsAre("night"));
    show(90, 10s); // and nothing is asked where it was never dark
    EXPECT_EQ(asked.size(), 1U);
}

TEST_F(CameraLightTest, leavesOutWhatTheCameraDoesNotTake) {
    useOne({false, false, {}, 800});
    show(20, 2s);
    EXPECT_THAT(asked, ElementsAre("iso 800"));
    asked.clear();
    useOne({});
    show(20, 5s);
    EXPECT_THAT(asked, IsEmpty());
}

TEST_F(CameraLightTest, takesBackWhatItAskedWhenItIsLight) {
    useOne({true, false, 0.02, {}});
    show(20, 3s);
    EXPECT_THAT(asked, ElementsAre("night", "ms 20"));
    asked.clear();
    show(250, 500ms);
    EXPECT_THAT(asked, IsEmpty());
    show(250, 5s);
    EXPECT_THAT(asked, ElementsAre("no night", "ms 0"));
    show(20, 900ms); // and asks anew
    EXPECT_EQ(asked.back(), "night");
}

} // namespace
} // namespace scanner

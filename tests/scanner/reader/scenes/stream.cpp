#include "tests/scanner/reader/scenes/stream.h"

#include "tests/scanner/reader/scenes/chance.h"
#include "tests/scanner/reader/scenes/near_miss_labels.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace scenes {
namespace {

Kind kindByChance(std::mt19937& random) {
    constexpr std::array kinds{Kind::Qr,         Kind::Qr,      Kind::Qr,    Kind::Qr,
                               Kind::Qr,         Kind::Qr,      Kind::Qr,    Kind::DataMatrix,
                               Kind::DataMatrix, Kind::Code128, Kind::Gs1Qr, Kind::Gs1DataMatrix,
                               Kind::Gs1Bars};
    return kinds[random() % kinds.size()];
}

/// Low light: the camera has raised its gain, so little contrast is left above the grain.
Optics makeOptics(Lighting lighting, std::mt19937& random) {
    Optics optics;
    optics.focal = between(1000, 1400, random);
    optics.blur = between(0.5, 1.1, random);
    optics.noise = between(1, 7, random);
    optics.exposure = between(0.55, 1.1, random);
    optics.unevenness = between(0, 0.5, random);
    optics.motionX = between(-1.5, 1.5, random);
    optics.motionY = between(-1.5, 1.5, random);
    if (lighting == Lighting::Dark) {
        optics.exposure = between(0.13, 0.3, random);
        optics.noise = between(9, 16, random);
        optics.blur = between(0.5, 0.8, random);
    }
    return optics;
}

Placed placeAt(Label label, double x, double y, const Scene& scene, double pixels, std::mt19937& random) {
    constexpr double distance = 0.6;
    Placed placed;
    label.ink = between(20, 110, random);
    label.paper = between(170, 240, random);
    label.negative = random() % 30 == 0;
    if (random() % 3 == 0 && label.role == "tag") soil(label, between(0.01, 0.12, random), random);
    if (random() % 5 == 0 && label.modules.height > 1) placed.bend = between(0.15, 0.6, random);
    placed.module = pixels * distance / scene.optics.focal;
    placed.label = std::move(label);
    placed.pose = Pose::turned(between(-0.5, 0.5, random), between(-0.5, 0.5, random),
                               between(0, 2 * std::numbers::pi, random));
    placed.pose.place = {(x - scene.width / 2.0) * distance / scene.optics.focal,
                         (y - scene.height / 2.0) * distance / scene.optics.focal, distance};
    return placed;
}

} // namespace

Scene makeScene(Lighting lighting, int width, int height, int most, const LabelMaker& next,
                std::mt19937& random) {
    Scene scene{width, height, makeGround(width, height, random), {}, makeOptics(lighting, random)};
    struct Circle {
        double x, y, radius;
    };
    std::vector<Circle> taken;
    for (int tries = 0; tries < 12 * most && static_cast<int>(scene.labels.size()) < most; ++tries) {
        Label label = next(random);
        const bool bars = label.modules.height == 1;
        const double pixels = bars ? between(1.5, 3, random) : std::exp(between(0.75, 1.9, random));
        const double radius =
            (std::hypot(label.wide() + 2 * label.quiet(), label.high() + 8) / 2) * pixels + 6;
        if (2 * radius > width || 2 * radius > height) continue;
        const Circle circle{between(radius, width - radius, random), between(radius, height - radius, random),
                            radius};
        const bool free = std::none_of(taken.begin(), taken.end(), [&](const Circle& other) {
            return std::hypot(other.x - circle.x, other.y - circle.y) < other.radius + circle.radius;
        });
        if (!free) continue;
        taken.push_back(circle);
        scene.labels.push_back(placeAt(std::move(label), circle.x, circle.y, scene, pixels, random));
    }
    return scene;
}

std::vector<Pose> heldByHand(int frames, std::mt19937& random) {
    std::vector<Pose> hands;
    double pitch = 0, yaw = 0, roll = 0;
    std::array<double, 3> place{};
    for (int i = 0; i < frames; ++i) {
        // Trembling about a place that drifts: three pixels and half a degree a frame, some tenths of a
        // millimetre.
        pitch = 0.9 * pitch + between(-0.003, 0.003, random);
        yaw = 0.9 * yaw + between(-0.003, 0.003, random);
        roll = 0.9 * roll + between(-0.01, 0.01, random);
        for (double& p : place)
            p = 0.95 * p + between(-0.0015, 0.0015, random);
        Pose hand = Pose::turned(pitch, yaw, roll);
        hand.place = place;
        hands.push_back(hand);
    }
    return hands;
}

LabelMaker clubLabels(unsigned firstNumber) {
    return [number = firstNumber](std::mt19937& random) mutable {
        return makeLabel(kindByChance(random), number++);
    };
}

LabelMaker joinedLabels(unsigned firstNumber) {
    return [number = firstNumber](std::mt19937& random) mutable {
        return makeJoined(kindByChance(random), number++, random);
    };
}

LabelMaker destroyedLabels(unsigned firstNumber) {
    return [number = firstNumber](std::mt19937& random) mutable {
        return makeDestroyed(kindByChance(random), number++, random);
    };
}

} // namespace scenes

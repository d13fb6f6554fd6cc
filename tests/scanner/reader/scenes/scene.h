#pragma once

#include "scanner/seen_code.h"
#include "tests/scanner/reader/scenes/scene_label.h"

#include <array>
#include <random>
#include <vector>

namespace scenes {

/// From a label's or the scene's coordinates to the camera's: x right, y down, z away; metres.
struct Pose {
    std::array<double, 9> turn{1, 0, 0, 0, 1, 0, 0, 0, 1};
    std::array<double, 3> place{0, 0, 0};

    static Pose turned(double pitch, double yaw, double roll); ///< radians, roll first
    Pose after(const Pose& first) const;
};

/// A label in the scene, its middle at its pose's place.
struct Placed {
    Label label;
    Pose pose;
    double module = 0.001; ///< metres
    double bend = 0; ///< half the angle that it covers on a cylinder with upright axis, radians; 0: flat
};

/// How the camera and the light are; pixels and grey levels.
struct Optics {
    double focal = 1100;
    double blur = 0.7;               ///< sigma
    double noise = 3;                ///< sigma
    double exposure = 1;             ///< of the light that labels tell of
    double unevenness = 0;           ///< of the light, from one side to the other
    double motionX = 0, motionY = 0; ///< pixels that the picture moves while a frame is taken
};

struct Scene {
    int width = 1280, height = 720;
    scanner::GreyPicture ground; ///< with a margin of 64 pixels around the frame
    std::vector<Placed> labels;
    Optics optics;
};

/// Wood, gravel or a plain ground with strokes like print on it.
scanner::GreyPicture makeGround(int width, int height, std::mt19937& random);

/// What the camera sees when it is held so.
scanner::GreyPicture draw(const Scene& scene, const Pose& hand, std::mt19937& random);

/// Where the label's symbol lies in that picture: top left first, clockwise.
scanner::Quad cornersOf(const Scene& scene, const Placed& placed, const Pose& hand);

} // namespace scenes

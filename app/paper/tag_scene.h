#pragma once

#include "core/club/club_kit.h"

#include <QImage>

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace app {

/// A picture of tagged kit in a heap, and the codes that lie on it in full view. Others may be covered.
struct TagScene {
    QImage picture; ///< 1280 × 720, RGB32
    std::vector<std::string> inFullView;
};

/// Pictures of the tags as a camera would see them: turned, seen at a slant, some covered, with shadows, on
/// plain and busy ground by turns. A module is at least 3 pixels wide. At least three pictures; each tag is
/// in full view on one. The same tags and seed give the same pictures. Needs a QGuiApplication.
/// `progress` hears the share of the tags that had their turn, after each picture.
std::vector<TagScene> tagScenes(const std::vector<core::TagLabel>& tags, std::uint64_t seed,
                                const std::function<void(double share)>& progress = {});

} // namespace app

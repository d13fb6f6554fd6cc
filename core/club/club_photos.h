#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/register/photo.h"

#include <string>
#include <vector>

namespace core {

struct ClubState;

/// Pictures of items, and of what log entries tell: a damage, a label. See Club for what holds of every
/// function.
class ClubPhotos {
public:
    explicit ClubPhotos(ClubState& state)
        : m_state(&state) {}

    static constexpr int mostBytes = 300'000; ///< of one picture
    static constexpr int longestSide = 1280;  ///< to which the programs scale one, in pixels

    /// `jpeg`: a whole JPEG file. The same picture of the same thing again changes nothing. BadInput for what
    /// is no JPEG, or heavier than that; NotFound.
    Result<Photo> addToItem(const std::string& code, const std::string& jpeg, const std::string& by,
                            Moment moment);
    Result<Photo> addToEntry(const std::string& entry, const std::string& jpeg, const std::string& by,
                             Moment moment);

    /// They were of something else: they are shown with that item or entry no more. The record keeps that
    /// they were added, and the file the pictures. `ids`: Photo::id. NoSuchPhoto, and all of them stay.
    Outcome takeBack(const std::vector<std::string>& ids, const std::string& by, Moment moment);

    std::vector<Photo> all() const; ///< as they were recorded, like all below
    /// Of the item, and of the log entries about it.
    std::vector<Photo> ofItem(const std::string& code) const;
    std::vector<Photo> ofBoat(const std::string& boat) const; ///< of the log entries about it
    std::vector<Photo> ofEntry(const std::string& entry) const;
    /// The JPEG of that hash. NotFound; FileDamaged where it is not what was recorded.
    Result<std::string> jpegOf(const std::string& sha256) const;

private:
    ClubState* m_state;
};

} // namespace core

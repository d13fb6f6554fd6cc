#pragma once

#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/register/boat.h"

#include <QString>
#include <QStringList>

#include <filesystem>
#include <string>
#include <vector>

class QPagedPaintDevice;

namespace core {
class Club;
}

namespace app {

/// What is asked of a boat, to be ticked or hung up on paper. Holds values only.
struct CheckList {
    struct Line {
        core::ManifestLine line;
        bool isWorn = false; ///< one for each on board
    };

    QString club;
    std::string name; ///< of the boat
    std::string boatClass;
    bool differs = false; ///< something else is asked of this boat than of its class
    core::CalendarDay day = core::CalendarDay::fromNumber(1);
    QStringList log; ///< open entries of the boat and its kit
    std::vector<Line> lines;
    std::vector<core::BoatPoint> launch;
    std::vector<core::BoatPoint> back;
};

/// NotFound: there is no such boat.
core::Result<CheckList> readCheckList(const core::Club& club, const std::string& boat,
                                      core::CalendarDay today);

/// Draws the boat's check list: what is open in the log, its kit with a box for each, its points with a box
/// or room for a value, lines for people, day, time and signature. On one page of A4 where it can be read
/// there: in smaller type, then in two columns; only then on more. False when the device cannot be painted
/// on. Any thread with a QGuiApplication. `pages`: how many it took.
bool paintCheckList(QPagedPaintDevice& device, const CheckList& list, int* pages = nullptr);
/// Draws the card for the wall of the shed: before, kit, after, in the largest type in which all stands on
/// one page; what is common practice is marked.
bool paintWallCard(QPagedPaintDevice& device, const CheckList& list, int* pages = nullptr);

/// The same as PDF; the file is whole or as it was: DiskFailed. Returns the number of pages.
core::Result<int> writeCheckList(const std::filesystem::path& file, const CheckList& list);
core::Result<int> writeWallCard(const std::filesystem::path& file, const CheckList& list);

} // namespace app

#pragma once

#include "app/gui/gear/manifests/manifests_page.h"
#include "app/gui/widgets/plain_table.h"
#include "core/club/club_manifests.h"
#include "tests/app/gui/gear/gear_story.h"

#include <filesystem>
#include <fstream>
#include <optional>
#include <string>
#include <vector>

namespace support {

inline const core::ManifestOwner inflatable{core::ManifestOwner::Kind::BoatClass, "inflatable"};
inline const core::ManifestOwner dabchick{core::ManifestOwner::Kind::Boat, "Dabchick"};

/// The page of the manifests over the demo club; what came of it is read from the file.
class ManifestsStory : public GearStory {
protected:
    const std::vector<app::TableRow>& rows() {
        return static_cast<app::PlainTableModel*>(child<app::PlainTable>("manifestTable")->model())->rows();
    }
    std::optional<app::TableRow> rowOf(const QString& name) {
        for (const app::TableRow& row : rows())
            if (row.cells[0] == name) return row;
        return std::nullopt;
    }
    std::optional<core::ManifestLine> storedLine(const core::ManifestOwner& owner,
                                                 const std::string& kitType) {
        const auto manifest = stored().manifests().read()->now(owner);
        for (const core::AskedLine& line : manifest.lines)
            if (line.line.kitType == kitType) return line.line;
        return std::nullopt;
    }
    /// Goes down the table to that row.
    void chooseRow(const QString& name) {
        focus("manifestTable");
        press(Qt::Key_Home, Qt::ControlModifier);
        for (std::size_t i = 0; i < rows().size() && chosenRow() != name; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(chosenRow(), name);
    }
    /// Rows of one file of the register, as an import lays them, from then on.
    void import(const char* name, const std::string& rows) {
        const auto sheets = folder() / "imported";
        std::filesystem::create_directories(sheets);
        std::ofstream(sheets / name, std::ios::binary) << rows;
        core::Club club = stored(core::Club::Access::ReadWrite);
        const auto plan = club.register_().importCsv(sheets, today(), false);
        ASSERT_TRUE(plan && plan->rejected.empty());
        std::filesystem::remove_all(sheets);
    }
    QString chosenRow() { return child<app::PlainTable>("manifestTable")->chosen(); }
    /// The table of points, and that row of it.
    void choosePoint(const QString& key) {
        focus("manifestLinesChoice");
        press(Qt::Key_Right);
        chooseRow(key);
        press(Qt::Key_Return);
    }
    std::optional<core::BoatPoint> storedPoint(const core::ManifestOwner& owner, const std::string& name,
                                               const std::string& phase = "launch") {
        const auto manifest = stored().manifests().read()->now(owner);
        for (const core::AskedPoint& each : manifest.points)
            if (each.point.name == name && each.phase == phase) return each.point;
        return std::nullopt;
    }
    void chooseVersion(int down) {
        focus("manifestVersionsList");
        press(Qt::Key_Home);
        for (int i = 0; i < down; ++i)
            press(Qt::Key_Down);
    }
};

} // namespace support

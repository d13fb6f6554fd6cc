#pragma once

#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/widgets/plain_table.h"
#include "app/text/contract_words.h"
#include "app/text/errors.h"
#include "app/text/words.h"
#include "core/club/club_register.h"
#include "core/club/register_edit.h"

#include <optional>
#include <string>
#include <vector>

namespace support {

/// The forms of the register over the demo club, beside a club just like it in which the same is written by
/// ClubRegister::write: what the window writes and refuses is held against that.
class RegisterStory : public GearStory {
protected:
    void SetUp() override {
        GearStory::SetUp();
        std::filesystem::copy_file(file(), twinFile());
    }
    std::filesystem::path twinFile() const { return folder() / "twin.tholepin"; }
    core::Club twin() const {
        auto club = core::Club::open(twinFile());
        EXPECT_TRUE(club);
        return std::move(club).value();
    }
    std::optional<core::Cells> storedRow(core::SheetId sheet, const core::Cells& key) const {
        return stored().register_().row(sheet, key);
    }
    static std::string cellOf(core::SheetId sheet, const core::Cells& row, std::string_view column) {
        return row[static_cast<std::size_t>(core::sheet(sheet).indexOf(column))];
    }
    std::string storedCell(core::SheetId sheet, const core::Cells& key, std::string_view column) const {
        const auto row = storedRow(sheet, key);
        return row ? cellOf(sheet, *row, column) : "no such row";
    }
    core::Result<core::EditPlan> writeToTwin(core::SheetId sheet, const core::Cells& key,
                                             const std::string& column, const std::string& cell) const {
        core::RowEdit row;
        for (std::size_t i = 0; i < key.size(); ++i)
            row.key.emplace_back(std::string(core::sheet(sheet).columns[i].name), key[i]);
        row.cells = {{column, cell}};
        return twin().register_().write({sheet, {row}}, "Joss Iveny", moment());
    }

    /// Goes down the table of that page to the row of those words.
    void chooseRow(const char* table, const QString& words) {
        focus(table);
        auto* rows = child<app::PlainTable>(table);
        const auto at = [&] { return rows->currentIndex().siblingAtColumn(0).data().toString().trimmed(); };
        press(Qt::Key_Home, Qt::ControlModifier);
        for (int i = 0; i < rows->model()->rowCount() && at() != words; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(at(), words);
    }
    /// Of boats, people, places or kit types with what is beneath them.
    void openRow(const QString& sheet, const QString& words) {
        if (!child("registerTable")->isVisible()) pressButton("registerBackButton");
        choose("registerSheetBox", sheet);
        chooseRow("registerTable", words);
        press(Qt::Key_Return);
        ASSERT_TRUE(child("registerRowPanel")->isVisible());
    }
    /// Waits for what a change would do, which is asked a moment after the last letter.
    template <class Is>
    bool planned(Is is) {
        return waitFor(is);
    }
    QString said() { return textOf("registerSaidLabel"); }
    QString refusal(const std::string& column) {
        const auto* label = child<QLabel>(("cell_" + column + "_refusal").c_str());
        return label ? label->text() : QString("no such cell");
    }
    static QString asRefused(const core::Error& reason) {
        return app::withCapital(app::inWordsOfForms(app::rejectionInWords(reason))) + '.';
    }
};

} // namespace support

#include "tests/app/gui/gear/register/register_story.h"

#include "core/tag/tag_code.h"

#include <QCheckBox>
#include <QClipboard>

#include <map>

// Each cell that a person may write in the window, over the description of the sheets: what is typed is
// stored as ClubRegister::write stores it, and what that refuses is refused at its cell with the same reason.

using core::CellType;
using core::SheetId;

namespace {

/// A row whose cells are written, and how the window is brought to it.
struct Place {
    core::Cells key;
    QString sheet; ///< in the page's box; empty: an item, by its code
    QString row;   ///< in the table
};

/// What is typed into a cell, and what that is to the register.
struct Written {
    std::string typed, cell, refused;
};

class EveryCell : public support::RegisterStory {
protected:
    static Place placeOf(SheetId sheet, std::string_view column) {
        switch (sheet) {
        case SheetId::Boats:
            return {{"Dabchick"}, "boats", "Dabchick"};
        case SheetId::People:
            return {{"Hal Okoro"}, "people", "Hal Okoro"};
        case SheetId::Places:
            return {{"Drying rack"}, "places", "Drying rack"};
        case SheetId::KitTypes:
            return {{"bailer"}, "kit types", "bailer"};
        case SheetId::Sizes:
            return {{"inflatable jacket", "adult"}, "kit types", "size adult"};
        case SheetId::LifeRules:
            if (column == "event") return {{"inflatable jacket", "", "rearm"}, "kit types", "rearm"};
            return {{"life jacket", "", "float test"}, "kit types", "float test"};
        default:
            break;
        }
        if (column == "boat") return {{"KVP5CYVRE7"}, {}, {}};   // a paddle on Bittern
        if (column == "person") return {{"KMD903N033"}, {}, {}}; // a whistle of Wren Dallow's
        if (column == "size") return {{"KGYD21XNA5"}, {}, {}};   // a life jacket
        if (column == "since" || column == "why") return {{"KFRN1CCPVA"}, {}, {}}; // written off
        return {{"KFGQ9XHHKJ"}, {}, {}};                                           // an oar in the gear store
    }

    static std::string freshTag(char tagClass) {
        std::uint64_t next = 7;
        return core::TagCode::mint(static_cast<core::TagClass>(tagClass),
                                   [&] { return next = next * 6364136223846793005U + 1; })
            .text();
    }

    static Written nameFor(std::string_view column) {
        static const std::map<std::string_view, std::string> names{
            {"place", "Repair bench"}, {"boat", "Grebe"}, {"person", "Hal Okoro"}, {"kit_type", "paddle"}};
        return {names.at(column), names.at(column), "nobody knows this"};
    }

    static Written textFor(const core::Column& column) {
        const bool isSentence = column.name == "note" || column.name == "source";
        const std::string tooLong(isSentence ? 2001 : 201, 'x');
        if (column.name == "size") return {"S", "S", "giant"};
        if (column.name == "boat_class") return {"skiff", "skiff", tooLong};
        return {"Blue 7", "Blue 7", tooLong};
    }

    /// Yes and no, and choices, cannot be typed wrongly: there is nothing that is refused.
    static Written writtenTo(const core::Column& column) {
        switch (column.type) {
        case CellType::Count:
            return {"12", "12", "twelve"};
        case CellType::Number:
        case CellType::Amount:
            if (column.name == "n") return {"6,0", "6", "many"};
            return {"87,5", "87.5", "many"};
        case CellType::Day:
        case CellType::ExactDay:
            return {"3.2.2026", "2026-02-03", "some day"};
        case CellType::Name:
            return nameFor(column.name);
        case CellType::Tag:
            return {freshTag(column.tagClass), freshTag(column.tagClass), "X-17"};
        case CellType::Steps:
            return {"60:6", "60:6", "often"};
        case CellType::Tolerance:
            return {"14d", "14d", "sometimes"};
        case CellType::Gtin:
            return {"2000000100012", "02000000100012", "123"};
        case CellType::YesNo:
            return {{}, {}, {}};
        case CellType::Choice:
            return {{}, std::string(column.choices.front()), {}};
        default:
            return textFor(column);
        }
    }

    void openPlace(const Place& place) {
        if (!place.sheet.isEmpty()) return openRow(place.sheet, place.row);
        typeInto("kitSearchEdit", QString::fromStdString(place.key[0]));
        settle();
        press(Qt::Key_Return);
        pressButton("kitChangeButton");
    }
    /// By keys; what is longer than a line is pasted, as a person would: two thousand keys test no more.
    void put(const std::string& field, const std::string& words) {
        const bool isLong = words.size() > 100;
        typeInto(field.c_str(), isLong ? QString() : QString::fromStdString(words));
        if (!isLong) return;
        QApplication::clipboard()->setText(QString::fromStdString(words));
        press(Qt::Key_V, Qt::ControlModifier);
    }
    void save(SheetId sheet) {
        pressButton(sheet == SheetId::Items ? "kitChangeSaveButton" : "registerSaveButton");
    }
    void discard(SheetId sheet) {
        pressButton(sheet == SheetId::Items ? "kitChangeDiscardButton" : "registerDiscardButton");
    }

    /// Writes by the keyboard; gives what the cell is then.
    std::string write(const core::Column& column, const Place& place, SheetId sheet, const Written& written) {
        const std::string field = "cell_" + std::string(column.name);
        if (column.type == CellType::YesNo) {
            pressButton(field.c_str());
            return child<QCheckBox>(field.c_str())->isChecked() ? "yes" : "no";
        }
        if (column.type == CellType::Choice) {
            if (column.name == "kind") { // others need other cells, too
                choose(field.c_str(), "service");
                return "service_every";
            }
            // The last of the list, or the one before it where it is chosen already.
            focus(field.c_str());
            press(Qt::Key_End);
            auto* box = child<QComboBox>(field.c_str());
            if (box->currentData().toString().toStdString() == storedCell(sheet, place.key, column.name))
                press(Qt::Key_Up);
            return box->currentData().toString().toStdString();
        }
        put(field, written.typed);
        return written.cell;
    }

    void expectWritten(SheetId sheet, const core::Column& column) {
        const Place place = placeOf(sheet, column.name);
        openPlace(place);
        const std::string cell = write(column, place, sheet, writtenTo(column));
        const auto inTwin = writeToTwin(sheet, place.key, std::string(column.name), cell);
        ASSERT_TRUE(inTwin);
        ASSERT_TRUE(inTwin->rejected.empty())
            << app::errorLine(inTwin->rejected.front().reason).toStdString();
        ASSERT_EQ(inTwin->changes.size(), 1U) << "nothing differs: a change of nothing shows nothing";
        save(sheet);
        EXPECT_EQ(storedRow(sheet, place.key), twin().register_().row(sheet, place.key));
        EXPECT_EQ(storedCell(sheet, place.key, column.name), cell);
    }

    void expectRefused(SheetId sheet, const core::Column& column) {
        const Written written = writtenTo(column);
        if (written.refused.empty()) return;
        const Place place = placeOf(sheet, column.name);
        const auto before = storedRow(sheet, place.key);
        openPlace(place);
        put("cell_" + std::string(column.name), written.refused);
        const auto inTwin = writeToTwin(sheet, place.key, std::string(column.name), written.refused);
        ASSERT_TRUE(inTwin);
        ASSERT_FALSE(inTwin->rejected.empty());
        ASSERT_EQ(inTwin->rejected.front().column, column.name);
        save(sheet);
        EXPECT_EQ(refusal(std::string(column.name)), asRefused(inTwin->rejected.front().reason));
        EXPECT_EQ(storedRow(sheet, place.key), before);
        discard(sheet);
        EXPECT_EQ(refusal(std::string(column.name)), "");
    }

    void expectEvery(SheetId id, const QString& page) {
        openOffice(page);
        const core::Sheet& sheet = core::sheet(id);
        for (std::size_t at = static_cast<std::size_t>(sheet.keyColumns); at < sheet.columns.size(); ++at) {
            SCOPED_TRACE(std::string(sheet.file) + " " + std::string(sheet.columns[at].name));
            expectRefused(id, sheet.columns[at]);
            expectWritten(id, sheet.columns[at]);
        }
    }
};

} // namespace

TEST_F(EveryCell, ofABoat) {
    expectEvery(SheetId::Boats, "register");
}
TEST_F(EveryCell, ofAPerson) {
    expectEvery(SheetId::People, "register");
}
TEST_F(EveryCell, ofAPlace) {
    expectEvery(SheetId::Places, "register");
}
TEST_F(EveryCell, ofAKitType) {
    expectEvery(SheetId::KitTypes, "register");
}
TEST_F(EveryCell, ofASize) {
    expectEvery(SheetId::Sizes, "register");
}
TEST_F(EveryCell, ofALifeRule) {
    expectEvery(SheetId::LifeRules, "register");
}
TEST_F(EveryCell, ofAnItem) {
    expectEvery(SheetId::Items, "kit");
}

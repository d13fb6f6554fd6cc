#include "core/club/club_register.h"
#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/exchange/csv_import.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/tag/tag_code.h"

#include "core/exchange/csv_export.h"
#include "core/register/typed_rows.h"
#include "core/store/club_file.h"
#include "core/store/row_table.h"
#include "core/store/tag_tables.h"

#include <algorithm>
#include <map>
#include <set>
#include <sodium.h>

namespace core {
Result<ImportPlan> importInto(Database& database, Ledger& ledger, const std::filesystem::path& folder,
                              CalendarDay today, const std::function<void(int, int)>& progress) {
    auto plan = planImport(folder, RegisterStore(database), today, mintingFor(database), progress);
    if (plan && plan->rejected.empty()) appendRows(database, ledger, plan->changes, {}, {});
    return plan;
}

Result<ImportPlan> ClubRegister::importCsv(const std::filesystem::path& folder, CalendarDay today,
                                           bool dryRun, const std::function<void(int, int)>& progress) {
    if (dryRun)
        return guarded([&] {
            return planImport(folder, m_state->registerStore, today, mintingFor(*m_state->database),
                              progress);
        });
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<ImportPlan> {
        auto plan = importInto(*m_state->database, ledger, folder, today, progress);
        if (plan && plan->rejected.empty()) m_state->endUrgentOfWhole(ledger, today);
        return plan;
    });
}

Result<ClubSheetPlan> ClubRegister::importClubSheet(const Workbook& workbook, const ClubSheetChoices& choices,
                                                    CalendarDay today, bool dryRun,
                                                    const std::function<void(int, int)>& progress) {
    const auto plan = [&] {
        return planClubSheet(workbook, choices, m_state->registerStore, today, mintingFor(*m_state->database),
                             progress);
    };
    if (dryRun) return guarded(plan);
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<ClubSheetPlan> {
        auto read = plan();
        if (!read || !read->plan.rejected.empty()) return read;
        appendRows(*m_state->database, ledger, read->plan.changes, {}, {});
        m_state->endUrgentOfWhole(ledger, today);
        return read;
    });
}

Result<TableLayout> ClubRegister::layoutOf(const Workbook& workbook, const ClubSheetChoices& choices) const {
    return guarded([&] { return core::layoutOf(workbook, choices, m_state->registerStore); });
}

Result<TableLayout> ClubRegister::layoutToChooseFrom(const Workbook& workbook,
                                                     const ClubSheetChoices& choices) const {
    return guarded([&] { return core::layoutToChooseFrom(workbook, choices, m_state->registerStore); });
}

Outcome ClubRegister::exportCsv(const std::filesystem::path& folder,
                                const std::vector<std::string>& measuresOf) const {
    return guarded([&] {
        const ReadSnapshot asOfNow(*m_state->database);
        return exportSheets(m_state->registerStore, folder, measuresOf);
    });
}

std::vector<Boat> ClubRegister::boats() const {
    std::vector<Boat> boats;
    for (const Cells& cells : m_state->registerStore.all(SheetId::Boats))
        boats.push_back(boatFrom(cells));
    return boats;
}

std::vector<Person> ClubRegister::people() const {
    std::vector<Person> people;
    for (const Cells& cells : m_state->registerStore.all(SheetId::People))
        people.push_back(personFrom(cells));
    return people;
}

Result<Boat> ClubRegister::boat(const std::string& name) const {
    return guarded([&]() -> Result<Boat> {
        if (auto boat = m_state->registerStore.boat(name)) return *boat;
        std::string known;
        for (const Boat& each : boats())
            known += (known.empty() ? "" : ", ") + each.name;
        return known.empty() ? Error{ErrorCode::NoBoats, {name}}
                             : Error{ErrorCode::NoSuchBoat, {name, known}};
    });
}

Result<std::vector<BoatPoint>> ClubRegister::pointsOf(const std::string& name, Phase phase) const {
    return guarded([&]() -> Result<std::vector<BoatPoint>> {
        const auto found = boat(name);
        if (!found) return found.error();
        return m_state->registerStore.pointsOf(*found, nameOf(phase));
    });
}

std::optional<Boat> ClubRegister::boatOfTag(const std::string& code) const {
    return m_state->registerStore.boatOfTag(code);
}

std::vector<std::string> ClubRegister::places() const {
    std::vector<std::string> places;
    for (const Cells& cells : m_state->registerStore.all(SheetId::Places))
        places.push_back(cells[0]);
    return places;
}

std::vector<KitType> ClubRegister::kitTypes() const {
    std::vector<KitType> kitTypes;
    for (auto& [name, kitType] : m_state->registerStore.allKitTypes())
        kitTypes.push_back(kitType);
    return kitTypes;
}

} // namespace core

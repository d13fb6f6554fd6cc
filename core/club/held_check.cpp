#include "core/club/held_check.h"

#include <exception>

namespace core {

bool HeldCheck::isCurrent(const std::string& check) const {
    return m_held && m_held->check == check && m_held->changeMark == m_database.changeMark();
}

const BoatCheckInput& HeldCheck::inputOf(const CheckRun& run, CalendarDay today) {
    if (!isCurrent(run.check)) {
        m_held.reset();
        const ReadSnapshot asOfNow(m_database);
        const std::int64_t mark = m_database.changeMark();
        m_held = Held{run.check, mark, m_store.inputOf(run, today)};
    }
    m_held->input.today = today;
    return m_held->input;
}

void HeldCheck::add(const CheckRun& run, const std::string& code) {
    try {
        const auto sighting = checkTables::newestSighting(m_database, code);
        if (!sighting) return m_held.reset();
        m_store.addSighting(m_held->input, run, *sighting);
        m_held->changeMark = m_database.changeMark();
    } catch (const std::exception&) {
        m_held.reset();
    }
}

void HeldCheck::drop(const CheckRun& run, const std::string& code) {
    try {
        if (run.phase == Phase::Stocktake) return m_held.reset(); // what is expected there may change, too
        m_store.dropSighting(m_held->input, code);
        m_held->changeMark = m_database.changeMark();
    } catch (const std::exception&) {
        m_held.reset();
    }
}

} // namespace core

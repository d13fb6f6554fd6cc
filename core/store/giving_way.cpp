#include "core/store/giving_way.h"

#include "core/store/database.h"

#include <sqlite3.h>

namespace core {
namespace {

constexpr int steps = 1000; ///< of SQLite's machine, between two looks: some microseconds

} // namespace

GivingWay::GivingWay(Database& own, Database& other, bool& gaveWay)
    : m_own(own)
    , m_other(other)
    , m_gaveWay(gaveWay)
    , m_before(own.waits()) {
    for (const Database* each : {&m_own, &m_other})
        sqlite3_progress_handler(each->handle(), steps, isWaitedFor, this);
}

GivingWay::~GivingWay() {
    for (const Database* each : {&m_own, &m_other})
        sqlite3_progress_handler(each->handle(), 0, nullptr, nullptr);
}

int GivingWay::isWaitedFor(void* self) {
    auto& way = *static_cast<GivingWay*>(self);
    way.m_gaveWay = way.m_gaveWay || way.m_own.waits() != way.m_before;
    return way.m_gaveWay ? 1 : 0;
}

} // namespace core

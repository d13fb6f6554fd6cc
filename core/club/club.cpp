#include "core/club/club.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/result.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_exchange.h"
#include "core/club/club_hub.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_manifests.h"
#include "core/club/club_photos.h"
#include "core/club/club_pins.h"
#include "core/club/club_plans.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/store/club_file.h"
#include "core/store/row_table.h"

#include <sodium.h>

namespace core {

Club::Club(std::unique_ptr<ClubState> state)
    : m_state(std::move(state)) {}
Club::Club(Club&&) noexcept = default;
Club& Club::operator=(Club&&) noexcept = default;
Club::~Club() = default;

namespace {

/// Ends the making of a file that nobody is to have.
struct NotMade {};

/// Makes the file of a club of that name; `fill` may write more into it.
Result<std::unique_ptr<Database>> makeFile(const std::filesystem::path& file, const std::string& name,
                                           const std::function<void(Database&, Ledger&)>& fill) {
    if (sodium_init() < 0) return Error{ErrorCode::NoRandomNumbers};
    const auto called = nameFrom(name, "club");
    if (!called) return called.error();
    std::optional<Ledger> ledger;
    auto database = clubFile::create(file, [&](Database& fresh) {
        ledger.emplace(fresh).append(ClubNamed{*called}, {});
        fill(fresh, *ledger);
        ledger->committing();
    });
    ledger->committed();
    return database;
}

} // namespace

Result<Club> Club::create(const std::filesystem::path& file, const std::string& name) {
    return guarded([&]() -> Result<Club> {
        auto database = makeFile(file, name, [](Database&, Ledger&) {});
        if (!database) return database.error();
        try {
            return Club(std::make_unique<ClubState>(std::move(*database)));
        } catch (...) {
            clubFile::remove(file); // nobody was told of it
            throw;
        }
    });
}

Result<ImportPlan> Club::createFrom(const std::filesystem::path& file, const std::string& name,
                                    const std::filesystem::path& folder, CalendarDay today,
                                    const std::function<void(int, int)>& progress) {
    return guarded([&]() -> Result<ImportPlan> {
        Result<ImportPlan> plan = ImportPlan{};
        try {
            const auto made = makeFile(file, name, [&](Database& fresh, Ledger& ledger) {
                plan = importInto(fresh, ledger, folder, today, progress);
                if (!plan || !plan->rejected.empty()) throw NotMade();
            });
            return made ? plan : made.error();
        } catch (const NotMade&) {
            return plan;
        }
    });
}

Result<Club> Club::open(const std::filesystem::path& file, Access access) {
    return guarded([&]() -> Result<Club> {
        if (sodium_init() < 0) return Error{ErrorCode::NoRandomNumbers};
        return Club(std::make_unique<ClubState>(clubFile::open(file, access == Access::ReadOnly)));
    });
}

std::string Club::name() const {
    return rowTable::clubName(*m_state->database);
}

std::int64_t Club::changeMark() const {
    return m_state->database->changeMark();
}

bool Club::isInPlace() const {
    return m_state->database->isInPlace();
}

void Club::rest() {
    m_state->database->rest();
}

ClubRegister Club::register_() const {
    return ClubRegister(*m_state);
}
ClubKit Club::kit() const {
    return ClubKit(*m_state);
}
ClubManifests Club::manifests() const {
    return ClubManifests(*m_state);
}
ClubChecks Club::checks() const {
    return ClubChecks(*m_state);
}
ClubEvents Club::events() const {
    return ClubEvents(*m_state);
}
ClubLog Club::log() const {
    return ClubLog(*m_state);
}
ClubAnswers Club::answers() const {
    return ClubAnswers(*m_state);
}
ClubPhotos Club::photos() const {
    return ClubPhotos(*m_state);
}
ClubPins Club::pins() const {
    return ClubPins(*m_state);
}
ClubPlans Club::plans() const {
    return ClubPlans(*m_state);
}
ClubHub Club::hub() const {
    return ClubHub(*m_state);
}
ClubExchange Club::exchange() const {
    return ClubExchange(*m_state);
}
ClubRecord Club::record() const {
    return ClubRecord(*m_state);
}

} // namespace core

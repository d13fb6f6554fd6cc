#pragma once

#include "core/base/error_code.h"
#include "core/hub/hub_connection.h"
#include "core/hub/hub_facts.h"
#include "core/record/machine_key.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "tests/core/hub/hub_support.h"

namespace support {

using core::ErrorCode;
using core::Fact;

inline core::hubFacts::FactBatch batchOf(const std::vector<Fact>& facts) {
    core::hubFacts::FactBatch batch;
    for (const Fact& fact : facts)
        batch.add(fact);
    return batch;
}

/// A hub that has what the machine "shed" of Sandbay wrote.
class HubRefuses : public HubTest {
protected:
    void SetUp() override {
        founded(shed);
        ASSERT_TRUE(shed.join(url()));
        expectExchanged(shed, static_cast<int>(shed.facts()), 0);
    }
    static std::string clubIn(HubMachine& machine) {
        core::Database database(machine.file, core::Database::Mode::ReadOnly);
        return core::clubOf(database);
    }
    static std::vector<Fact> factsIn(HubMachine& machine) {
        std::vector<Fact> facts;
        core::Database database(machine.file, core::Database::Mode::ReadOnly);
        core::factTable::forEachByStamp(database, [&](const Fact& fact) { facts.push_back(fact); });
        return facts;
    }
    /// A fact that follows that one, as a program would write it.
    static Fact following(const Fact& last) {
        Fact next = last;
        next.id = core::newUuid7(core::Instant::now());
        ++next.seq;
        next.prevHash = last.hash;
        next.kind = "club-named";
        next.body = R"({"name":"Sandbay"})";
        next.hash = core::hashOf(next);
        return next;
    }
    /// How a new machine's chain begins, signed.
    static Fact begun(const std::string& continues) {
        const core::MachineKey key = core::MachineKey::fresh();
        const core::MachineBegun body{key.publicKey(), "van", continues};
        Fact fact{.id = core::newUuid7(core::Instant::now()),
                  .machine = key.machine(),
                  .seq = 1,
                  .atUtc = core::Instant::now().iso(),
                  .kind = "machine-begun",
                  .body = core::textOf(core::FactBody(body))};
        fact.hash = core::hashOf(fact);
        fact.signature = key.signatureOf(fact);
        return fact;
    }
    /// What the hub says of these facts; nothing: it took them.
    std::optional<ErrorCode> pushed(const std::vector<Fact>& facts, std::optional<std::int64_t> known = {}) {
        core::HubConnection hub(core::hubUrlFrom(url()).value());
        const std::int64_t there = std::stoll(ask("SELECT count(*) FROM tholepin.fact"));
        try {
            const auto added = core::hubFacts::push(hub, clubIn(shed), known.value_or(there), batchOf(facts));
            return added ? std::optional<ErrorCode>() : ErrorCode::HubAhead;
        } catch (const core::StoreFailure& failure) {
            m_refused = failure.error.arguments;
            return failure.error.code;
        }
    }
    /// Puts a fact there behind the back of the function that checks, as the database's owner can.
    void plant(const std::string& sql) {
        ask("ALTER TABLE tholepin.fact DISABLE TRIGGER USER; " + sql +
            "; ALTER TABLE tholepin.fact ENABLE TRIGGER USER");
    }
    std::string count() { return ask("SELECT count(*) FROM tholepin.fact"); }

    std::vector<std::string> m_refused; ///< the arguments of the newest error of `pushed`
    HubMachine shed{folder / "shed"};
    HubMachine home{folder / "home"};
};

} // namespace support

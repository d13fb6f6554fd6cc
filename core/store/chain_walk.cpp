#include "core/store/chain_walk.h"

#include "core/base/error_code.h"
#include "core/record/machine_key.h"
#include "core/store/private_table.h"

namespace core {

void ChainWalk::report(ErrorCode code, const Fact& fact, const std::vector<std::string>& more) {
    std::vector<std::string> arguments{std::to_string(fact.seq), fact.machine};
    arguments.insert(arguments.end(), more.begin(), more.end());
    m_into.problems.push_back({code, std::move(arguments)});
}

/// A chain begins with the fact that tells the machine's key.
void ChainWalk::begin(const Fact& fact) {
    m_seq = 0;
    m_hash.clear();
    m_publicKey.clear();
    MachineRecord machine{.machine = fact.machine};
    const auto body = bodyOf(fact);
    const auto* begun = body && *body ? std::get_if<MachineBegun>(&**body) : nullptr;
    if (begun != nullptr && machineOf(begun->publicKey) == fact.machine) {
        m_publicKey = begun->publicKey;
        machine.name = begun->name;
        machine.isSigned = true;
    } else {
        report(ErrorCode::MachineUnknown, fact);
    }
    m_into.machines.push_back(std::move(machine));
}

void ChainWalk::visit(const Fact& fact) {
    if (m_into.machines.empty() || fact.machine != m_into.machines.back().machine) begin(fact);
    ++m_into.facts;
    if (fact.seq != m_seq + 1)
        report(ErrorCode::FactsMissing, fact, {std::to_string(m_seq + 1), std::to_string(fact.seq - 1)});
    if (fact.prevHash != m_hash) report(ErrorCode::FactOutOfChain, fact);
    if (!isCanonical(fact.body))
        report(ErrorCode::FactBodyChanged, fact);
    else if (hashOf(fact) != fact.hash)
        report(ErrorCode::FactChanged, fact);
    else
        lookAtSignature(fact);
    lookAtPrivateCells(fact);
    m_seq = fact.seq;
    m_hash = fact.hash;
    MachineRecord& machine = m_into.machines.back();
    ++machine.facts;
    machine.head = fact.hash;
}

void ChainWalk::lookAtSignature(const Fact& fact) {
    if (m_publicKey.empty() || isSignedBy(fact, m_publicKey)) return; // an unknown machine is told once
    m_into.machines.back().isSigned = false;
    report(ErrorCode::FactNotSigned, fact);
}

void ChainWalk::lookAtPrivateCells(const Fact& fact) {
    if (fact.body.find("\"sealed\"") == std::string::npos) return; // most facts: not read again for it
    const auto body = bodyOf(fact);
    const auto* row = body && *body ? std::get_if<RowWritten>(&**body) : nullptr;
    if (row == nullptr) return;
    const bool isErased = privateTable::isErased(m_database, fact.id);
    for (const auto& [column, digest] : row->sealed) {
        const std::string name(sheet(row->sheet).columns[static_cast<std::size_t>(column)].name);
        const auto cell = privateTable::find(m_database, fact.id, name);
        if (cell && digestOf(*cell) != digest) report(ErrorCode::PrivateCellChanged, fact, {name});
        if (!cell && !isErased) report(ErrorCode::PrivateCellMissing, fact, {name});
        m_into.erased += !cell && isErased ? 1 : 0;
    }
}

} // namespace core

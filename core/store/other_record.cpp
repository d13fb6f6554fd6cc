#include "core/store/other_record.h"

#include "core/base/error_code.h"
#include "core/record/machine_key.h"
#include "core/store/chain_walk.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/migrations.h"
#include "core/store/private_table.h"

#include <algorithm>
#include <map>

namespace core {
namespace {

std::int64_t newestSeq(Database& database, const std::string& machine) {
    const auto newest = factTable::newestOf(database, machine);
    return newest ? newest->seq : 0;
}

const Fork* forkOf(const std::vector<Fork>& forks, const std::string& machine) {
    const auto found =
        std::find_if(forks.begin(), forks.end(), [&](const Fork& fork) { return fork.machine == machine; });
    return found == forks.end() ? nullptr : &*found;
}

/// The facts of a chain from a fork on, as those of a machine that begins here.
class AsNewMachine {
public:
    /// `common`: hash of the newest fact before the fork, which both files have.
    AsNewMachine(Database& own, const std::string& name, std::string common)
        : m_own(own)
        , m_key(MachineKey::fresh())
        , m_name(name)
        , m_common(std::move(common)) {}

    void take(const Fact& fact, OtherFacts& into) {
        const bool isBeginning = fact.kind == MachineBegun::kind;
        if (isBeginning || factTable::byId(m_own, fact.id)) {
            into.leftOut += isBeginning ? 0 : 1;
            return;
        }
        if (m_seq == 0) put(beginningBefore(fact), into);
        put(fact, into);
    }

private:
    /// It goes on from what both have.
    Fact beginningBefore(const Fact& fact) const {
        const Instant at = factTable::recordedAt(fact);
        const MachineBegun begun{m_key.publicKey(), m_name, m_common};
        return {.id = newUuid7(at),
                .atUtc = fact.atUtc,
                .kind = std::string(MachineBegun::kind),
                .body = textOf(FactBody(begun))};
    }

    void put(Fact fact, OtherFacts& into) {
        if (m_seq == 0) into.chains.push_back({into.remade.get(), m_key.machine(), 0, 0});
        fact.machine = m_key.machine();
        fact.seq = ++m_seq;
        fact.prevHash = m_hash;
        fact.hash = hashOf(fact);
        fact.signature = m_key.signatureOf(fact);
        m_hash = fact.hash;
        factTable::insert(*into.remade, fact);
        ++into.ofKind[fact.kind];
        into.chains.back().upTo = m_seq;
    }

    Database& m_own;
    MachineKey m_key;
    std::string m_name;
    std::string m_common;
    std::int64_t m_seq = 0;
    std::string m_hash;
};

/// One machine's new facts, looked through in the other file.
class ChainReader {
public:
    ChainReader(Database& own, Database& other, const std::vector<Fork>& forks)
        : m_own(own)
        , m_other(other)
        , m_forks(forks)
        , m_walk(other, m_found) {}

    void read(const std::string& machine, OtherFacts& into) {
        const Fork* fork = forkOf(m_forks, machine);
        const std::int64_t known = fork ? fork->seq - 1 : newestSeq(m_own, machine);
        if (known > 0)
            m_walk.goOnAfter(*factTable::inChain(m_own, machine, known),
                             factTable::publicKeyOf(m_own, machine));
        std::optional<AsNewMachine> taker;
        std::int64_t last = known;
        factTable::forEachAfter(m_other, machine, known, [&](const Fact& fact) {
            m_walk.visit(fact);
            if (!m_found.problems.empty()) requireSound();
            last = fact.seq;
            if (!fork) {
                ++into.ofKind[fact.kind];
                return requireNew(fact);
            }
            if (!taker) taker.emplace(m_own, m_found.machines.back().name, commonBefore(*fork));
            taker->take(fact, into);
        });
        requireSound();
        if (!fork && last > known) into.chains.push_back({&m_other, machine, known, last});
    }

    /// Only the club's own beginning goes on from nothing: another one is of another club.
    void end(const OtherFacts& news) {
        const std::string founder = clubOf(clubOf(m_own).empty() ? m_other : m_own);
        std::map<std::string, std::string> notHere; // machines by what they went on from
        for (const auto& [machine, continues] : m_walk.beginnings()) {
            const bool isHere = continues.empty() ? machine == founder : factTable::isThere(m_own, continues);
            if (!isHere) notHere.emplace(continues, machine);
        }
        if (notHere.empty()) return;
        auto facts = news.facts();
        while (const auto fact = facts.next())
            notHere.erase(fact->hash);
        if (!notHere.empty())
            throw StoreFailure({ErrorCode::FactsCutOff, {"1", notHere.begin()->second}, m_other.path()});
    }

private:
    /// A key that was another one from its first fact on goes on from the club's beginning.
    std::string commonBefore(const Fork& fork) {
        const auto before =
            fork.seq > 1 ? factTable::inChain(m_own, fork.machine, fork.seq - 1) : factTable::oldest(m_own);
        return before ? before->hash : std::string();
    }
    void requireNew(const Fact& fact) {
        if (!factTable::isIdThere(m_own, fact.id)) return;
        requireSound();
        throw StoreFailure({ErrorCode::ForkTakenIn, {}, m_other.path()});
    }
    void requireSound() {
        m_walk.settle();
        if (m_found.problems.empty()) return;
        Error problem = m_found.problems.front();
        throw StoreFailure({ErrorCode::OtherRecordDamaged, {}, m_other.path(), {std::move(problem)}});
    }

    Database& m_own;
    Database& m_other;
    const std::vector<Fork>& m_forks;
    Verification m_found;
    ChainWalk m_walk;
};

/// What was not handed on with a fact may come later, from another file.
void addCellsOfKnown(Database& own, Database& other, OtherFacts& news) {
    for (const std::string& id : privateTable::notHere(own)) {
        const auto fact = factTable::byId(own, id);
        if (!fact) continue;
        const auto body = factTable::bodyOf(*fact);
        const auto sealed = body ? sealedCells(*body) : std::vector<SealedCell>();
        std::vector<PrivateCell> cells;
        for (const auto& [name, digest] : sealed) {
            auto cell = privateTable::find(other, id, name);
            if (cell && digestOf(id, *cell) != digest)
                throw StoreFailure(
                    {ErrorCode::OtherRecordDamaged,
                     {},
                     other.path(),
                     {{ErrorCode::PrivateCellChanged, {std::to_string(fact->seq), fact->machine, name}}}});
            if (cell) cells.push_back(std::move(*cell));
        }
        if (!cells.empty() && cells.size() == sealed.size()) news.cellsOfKnown.emplace_back(id, cells);
    }
}

} // namespace

bool mayHoldPrivateCells(const Fact& fact) {
    const Sheet* sheet = sheetOfTable(fact.kind);
    if (sheet == nullptr) return fact.kind == PinSet::kind;
    return std::any_of(sheet->columns.begin(), sheet->columns.end(),
                       [](const Column& column) { return column.isPrivate; });
}

std::int64_t firstDifference(std::int64_t last, const std::function<bool(std::int64_t seq)>& isSame) {
    std::int64_t low = 1, high = last;
    while (low < high) {
        const std::int64_t middle = low + (high - low) / 2;
        if (isSame(middle))
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

std::vector<Fork> forksBetween(Database& own, Database& other) {
    std::vector<Fork> forks;
    for (const std::string& machine : factTable::machines(other)) {
        const std::int64_t last = std::min(newestSeq(own, machine), newestSeq(other, machine));
        if (last == 0) continue;
        const auto isSame = [&](std::int64_t seq) {
            const auto here = factTable::inChain(own, machine, seq);
            const auto there = factTable::inChain(other, machine, seq);
            return here && there && here->hash == there->hash;
        };
        if (isSame(last)) continue;
        const std::int64_t seq = firstDifference(last, isSame);
        const auto idOf = [&](Database& database) {
            const auto fact = factTable::inChain(database, machine, seq);
            return fact ? fact->id : std::string();
        };
        forks.push_back({machine, seq, idOf(own), idOf(other)});
    }
    return forks;
}

OtherFacts factsNotHere(Database& own, Database& other, const std::vector<Fork>& forks) {
    if (clubOf(own) != clubOf(other)) throw StoreFailure({ErrorCode::OtherClub, {}, other.path()});
    return newFactsIn(own, other, forks);
}

OtherFacts newFactsIn(Database& own, Database& other, const std::vector<Fork>& forks) {
    OtherFacts news;
    news.other = &other;
    news.ownFacts = own.number("SELECT count(*) FROM fact");
    if (!forks.empty()) {
        news.remade = std::make_unique<Database>(std::filesystem::path(), Database::Mode::Passing);
        migrate(*news.remade, migrations());
    }
    ChainReader reader(own, other, forks);
    for (const std::string& machine : factTable::machines(other))
        reader.read(machine, news);
    reader.end(news);
    addCellsOfKnown(own, other, news);
    return news;
}

bool isStillNew(Database& own, const OtherFacts& news) {
    if (news.remade) return own.number("SELECT count(*) FROM fact") == news.ownFacts;
    return std::all_of(news.chains.begin(), news.chains.end(),
                       [&](const auto& chain) { return newestSeq(own, chain.machine) == chain.after; });
}

std::int64_t OtherFacts::count() const {
    std::int64_t facts = 0;
    for (const FactsByStamp::Chain& chain : chains)
        facts += chain.upTo - chain.after;
    return facts;
}

bool OtherFacts::isRenamed() const {
    return ofKind.contains(std::string(Renamed::kind));
}

bool OtherFacts::isAnyOf(const std::string& machine, std::int64_t seq) const {
    return std::any_of(chains.begin(), chains.end(), [&](const auto& chain) {
        return chain.machine == machine && seq > chain.after && seq <= chain.upTo;
    });
}

} // namespace core

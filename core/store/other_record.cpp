#include "core/store/other_record.h"

#include "core/base/error_code.h"
#include "core/record/machine_key.h"
#include "core/store/chain_walk.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

#include <algorithm>
#include <map>
#include <set>

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
        fact.machine = m_key.machine();
        fact.seq = ++m_seq;
        fact.prevHash = m_hash;
        fact.hash = hashOf(fact);
        fact.signature = m_key.signatureOf(fact);
        m_hash = fact.hash;
        into.facts.push_back(std::move(fact));
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
        factTable::forEachAfter(m_other, machine, known, [&](const Fact& fact) {
            m_walk.visit(fact);
            requireSound();
            if (!fork) {
                if (factTable::byId(m_own, fact.id))
                    throw StoreFailure({ErrorCode::ForkTakenIn, {}, m_other.path()});
                return into.facts.push_back(fact);
            }
            if (!taker) taker.emplace(m_own, m_found.machines.back().name, commonBefore(*fork));
            taker->take(fact, into);
        });
    }

    void end(const OtherFacts& news) {
        std::set<std::string> hashes;
        for (const Fact& fact : news.facts)
            hashes.insert(fact.hash);
        // Only the club's own beginning goes on from nothing: another one is of another club.
        const std::string founder = clubOf(clubOf(m_own).empty() ? m_other : m_own);
        for (const auto& [machine, continues] : m_walk.beginnings()) {
            const bool isThere = continues.empty()
                                     ? machine == founder
                                     : hashes.contains(continues) || factTable::isThere(m_own, continues);
            if (!isThere) throw StoreFailure({ErrorCode::FactsCutOff, {"1", machine}, m_other.path()});
        }
    }

private:
    /// A key that was another one from its first fact on goes on from the club's beginning.
    std::string commonBefore(const Fork& fork) {
        const auto before =
            fork.seq > 1 ? factTable::inChain(m_own, fork.machine, fork.seq - 1) : factTable::oldest(m_own);
        return before ? before->hash : std::string();
    }
    void requireSound() {
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

void addPrivateCells(Database& own, Database& other, OtherFacts& news) {
    for (const Fact& fact : news.facts) {
        if (!mayHoldPrivateCells(fact) || privateTable::isErased(own, fact.id)) continue;
        if (privateTable::isNotHere(other, fact.id)) news.cellsNotThere.push_back(fact.id);
        auto cells = privateTable::of(other, fact.id);
        if (cells.empty()) continue;
        const auto sealed = sealedCells(*factTable::bodyOf(fact));
        for (PrivateCell& cell : cells)
            if (std::any_of(sealed.begin(), sealed.end(),
                            [&](const SealedCell& each) { return each.column == cell.column; }))
                news.privateCells.emplace_back(fact.id, std::move(cell));
    }
}

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

/// Pictures stand beside the facts that hold their hashes.
void addPhotos(Database& own, Database& other, OtherFacts& news) {
    for (const Fact& fact : news.facts) {
        if (fact.kind != PhotoAdded::kind) continue; // the only one to be read here
        const auto body = factTable::bodyOf(fact);
        const auto* photo = body ? std::get_if<PhotoAdded>(&*body) : nullptr;
        if (photo == nullptr || photoTable::bytesOf(own, photo->sha256)) continue;
        auto bytes = photoTable::bytesOf(other, photo->sha256);
        if (!bytes || sha256Hex(*bytes) != photo->sha256)
            throw StoreFailure({ErrorCode::OtherRecordDamaged,
                                {},
                                other.path(),
                                {{ErrorCode::FactImpossible,
                                  {std::to_string(fact.seq), fact.machine, "photo-added.sha256"}}}});
        news.photos.emplace_back(photo->sha256, std::move(*bytes));
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
    ChainReader reader(own, other, forks);
    for (const std::string& machine : factTable::machines(other))
        reader.read(machine, news);
    reader.end(news);
    addPrivateCells(own, other, news);
    addCellsOfKnown(own, other, news);
    addPhotos(own, other, news);
    return news;
}

void takeIn(Database& own, const OtherFacts& news) {
    if (news.facts.empty() && news.cellsOfKnown.empty()) return;
    const std::int64_t before = own.number("SELECT count(*) FROM fact");
    for (const Fact& fact : news.facts)
        factTable::insert(own, fact);
    for (const auto& [fact, cell] : news.privateCells)
        privateTable::put(own, fact, {cell});
    for (const std::string& fact : news.cellsNotThere)
        privateTable::noteNotHere(own, fact);
    for (const auto& [fact, cells] : news.cellsOfKnown)
        privateTable::putWhatWasNotHere(own, fact, cells);
    for (const auto& [sha256, bytes] : news.photos)
        photoTable::keep(own, sha256, bytes);
    const bool isRenamed = std::any_of(news.facts.begin(), news.facts.end(),
                                       [](const Fact& fact) { return fact.kind == Renamed::kind; });
    // Made anew is cheaper when much comes in, and renamings need it once, not once each.
    if (isRenamed || !news.cellsOfKnown.empty() || static_cast<std::int64_t>(news.facts.size()) > before / 4)
        return rebuildTables(own, own);
    std::vector<const Fact*> byStamp;
    for (const Fact& fact : news.facts)
        byStamp.push_back(&fact);
    std::sort(byStamp.begin(), byStamp.end(),
              [](const Fact* a, const Fact* b) { return a->stamp() < b->stamp(); });
    for (const Fact* fact : byStamp)
        apply(own, *fact);
}

} // namespace core

#pragma once

#include "core/record/fact.h"
#include "core/record/private_cells.h"
#include "core/store/database.h"
#include "core/store/facts_by_stamp.h"

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace core {

/// What another file of the club holds and this one does not. It was looked through, and is read there when
/// it is wanted, so that it takes little memory: as long as it lives the other file is open, and what is read
/// there is of one moment.
struct OtherFacts {
    Database* other = nullptr;
    std::vector<FactsByStamp::Chain> chains;
    std::unique_ptr<Database> remade; ///< where the facts of a machine stand that is taken in as a new one
    /// Cells of facts that stand here already, which were not handed on with them.
    std::vector<std::pair<std::string, std::vector<PrivateCell>>> cellsOfKnown;
    std::map<std::string, std::int64_t> ofKind; ///< how many facts of each kind
    int leftOut = 0;           ///< of a forked machine: facts that stand here already, in another place
    std::int64_t ownFacts = 0; ///< how many stood here

    bool isRenamed() const; ///< something was, in it
    FactsByStamp facts() const { return FactsByStamp(chains); }
    std::int64_t count() const;                                       ///< of facts
    bool isAnyOf(const std::string& machine, std::int64_t seq) const; ///< that fact comes in
};

/// A machine's chain that the two files tell otherwise from that number on.
struct Fork {
    std::string machine;
    std::int64_t seq = 0;
    std::string here, there; ///< ids of the two facts
};

/// Of two chains that differ at their number `last`, the first number at which they do: hashes follow from
/// each other, so equal ones have equal facts before them.
std::int64_t firstDifference(std::int64_t last, const std::function<bool(std::int64_t seq)>& isSame);
/// Two forks in one chain are impossible; in several chains each is one.
std::vector<Fork> forksBetween(Database& own, Database& other);

/// Whether a fact of that kind can have private cells beside it: a row with such columns, or a PIN.
bool mayHoldPrivateCells(const Fact& fact);

/// Looks every fact through that is new here: numbers, hashes, signatures, canonical bodies, private cells,
/// and that what each machine went on from is there. Throws StoreFailure naming the first that is wrong, and
/// for a file of another club. Of forked machines (`forks`) the other's facts from the fork on come as those
/// of a new machine, signed here, without those of which the file has one of the same id. Needs no lock of
/// the own file: what others write there meanwhile is asked for afterwards, by `isStillNew`.
OtherFacts factsNotHere(Database& own, Database& other, const std::vector<Fork>& forks);
/// The same of a database that holds only what is new here: the caller knows that it is of this club.
OtherFacts newFactsIn(Database& own, Database& other, const std::vector<Fork>& forks);

/// Nothing of it was taken in since it was looked through, by another program or from another file.
bool isStillNew(Database& own, const OtherFacts& news);

} // namespace core

#pragma once

#include "core/record/fact.h"
#include "core/record/private_cells.h"
#include "core/store/database.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace core {

/// What another file of the club holds and this one does not.
struct OtherFacts {
    std::vector<Fact> facts; ///< each machine's in its order; machines by id
    std::vector<std::pair<std::string, PrivateCell>> privateCells; ///< by the fact that holds their digest
    std::vector<std::string> cellsNotThere; ///< facts whose private cells the other does not have either
    /// Cells of facts that stand here already, which were not handed on with them.
    std::vector<std::pair<std::string, std::vector<PrivateCell>>> cellsOfKnown;
    std::vector<std::pair<std::string, std::string>> photos; ///< SHA-256 and bytes
    int leftOut = 0; ///< of a forked machine: facts that stand here already, though in another place
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
/// of a new machine, signed here, without those of which the file has one of the same id.
OtherFacts factsNotHere(Database& own, Database& other, const std::vector<Fork>& forks);
/// The same of a database that holds only what is new here: the caller knows that it is of this club.
OtherFacts newFactsIn(Database& own, Database& other, const std::vector<Fork>& forks);

/// Writes them and what follows from them, in the caller's write transaction.
void takeIn(Database& own, const OtherFacts& news);

} // namespace core

#pragma once

#include "core/hub/binary_array.h"
#include "core/record/fact.h"
#include "core/record/private_cells.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace core {

class HubConnection;

/// The facts of a club on the hub. `founder`: the id of the club, of the machine that began it. All throw
/// StoreFailure as HubConnection says, and: HubRoleUnknown, the role is of no club; HubOtherClub, the role is
/// of a club that another machine began; HubForked and HubFactRefused (push).
namespace hubFacts {

/// Where a chain stands.
struct Head {
    std::string machine;
    std::int64_t number = 0;
    std::string hash;
};

/// A chain that the caller and the hub do not have alike.
struct Difference {
    std::string machine;
    std::int64_t newest = 0; ///< the hub's newest number; 0: it has none
    std::int64_t met = 0;    ///< the newest number that both have; 0: one has none
    std::string hash;        ///< the hub's there
};

struct Meeting {
    int club = 0;           ///< its number on the hub
    std::string name;       ///< as whoever administers the hub calls it
    bool isFounded = false; ///< its facts are there, or some
    std::int64_t facts = 0; ///< how many
    bool isNews = false;    ///< the board of that digest is not what the machine published last
    std::vector<Difference> differences;
};

/// What was computed of the boats last: the machine whose board it is (empty: none), and the text's SHA-256.
struct BoardDigest {
    std::string machine, sha256;
};

/// One round trip. `heads`: the newest fact of every machine in the file.
Meeting meet(HubConnection& hub, const std::string& founder, const std::vector<Head>& heads,
             const BoardDigest& board);

/// Facts as one call sends them. It is made without the hub, while that takes in the one before.
class FactBatch {
public:
    void add(const Fact& fact); ///< of each machine by number
    std::size_t facts() const { return m_facts; }
    std::size_t bytes() const { return m_bytes; } ///< of what they say
    std::vector<std::string> parameters() const;

private:
    /// Facts of one chain that follow each other.
    struct Run {
        std::string machine;
        std::int64_t first = 0, count = 0;
        BinaryArray ids{BinaryArray::Of::Uuid}, ats{BinaryArray::Of::Text}, bys{BinaryArray::Of::Text},
            kinds{BinaryArray::Of::Text}, bodies{BinaryArray::Of::Text}, hashes{BinaryArray::Of::Bytea},
            signatures{BinaryArray::Of::Bytea};
    };
    std::vector<Run> m_runs;
    std::map<std::string, std::size_t> m_last; ///< by machine, its last one's place
    std::size_t m_facts = 0, m_bytes = 0;
};

/// A batch of one round trip, taken in whole or not at all; how many were new there. Each chain by number,
/// and no fact before one that it knows of. `known`: how many of the club's facts are there as far as the
/// caller knows. Empty: there are others by now; nothing was taken in, and it is to look at those first.
std::optional<int> push(HubConnection& hub, const std::string& founder, std::int64_t known,
                        const FactBatch& facts);
void pushPhoto(HubConnection& hub, const std::string& founder, const std::string& sha256,
               const std::string& bytes);
using CellsOfFacts = std::vector<std::pair<std::string, PrivateCell>>; ///< by the fact's id
void pushPrivate(HubConnection& hub, const std::string& founder, const CellsOfFacts& cells);

/// Facts of a machine behind `after`, up to `upTo`.
struct Part {
    std::string machine;
    std::int64_t after = 0, upTo = 0;
};
/// In the order of the parts and of their numbers, in as many round trips as they need. The hash before each
/// part's first is told by the caller.
void pull(HubConnection& hub, int club, const std::vector<Part>& parts,
          const std::function<std::string(const Part&)>& hashBefore, const std::function<void(Fact)>& take);
/// Those of these that are there.
CellsOfFacts privateCells(HubConnection& hub, int club, const std::vector<std::string>& facts);
/// Empty: it is not there.
std::optional<std::string> photo(HubConnection& hub, int club, const std::string& sha256);
std::optional<Fact> inChain(HubConnection& hub, int club, const std::string& machine, std::int64_t number);

/// A club that whoever is connected may read.
struct KnownClub {
    int club = 0;
    std::string name;
    std::string founder; ///< empty: none of its facts are there
};
std::vector<KnownClub> clubs(HubConnection& hub);
/// The one that whoever is connected sends for; empty: none, as a district's role.
std::optional<int> ownClub(HubConnection& hub);
std::string ownRole(HubConnection& hub); ///< the database's role that is connected
/// All that the hub has of it.
std::vector<Part> all(HubConnection& hub, int club);

} // namespace hubFacts
} // namespace core

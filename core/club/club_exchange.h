#pragma once

#include "core/base/result.h"
#include "core/register/item_name.h"

#include <filesystem>
#include <string>
#include <vector>

namespace core {

struct ClubState;

/// What somebody must look at after records of two machines came together.
struct LookAt {
    enum class Kind {
        SeenOnTwoBoats,   ///< item; boats: launch checks of two machines within twelve hours
        SerialTwice,      ///< item; other item; its serial in `text`
        LikeNames,        ///< name; other name, of the sheet's rows: new ones that may be the same thing
        CellChangedTwice, ///< name of the row; column in `text`: two machines within an hour
        OutTwice,     ///< boat in `name`: a launch was signed while it was out by another machine's record
        SignedTwice,  ///< boat or place in `name`: the first signature holds
        PinsChanged,  ///< gear officer in `name`: has another PIN here, or one that counts no more or anew
        RenamedTwice, ///< name that holds; other name: what another machine renamed the same thing to
        CameBack,     ///< kit type or size in `name`: taken away, and named by a row that came in
        Last = CameBack
    };
    Kind kind = Kind::SeenOnTwoBoats;
    ItemName item, otherItem;
    std::string sheet; ///< its name, "people"
    std::string name, otherName;
    std::string text;
    bool isPinSet = false; ///< of a gear officer's PIN: one counts here now
    bool isOpen = false;   ///< and: no gear officer's counts here, so that everybody may do everything

    bool operator==(const LookAt&) const = default;
};
const char* nameOf(LookAt::Kind kind); ///< "seen-on-two-boats"

struct CameIn {
    int facts = 0;
    int machines = 0;  ///< that wrote them
    int checks = 0;    ///< that were opened
    int sightings = 0; ///< of tags
    int changes = 0;   ///< rows of the register
    int leftOut = 0;   ///< of a machine taken in as a new one: facts that stand here already
    std::vector<LookAt> lookAt;
};

/// Records that other machines made in files of their own. See Club for what holds of every function.
class ClubExchange {
public:
    explicit ClubExchange(ClubState& state)
        : m_state(&state) {}

    /// A machine whose two chains differ from some number on is refused, or its other chain is taken in as
    /// that of a machine of its own.
    enum class Forks { Refused, AsNewMachine };
    /// Takes in all that the other files of this club hold and this one does not, all or nothing; twice is
    /// nothing new. The other files stay as they are. Each new fact is looked through first. OtherClub;
    /// RecordForked; OtherRecordDamaged.
    Result<CameIn> merge(const std::vector<std::filesystem::path>& others, Forks forks);
    /// What that would do.
    Result<CameIn> planMerge(const std::vector<std::filesystem::path>& others, Forks forks);
    /// The other way: has that other file take in all that this one holds. A gear officer's act here, and
    /// then of that file asked no more: who gives has taken in what it says of PINs. The errors of `merge`.
    Result<CameIn> give(const std::filesystem::path& other);
    /// How many facts that other file would take in from this one, by the numbers of each machine alone.
    /// OtherClub.
    Result<int> newsFor(const std::filesystem::path& other) const;

private:
    ClubState* m_state;
};

} // namespace core

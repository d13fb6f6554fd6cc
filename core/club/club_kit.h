#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/register/item.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

struct BoatFitOut;
struct ClubState;
struct FitOutLine;
struct Happened;
struct NewKit;
struct ServiceEntry;
struct ServiceOrder;
struct ServiceRound;

/// What a printed tag says.
struct TagLabel {
    std::string code;
    std::string name;  ///< kit type, boat, person or place
    std::string owner; ///< of kit its home boat, place or person; class of a boat, role of a person; or empty
    /// Of kit: what is left of the print, 4 (as new) to 0 (about to fail): the best of the last three
    /// readings of a check that could tell.
    std::optional<double> print = {};
};

/// Items: what they are, their tags, their service and their end. See Club for what holds of every function.
class ClubKit {
public:
    explicit ClubKit(ClubState& state)
        : m_state(&state) {}

    /// Any tag that an item has or had names it here: it is typed by people who look things up.
    std::optional<Item> item(const std::string& code) const;
    /// The same, with all that its dates depend on (core/upkeep/due_date.h reckons them).
    std::optional<ItemRecord> itemRecord(const std::string& code) const;
    /// What a scan means: the item whose tag or maker's label it is. Empty for a tag that was replaced.
    std::optional<Item> itemOfScan(const std::string& text, CalendarDay today) const;
    std::vector<Item> all() const; ///< every item, by id

    /// Registers kit and mints its tags, all or nothing; in the order of the labels.
    Result<std::vector<Item>> registerKit(const NewKit& kit, const std::string& by, Moment moment);
    /// The same of several kinds in one, all or nothing; the items of each kind in their order.
    Result<std::vector<std::vector<Item>>> registerAll(const std::vector<NewKit>& kinds,
                                                       const std::string& by, Moment moment);
    /// What the boat's manifest asks for and what has its home aboard. NotFound.
    Result<BoatFitOut> fitOutOf(const std::string& boat) const;
    std::vector<FitOutLine> fitOutOfSpares() const; ///< see core/answers/fit_out.h
    /// Written off: it counts nowhere from then on. `why`: as the register has it, lost,
    /// damaged, worn, expired or byMistake.
    Outcome writeOff(const std::string& code, const std::string& why, const std::string& by, Moment moment);
    /// The same of several, all or none.
    Outcome writeOffAll(const std::vector<std::string>& codes, const std::string& why, const std::string& by,
                        Moment moment);
    /// Takes the newest writing off back: the item is what it was before it, missing aside. `why` as
    /// reasonFrom wants it. NotAllowed for another state.
    Outcome reinstate(const std::string& code, const std::string& why, const std::string& by, Moment moment);
    /// Back in use: an unserviceable item that was put right. NotAllowed for another state.
    Outcome release(const std::string& code, const std::string& by, Moment moment);
    /// One record for each item that the rule fits, all in one transaction.
    Result<ServiceRound> recordService(const ServiceOrder& order, Moment moment);

    /// Events that rules of the item wait for, each once, in the rules' order.
    std::vector<std::string> eventsFor(const std::string& code) const;
    /// Something happened to the item that a rule of it waits for. The same event of the same day twice
    /// changes nothing, unless it was put right in between. BadInput for an event that no rule of it waits
    /// for, and for a day to come.
    Result<Happened> happened(const std::string& code, const std::string& event, CalendarDay on,
                              const std::string& by, Moment moment);
    /// The item's service records that count, newest day first.
    std::vector<ServiceEntry> serviceRecords(const std::string& code) const;
    /// A service record that was made in error counts no more; so do the state that it gave the item, and
    /// the record that it replaced counts again. `on`: its day, as the record has it. `why` as reasonFrom
    /// wants it. NotFound; NotAllowed when it was withdrawn already.
    Outcome withdrawRecord(const std::string& code, const ServiceEntry& record, const std::string& why,
                           const std::string& by, Moment moment);

    // Tags of kit by the code of any tag that it has or had; those of boats, people and places by tag or
    // name. NotFound; BadInput for a name that several have; NotAllowed for written-off kit, which needs no
    // tag.
    /// Gives a new tag, which is returned; the old one no longer works. The history stays.
    Result<std::string> replaceTag(const std::string& asked, const std::string& by, Moment moment);
    /// Tags with the words that go beneath, in the order asked. A boat, person or place without a tag has an
    /// empty code.
    Result<std::vector<TagLabel>> tagLabels(const std::vector<std::string>& asked) const;
    /// Gives one to each of the boats, people and places asked for that has none.
    Outcome giveMissingTags(const std::vector<std::string>& asked, const std::string& by, Moment moment);
    /// The tags of all that has one and is here today: kit, boats, people, places.
    Result<std::vector<TagLabel>> allTagLabels(CalendarDay today) const;
    /// What is aboard the boat as the register has it: its home items, in the manifest's order, then by code.
    Result<std::vector<TagLabel>> labelsOfBoat(const std::string& boat) const;
    std::vector<std::string> mintCodes(int count) const; ///< unused kit codes

private:
    ClubState* m_state;
};

} // namespace core

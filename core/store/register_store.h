#pragma once

#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/register/manifest_record.h"
#include "core/register/sheets.h"
#include "core/store/database.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// Reads the register: rows for import and export, values for the rules. Throws StoreFailure.
class RegisterStore : public RegisterRows {
public:
    explicit RegisterStore(Database& database)
        : m_database(database) {}

    std::optional<Cells> find(SheetId id, const std::string& key) const override;
    std::vector<Cells> all(SheetId id) const override;
    std::vector<Cells> where(SheetId id, std::string_view column, const std::string& value) const override;

    std::string nameNow(Named named, const std::string& name, const std::string& of = {}) const override;
    std::string codeOfTag(const std::string& tag) const override;

    std::optional<Boat> boat(const std::string& name) const; ///< any spelling
    std::optional<Boat> boatOfTag(const std::string& code) const;
    std::optional<Person> person(const std::string& name) const;
    std::optional<Person> personOfTag(const std::string& code) const;
    std::optional<KitType> kitType(const std::string& name) const; ///< with sizes and rules
    std::map<std::string, KitType> allKitTypes() const;
    /// The class's rows as given, the boat's own replacing theirs in place, its additions last; quantity 0
    /// left out.
    std::vector<ManifestLine> manifestOf(const Boat& boat) const;
    std::vector<BoatPoint> pointsOf(const Boat& boat, const std::string& phase) const;
    /// Every manifest the club ever had, and the boats' checks signed by them.
    ManifestRecord manifestRecord() const;

    std::optional<Item> item(const std::string& code) const; ///< with the state it is in now
    std::optional<ItemRecord>
    record(const std::string& code) const;      ///< the same, with all that its dates depend on
    std::vector<ItemRecord> allRecords() const; ///< every item, by code; reads each table once
    std::vector<Item> allItems() const;         ///< the same without what its dates depend on
    std::vector<Item> itemsOfBoat(const std::string& boat) const; ///< that have their home there, by code
    /// That have such a maker's label, but those registered by mistake.
    std::vector<Item> itemsOfLabel(const std::string& gtin, const std::string& serial) const;

    /// Open and closed entries of a boat or item, newest first.
    std::vector<LogEntry> logOfBoat(const std::string& boat) const;
    std::vector<LogEntry> logOfItem(const std::string& code) const;
    std::vector<LogEntry> allLog() const;

private:
    KitType wholeKitType(const Cells& cells) const;
    std::vector<Cells> ofClass(SheetId id, const std::string& boatClass) const;
    std::vector<Cells> withStates(std::vector<Cells> rows) const;
    std::vector<Item> itemsOf(const std::vector<Cells>& rows) const;
    std::vector<LogEntry> entriesOf(const std::vector<Cells>& rows) const;
    std::function<ServiceRecord(const Cells&)>
    serviceAt() const; ///< reads a row with the instant of its making
    std::function<Happening(const Cells&)> happeningAt() const;

    Database& m_database;
};

/// Short id of a log entry, the same wherever the entry was written: ten hex characters of its key's SHA-256.
std::string logEntryId(const Cells& cells);

/// A closed entry is one with a closing day.
std::vector<LogEntry> openOnly(std::vector<LogEntry> entries);

} // namespace core

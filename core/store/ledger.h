#pragma once

#include "core/record/fact.h"
#include "core/store/database.h"

#include <nlohmann/json_fwd.hpp>
#include <string>

namespace core {

/// Appends facts to this machine's chain and applies each to the tables, in the caller's transaction.
class Ledger {
public:
    explicit Ledger(Database& database);

    /// Needs an open write transaction. Returns the fact as it was written.
    Fact append(const std::string& kind, const nlohmann::json& body, const std::string& by);

    const std::string& device() const { return m_device; }
    std::string head() const; ///< hash of the newest fact of this machine, empty if none

    /// Gives a new file its machine. Needs an open write transaction.
    static void nameDevice(Database& database);

private:
    Database& m_database;
    std::string m_device;
};

} // namespace core

#pragma once

#include "core/record/fact.h"
#include "core/store/database.h"

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// Facts of several chains as one row, none before one that it knows of: by stamp, for what is written after
/// something was known has a later instant; and each chain by number. Reads a few at a time.
class OutgoingFacts {
public:
    struct Chain {
        std::string machine;
        std::int64_t after = 0, upTo = 0; ///< numbers
    };
    OutgoingFacts(Database& database, const std::vector<Chain>& chains);
    std::optional<Fact> next(); ///< empty: that was the last

private:
    struct Reading {
        Chain chain;
        std::deque<Fact> facts;
    };
    void fill(Reading& reading);

    Database& m_database;
    std::vector<Reading> m_readings;
};

} // namespace core

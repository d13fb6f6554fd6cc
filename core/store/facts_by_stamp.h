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
class FactsByStamp {
public:
    struct Chain {
        Database* database = nullptr; ///< in which it is read
        std::string machine;
        std::int64_t after = 0, upTo = 0; ///< numbers
    };
    explicit FactsByStamp(const std::vector<Chain>& chains);
    std::optional<Fact> next(); ///< empty: that was the last

private:
    struct Reading {
        Chain chain;
        std::deque<Fact> facts;
    };
    static void fill(Reading& reading);

    std::vector<Reading> m_readings;
};

} // namespace core

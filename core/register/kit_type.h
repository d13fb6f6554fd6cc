#pragma once

#include "core/register/life_rule.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// A range of a measure, both ends included, each possibly open.
struct Range {
    std::optional<double> low;
    std::optional<double> high;

    bool holds(double value) const { return (!low || *low <= value) && (!high || value <= *high); }
    bool operator==(const Range&) const = default;
};

/// Who a size of a worn kit type is made for.
struct Size {
    std::string name;
    Range massKg;
    Range chestCm;
    std::optional<int> wanted; ///< how many the club wants to hold for its boats
    std::string source;
};

/// What a thing is, with its sizes and life rules.
struct KitType {
    std::string name;
    bool worn = false;     ///< one for each person, and it must fit
    bool personal = false; ///< belongs to a person
    int orderLeadDays = 0;
    int pack = 1;
    std::optional<double> price;
    int spares = 0;
    std::vector<Size> sizes; ///< of the club, the smallest first
    std::vector<LifeRule> rules;

    const Size* findSize(const std::string& wanted) const {
        for (const Size& candidate : sizes)
            if (candidate.name == wanted) return &candidate;
        return nullptr;
    }
};

} // namespace core

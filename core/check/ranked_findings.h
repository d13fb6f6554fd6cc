#pragma once

#include "core/check/boat_check.h"

#include <vector>

namespace core {

/// Collects findings and gives them in the order in which they are read: stops first, then by the manifest's
/// line, then by code, then as they were added.
class RankedFindings {
public:
    /// `line`: index of the manifest's line; what belongs to none comes after all lines in the order of the
    /// groups.
    enum class After { Items, People, Log, Points };
    void add(int line, Finding finding);
    void add(After group, Finding finding);

    std::vector<Finding> inOrder() &&;

private:
    struct Ranked {
        int rank;
        Finding finding;
    };
    std::vector<Ranked> m_findings;
};

/// Any stop: incomplete; else any remark: complete with remarks (design: rules 4).
CheckOutcome outcomeOf(const std::vector<Finding>& findings);

/// Of both phases: unknown tags, open log entries of the boat, and points.
void addBoatFindings(RankedFindings& findings, const BoatCheckInput& input,
                     const std::vector<PointAnswer>& points);

} // namespace core

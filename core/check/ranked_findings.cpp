#include "core/check/ranked_findings.h"

#include "core/check/points.h"

#include <algorithm>
#include <limits>
#include <set>
#include <tuple>

namespace core {

void RankedFindings::add(int line, Finding finding) {
    m_findings.push_back({line, std::move(finding)});
}

void RankedFindings::add(After group, Finding finding) {
    const int behindAllLines = std::numeric_limits<int>::max() - 10;
    m_findings.push_back({behindAllLines + static_cast<int>(group), std::move(finding)});
}

std::vector<Finding> RankedFindings::inOrder() && {
    const auto before = [](const Ranked& a, const Ranked& b) {
        // The log and the points keep their own order: only items and tags go by code.
        const auto key = [](const Ranked& r) {
            return std::tuple(r.finding.severity == Severity::Remark, r.rank,
                              std::string_view(r.finding.item.id));
        };
        return key(a) < key(b);
    };
    std::stable_sort(m_findings.begin(), m_findings.end(), before);
    std::vector<Finding> findings;
    for (Ranked& ranked : m_findings)
        findings.push_back(std::move(ranked.finding));
    return findings;
}

CheckOutcome outcomeOf(const std::vector<Finding>& findings) {
    const auto isStop = [](const Finding& f) { return f.severity == Severity::Stop; };
    if (std::any_of(findings.begin(), findings.end(), isStop)) return CheckOutcome::Incomplete;
    return findings.empty() ? CheckOutcome::Complete : CheckOutcome::CompleteWithRemarks;
}

void addBoatFindings(RankedFindings& findings, const BoatCheckInput& input,
                     const std::vector<PointAnswer>& points) {
    for (const std::string& code : std::set(input.unknownTags.begin(), input.unknownTags.end())) {
        Finding finding;
        finding.kind = FindingKind::UnknownTag;
        finding.item = {code, code};
        findings.add(RankedFindings::After::Items, std::move(finding));
    }
    for (const LogEntry& entry : input.logOpen)
        findings.add(RankedFindings::After::Log, findingOf(entry));
    for (Finding& finding : findingsOf(points))
        findings.add(RankedFindings::After::Points, std::move(finding));
}

} // namespace core

#include "core/check/expected_kit.h"

#include "core/check/judged_item.h"
#include "core/check/points.h"
#include "core/check/ranked_findings.h"

#include <algorithm>
#include <map>
#include <set>

namespace core {
namespace {

class ExpectedKit {
public:
    ExpectedKit(const BoatCheckInput& input, const std::vector<const Item*>& expected,
                const ExpectedFindings& findings)
        : m_input(input)
        , m_findings(findings)
        , m_seen(judgeItems(input)) {
        for (const Item* item : expected)
            m_expected.emplace(item->id, item);
        for (const JudgedItem& item : m_seen)
            m_there.insert(item.item().id);
        nameLines();
    }

    CheckAnswer answer() {
        CheckAnswer answer{m_input.location, m_input.phase, m_input.today, {}, {}, {}, {}, {}, {}};
        for (const ManifestLine& line : m_lines)
            answer.lines.push_back(answerLine(line));
        answer.points = answerPoints(m_input.points);
        answer.logOpen = m_input.logOpen;
        RankedFindings findings;
        for (const auto& [code, item] : m_expected)
            if (!m_there.contains(code)) findings.add(lineOf(item->kitType), m_findings.notSeen(*item));
        for (const JudgedItem& item : m_seen) {
            addSeen(findings, item);
            answer.logOpen.insert(answer.logOpen.end(), item.seen->logOpen.begin(), item.seen->logOpen.end());
        }
        addBoatFindings(findings, m_input, answer.points);
        answer.findings = std::move(findings).inOrder();
        answer.outcome = outcomeOf(answer.findings);
        for (const LineAnswer& line : answer.lines)
            answer.score.required += line.counted;
        return answer;
    }

private:
    /// The types of what is expected: in the manifest's order, then by name. All of it must be seen.
    void nameLines() {
        std::set<std::string> types;
        for (const auto& [code, item] : m_expected)
            types.insert(item->kitType);
        for (const ManifestLine& line : m_input.lines)
            if (types.erase(line.kitType) > 0) m_lines.push_back({line.kitType, 0, true, {}, line.note});
        for (const std::string& type : types)
            m_lines.push_back({type, 0, true, {}, {}});
        for (const auto& [code, item] : m_expected)
            ++m_lines[lineOf(item->kitType)].quantity;
    }

    /// Index into m_lines; their number for a type of which nothing is expected.
    int lineOf(const std::string& kitType) const {
        const auto found = std::find_if(m_lines.begin(), m_lines.end(),
                                        [&](const ManifestLine& line) { return line.kitType == kitType; });
        return static_cast<int>(found - m_lines.begin());
    }

    bool isExpected(const JudgedItem& item) const { return m_expected.contains(item.item().id); }

    LineAnswer answerLine(const ManifestLine& line) const {
        LineAnswer answer;
        answer.line = line;
        answer.wanted = line.quantity;
        for (const bool expected : {true, false})
            for (const JudgedItem& item : m_seen)
                if (item.item().kitType == line.kitType && isExpected(item) == expected)
                    answer.items.push_back(
                        {item.item().name(), line.kitType, expected, {}, item.due(), item.seen->print});
        answer.counted = static_cast<int>(std::count_if(answer.items.begin(), answer.items.end(),
                                                        [](const LineItem& i) { return i.counts; }));
        return answer;
    }

    void addSeen(RankedFindings& findings, const JudgedItem& item) const {
        const int line = lineOf(item.item().kitType);
        if (!isExpected(item))
            if (auto finding = m_findings.notExpected(item)) findings.add(line, std::move(*finding));
        // Nothing has to count now, but a boat will not be kit ready with it.
        if (const auto reason = whyItDoesNotCount(item)) findings.add(line, *reason);
        if (item.wasMissing())
            findings.add(line, findingAbout(item.item(), FindingKind::WasMissing, Severity::Remark));
        for (Finding& finding : logFindings(item))
            findings.add(line, std::move(finding));
    }

    const BoatCheckInput& m_input;
    const ExpectedFindings& m_findings;
    std::vector<JudgedItem> m_seen;
    std::map<std::string, const Item*> m_expected; // by code
    std::set<std::string> m_there;
    std::vector<ManifestLine> m_lines;
};

} // namespace

CheckAnswer judgeExpected(const BoatCheckInput& input, const std::vector<const Item*>& expected,
                          const ExpectedFindings& findings) {
    return ExpectedKit(input, expected, findings).answer();
}

} // namespace core

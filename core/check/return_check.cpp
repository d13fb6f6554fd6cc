#include "core/check/return_check.h"

#include "core/check/judged_item.h"
#include "core/check/points.h"
#include "core/check/ranked_findings.h"

#include <algorithm>
#include <map>
#include <set>

namespace core {
namespace {

class Return {
public:
    explicit Return(const BoatCheckInput& input)
        : m_input(input)
        , m_seen(judgeItems(input)) {
        for (const ItemRecord& out : input.expectedBack)
            m_out.emplace(out.item.code, &out.item);
        for (const JudgedItem& item : m_seen)
            m_back.insert(item.item().code);
        nameLines();
    }

    CheckAnswer answer() {
        CheckAnswer answer{m_input.boat, m_input.phase, m_input.today, {}, {}, {}, {}, {}, {}};
        for (const ManifestLine& line : m_lines)
            answer.lines.push_back(answerLine(line));
        answer.points = answerPoints(m_input.points);
        answer.logOpen = m_input.logOpen;
        RankedFindings findings;
        for (const auto& [code, item] : m_out)
            if (!m_back.contains(code)) findings.add(lineOf(item->kitType), notReturned(*item));
        for (const JudgedItem& item : m_seen) {
            addSeen(findings, item);
            answer.logOpen.insert(answer.logOpen.end(), item.seen->logOpen.begin(), item.seen->logOpen.end());
        }
        addBoatFindings(findings, m_input, answer.points);
        answer.findings = std::move(findings).inOrder();
        answer.outcome = outcomeOf(answer.findings);
        for (const LineAnswer& line : answer.lines)
            answer.best.required += line.counted;
        return answer;
    }

private:
    /// The types of what went out: in the manifest's order, then by name. Everything that went out must come
    /// back.
    void nameLines() {
        std::set<std::string> types;
        for (const auto& [code, item] : m_out)
            types.insert(item->kitType);
        for (const ManifestLine& line : m_input.lines)
            if (types.erase(line.kitType) > 0) m_lines.push_back({line.kitType, 0, true, {}, line.note});
        for (const std::string& type : types)
            m_lines.push_back({type, 0, true, {}, {}});
        for (const auto& [code, item] : m_out)
            ++m_lines[lineOf(item->kitType)].quantity;
    }

    /// Index into m_lines; their number for a type of which nothing went out.
    int lineOf(const std::string& kitType) const {
        const auto found = std::find_if(m_lines.begin(), m_lines.end(),
                                        [&](const ManifestLine& line) { return line.kitType == kitType; });
        return static_cast<int>(found - m_lines.begin());
    }

    bool isExpected(const JudgedItem& item) const { return m_out.contains(item.item().code); }

    LineAnswer answerLine(const ManifestLine& line) const {
        LineAnswer answer;
        answer.line = line;
        answer.wanted = line.quantity;
        for (const bool expected : {true, false})
            for (const JudgedItem& item : m_seen)
                if (item.item().kitType == line.kitType && isExpected(item) == expected)
                    answer.items.push_back({item.item().code, line.kitType, expected, {}, item.due()});
        answer.counted = static_cast<int>(std::count_if(answer.items.begin(), answer.items.end(),
                                                        [](const LineItem& i) { return i.counts; }));
        return answer;
    }

    Finding notReturned(const Item& item) const {
        Finding finding;
        finding.kind = FindingKind::NotReturned;
        finding.severity = Severity::Stop;
        finding.kitType = item.kitType;
        finding.code = item.code;
        finding.size = item.size;
        finding.boat = m_input.boat;
        return finding;
    }

    Finding strange(const JudgedItem& item) const {
        const std::string& launchedOn = item.seen->lastLaunchedOn;
        const bool swapped =
            item.seen->launchedBoatStillOut && !launchedOn.empty() && launchedOn != m_input.boat;
        Finding finding =
            findingAbout(item, swapped ? FindingKind::Swapped : FindingKind::Extra, Severity::Remark);
        if (swapped) finding.boat = launchedOn;
        return finding;
    }

    void addSeen(RankedFindings& findings, const JudgedItem& item) const {
        const int line = lineOf(item.item().kitType);
        if (!isExpected(item)) findings.add(line, strange(item));
        // Nothing has to count now, but the boat will not be rescue ready with it.
        if (const auto reason = unsoundness(item)) findings.add(line, *reason);
        if (item.wasMissing())
            findings.add(line, findingAbout(item, FindingKind::WasMissing, Severity::Remark));
        for (Finding& finding : logFindings(item))
            findings.add(line, std::move(finding));
    }

    const BoatCheckInput& m_input;
    std::vector<JudgedItem> m_seen;
    std::map<std::string, const Item*> m_out; // what went out, by code
    std::set<std::string> m_back;
    std::vector<ManifestLine> m_lines;
};

} // namespace

CheckAnswer judgeReturn(const BoatCheckInput& input) {
    return Return(input).answer();
}

} // namespace core

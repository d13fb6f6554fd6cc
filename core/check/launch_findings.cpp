#include "core/check/launch_findings.h"

#include "core/check/fit.h"

#include <algorithm>

namespace core {
namespace {

class Launch {
public:
    Launch(RankedFindings& findings, const BoatCheckInput& input, const LaunchPlaces& launch)
        : m_findings(findings)
        , m_input(input)
        , m_launch(launch) {}

    void addAll() {
        for (int line = 0; line < static_cast<int>(m_input.lines.size()); ++line)
            addShortLine(line);
        for (int item = 0; item < static_cast<int>(m_launch.items.size()); ++item)
            addItem(item);
        addPeople();
        addNoManifest();
    }

private:
    const JudgedItem& itemAt(int index) const { return m_launch.items[index]; }

    // Lines
    // ----------------------------------------------------------------------------------------------------

    void addShortLine(int line) {
        const int unfilled = m_launch.unfilled(line);
        if (unfilled == 0) return;
        const ManifestLine& wanted = m_input.lines[line];
        Finding finding;
        finding.kind = wanted.required && isFitLacking(line) ? FindingKind::NoFit : FindingKind::Missing;
        finding.severity = wanted.required ? Severity::Stop : Severity::Remark;
        finding.kitType = wanted.kitType;
        finding.quantity = unfilled;
        for (std::size_t p = 0; p < m_launch.places.size(); ++p)
            if (isEmptyPlaceOf(line, p) && m_launch.places[p].person)
                finding.people.push_back(m_launch.places[p].person->name);
        m_findings.add(line, std::move(finding));
    }

    bool isEmptyPlaceOf(int line, std::size_t place) const {
        return m_launch.places[place].line == line && m_launch.itemAt[place] < 0;
    }

    /// An unused item would count for somebody who is left without, but for the fit.
    bool isFitLacking(int line) const {
        for (std::size_t p = 0; p < m_launch.places.size(); ++p) {
            if (!isEmptyPlaceOf(line, p) || !m_launch.places[p].person) continue;
            for (std::size_t i = 0; i < m_launch.items.size(); ++i)
                if (m_launch.placeOf[i] < 0 && m_launch.items[i].kitType->worn &&
                    mayFillButForFit(m_input, m_launch.places[p], m_launch.items[i]))
                    return true;
        }
        return false;
    }

    // Items
    // ----------------------------------------------------------------------------------------------------

    void addItem(int index) {
        const JudgedItem& item = itemAt(index);
        const int line = lineOf(index);
        if (line < 0) {
            m_findings.add(RankedFindings::After::Items,
                           findingAbout(item.item(), FindingKind::Extra, Severity::Remark));
            if (item.wasMissing())
                m_findings.add(RankedFindings::After::Items,
                               findingAbout(item.item(), FindingKind::WasMissing, Severity::Remark));
            return;
        }
        if (m_launch.counts[index])
            addCounting(index, line);
        else
            m_findings.add(line, whyNotCounting(item));
        if (item.wasMissing())
            m_findings.add(line, findingAbout(item.item(), FindingKind::WasMissing, Severity::Remark));
        if (m_launch.placeOf[index] >= 0)
            for (Finding& finding : logFindings(item))
                m_findings.add(line, std::move(finding));
    }

    /// The line whose place it fills, else the first that takes its type; -1: none does.
    int lineOf(int index) const {
        if (m_launch.placeOf[index] >= 0) return m_launch.places[m_launch.placeOf[index]].line;
        for (int line = 0; line < static_cast<int>(m_input.lines.size()); ++line)
            if (isLineFor(line, itemAt(index))) return line;
        return -1;
    }

    bool isLineFor(int line, const JudgedItem& item) const {
        return m_input.lines[line].quantity > 0 && takes(m_input.lines[line], item.item().kitType);
    }

    Finding whyNotCounting(const JudgedItem& item) const {
        const Severity severity = isWantedBadly(item) ? Severity::Stop : Severity::Remark;
        if (auto reason = whyItDoesNotCount(item)) {
            reason->severity = severity;
            return *reason;
        }
        if (item.kitType->personal && !isOnBoard(item.item().person)) {
            Finding finding = findingAbout(item.item(), FindingKind::OtherPerson, severity);
            if (!item.item().person.empty()) finding.people = {item.item().person};
            return finding;
        }
        return findingAbout(item.item(), FindingKind::WrongSize, severity);
    }

    bool isWantedBadly(const JudgedItem& item) const {
        for (int line = 0; line < static_cast<int>(m_input.lines.size()); ++line)
            if (m_input.lines[line].required && isLineFor(line, item) && m_launch.unfilled(line) > 0)
                return true;
        return false;
    }

    bool isOnBoard(const std::string& person) const {
        return std::any_of(m_input.people.begin(), m_input.people.end(),
                           [&](const Person& p) { return p.name == person; });
    }

    void addCounting(int index, int line) {
        const JudgedItem& item = itemAt(index);
        if (m_launch.placeOf[index] < 0)
            m_findings.add(line, findingAbout(item.item(), FindingKind::Extra, Severity::Remark));
        if (!item.item().boat.empty() && item.item().boat != m_input.location.name) {
            Finding finding = findingAbout(item.item(), FindingKind::OtherBoat, Severity::Remark);
            finding.boat = item.item().boat;
            m_findings.add(line, std::move(finding));
        }
        if (const RuleDue* soon = earliestDueSoon(item.dues))
            m_findings.add(line, findingAbout(item.item(), *soon, Severity::Remark));
        if (const RuleDue* passed = firstRemark(item.dues))
            m_findings.add(line, findingAbout(item.item(), *passed, Severity::Remark));
    }

    static const RuleDue* earliestDueSoon(const std::vector<RuleDue>& dues) {
        const RuleDue* earliest = nullptr;
        for (const RuleDue& due : dues)
            if (due.state == DueState::DueSoon && (!earliest || *due.due < *earliest->due)) earliest = &due;
        return earliest;
    }

    // People
    // ---------------------------------------------------------------------------------------------------

    void addPeople() {
        const bool wornLine = hasLineOf(&KitType::worn);
        if (m_input.people.empty()) {
            if (wornLine) addAbout(FindingKind::FitNotChecked, nullptr);
            if (hasLineOf(&KitType::personal)) addAbout(FindingKind::PersonNotChecked, nullptr);
            return;
        }
        for (const Person& person : m_input.people)
            if (wornLine && (!hasMeasures(person) || wearsUnsized(person)))
                addAbout(FindingKind::FitNotChecked, &person);
    }

    bool hasLineOf(bool KitType::*property) const {
        return std::any_of(m_input.lines.begin(), m_input.lines.end(), [&](const ManifestLine& line) {
            return line.quantity > 0 && kitTypeOf(m_input, line.kitType).*property;
        });
    }

    bool wearsUnsized(const Person& person) const {
        for (std::size_t p = 0; p < m_launch.places.size(); ++p) {
            if (m_launch.places[p].person != &person || m_launch.itemAt[p] < 0) continue;
            const JudgedItem& item = itemAt(m_launch.itemAt[p]);
            if (item.kitType->worn && !sizeOf(item.item(), *item.kitType)) return true;
        }
        return false;
    }

    /// Where nothing is asked, nothing can be complete.
    void addNoManifest() {
        const auto isAsked = [](const ManifestLine& line) { return line.required && line.quantity > 0; };
        if (std::ranges::any_of(m_input.lines, isAsked)) return;
        Finding finding;
        finding.kind = FindingKind::NoManifest;
        finding.severity = Severity::Stop;
        finding.boat = m_input.location.name;
        finding.text = m_input.boatClass;
        m_findings.add(RankedFindings::After::Items, std::move(finding));
    }

    void addAbout(FindingKind kind, const Person* person) {
        Finding finding;
        finding.kind = kind;
        if (person) finding.people = {person->name};
        m_findings.add(RankedFindings::After::People, std::move(finding));
    }

    RankedFindings& m_findings;
    const BoatCheckInput& m_input;
    const LaunchPlaces& m_launch;
};

} // namespace

void addLaunchFindings(RankedFindings& findings, const BoatCheckInput& input, const LaunchPlaces& launch) {
    Launch(findings, input, launch).addAll();
}

} // namespace core

#include "app/gui/check/check_row.h"

#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <map>

namespace app {
namespace {

struct CheckRowText {
    Q_DECLARE_TR_FUNCTIONS(CheckRows)
};

using Section = CheckRow::Section;

CheckRow kitRow(Section section, Mark mark, const QString& key, const QString& title) {
    CheckRow row;
    row.section = section;
    row.mark = mark;
    row.key = key;
    row.title = title;
    return row;
}

void nameItem(CheckRow& row, const core::ItemName& item) {
    row.code = text(item.id);
    row.tag = text(item.tag);
    row.aside = codeInWords(item.tag);
    row.asideIsCode = true;
    row.isPressable = true;
}

/// About the dates of a thing that counts all the same: it stays under "found", with a remark.
bool isOnlyOfDates(const core::Finding& finding) {
    return finding.severity == core::Severity::Remark &&
           (finding.kind == core::FindingKind::DueSoon || finding.kind == core::FindingKind::OutOfDate ||
            finding.kind == core::FindingKind::ServiceOverdue || finding.kind == core::FindingKind::Undated);
}

bool isOfPoint(const core::Finding& finding) {
    return finding.kind == core::FindingKind::PointOpen || finding.kind == core::FindingKind::PointOutOfRange;
}

class Rows {
public:
    Rows(const core::CheckAnswer& answer, const CheckContext& context)
        : m_answer(answer)
        , m_context(context) {
        for (const core::LineAnswer& line : answer.lines)
            for (const core::LineItem& item : line.items) {
                m_counts[item.item.id] = item.counts;
                m_wornTags[item.item.id] = wornTagInWords(item.print);
            }
        for (const core::Finding& finding : answer.findings)
            if (!finding.item.id.empty() && finding.kind != core::FindingKind::NotReturned)
                m_ofCode[finding.item.id].push_back(&finding);
    }

    std::vector<CheckRow> all() {
        addStillToFind();
        addLook();
        addFound();
        addPoints();
        return std::move(m_rows);
    }

private:
    /// Puts the heading before what was collected; an empty list has one only where its emptiness says
    /// something.
    void close(Section section, const QString& title, const QString& count, bool evenEmpty,
               const QString& remark = {}) {
        if (m_section.empty() && !evenEmpty) return;
        CheckRow heading;
        heading.isHeading = true;
        heading.section = section;
        heading.key = QStringLiteral("heading %1").arg(static_cast<int>(section));
        heading.title = title;
        heading.aside = count;
        heading.remark = remark;
        m_rows.push_back(heading);
        m_rows.insert(m_rows.end(), m_section.begin(), m_section.end());
        m_section.clear();
    }

    void addStillToFind() {
        int count = 0;
        if (m_answer.phase == core::Phase::Return) {
            for (const core::Finding& finding : m_answer.findings)
                if (finding.kind == core::FindingKind::NotReturned) count += addNotReturned(finding);
        } else {
            for (const core::LineAnswer& line : m_answer.lines)
                if (line.counted < line.wanted) count += addShortLine(line);
        }
        // The same people for every line: said once, over them.
        const bool asks = count > 0 && !m_context.askWhom.empty();
        close(Section::StillToFind, CheckRowText::tr("still to find"), QString::number(count), true,
              asks ? CheckRowText::tr("ask %1").arg(listed(m_context.askWhom)) : QString());
    }

    int addNotReturned(const core::Finding& finding) {
        CheckRow row = kitRow(Section::StillToFind, Mark::StillToFind, "out " + text(finding.item.id),
                              text(finding.kitType));
        nameItem(row, finding.item);
        m_section.push_back(row);
        return 1;
    }

    int addShortLine(const core::LineAnswer& line) {
        CheckRow row = kitRow(Section::StillToFind, Mark::StillToFind, "line " + text(line.line.kitType),
                              text(line.line.kitType));
        if (line.wanted == 1)
            row.aside = CheckRowText::tr("one");
        else
            row.aside = CheckRowText::tr("%1 of %2").arg(line.counted).arg(line.wanted);
        row.remark = remarkOfShort(line);
        row.remarkIsLook =
            std::any_of(m_answer.findings.begin(), m_answer.findings.end(), [&](const auto& f) {
                return f.kind == core::FindingKind::NoFit && f.kitType == line.line.kitType;
            });
        m_section.push_back(row);
        return line.wanted - line.counted;
    }

    QString remarkOfShort(const core::LineAnswer& line) const {
        for (const core::Finding& finding : m_answer.findings)
            if (finding.kind == core::FindingKind::NoFit && finding.kitType == line.line.kitType)
                return reasonOf(finding);
        QStringList parts;
        if (!line.withoutPeople.empty()) parts << CheckRowText::tr("for %1").arg(listed(line.withoutPeople));
        if (!line.line.required) parts << CheckRowText::tr("not required");
        if (!line.line.note.empty()) parts << text(line.line.note);
        return parts.join(CheckRowText::tr(" · "));
    }

    void addLook() {
        for (const core::Finding& finding : m_answer.findings) {
            if (isOfPoint(finding) || finding.kind == core::FindingKind::NotReturned) continue;
            if (finding.item.id.empty())
                addGeneral(finding);
            else if (!isUnderFound(finding.item.id))
                addItemToLookAt(finding);
        }
        close(Section::Look, CheckRowText::tr("look at this"), QString::number(m_section.size()), false);
    }

    /// Findings about people. Short lines are under "still to find"; the boat's log has a panel of its own.
    void addGeneral(const core::Finding& finding) {
        if (finding.kind != core::FindingKind::FitNotChecked &&
            finding.kind != core::FindingKind::PersonNotChecked)
            return;
        const bool fit = finding.kind == core::FindingKind::FitNotChecked;
        CheckRow row = kitRow(
            Section::Look, Mark::Look, QStringLiteral("people %1 %2").arg(fit).arg(listed(finding.people)),
            fit ? CheckRowText::tr("fit not checked") : CheckRowText::tr("owner not checked"));
        row.remark = reasonOf(finding);
        row.remarkIsLook = true;
        m_section.push_back(row);
    }

    /// One row for an item, with all that is to be said of it, where its first finding stands.
    void addItemToLookAt(const core::Finding& finding) {
        const auto& findings = m_ofCode[finding.item.id];
        if (findings.front() != &finding) return;
        const bool unknown = finding.kind == core::FindingKind::UnknownTag;
        CheckRow row = kitRow(Section::Look, Mark::Look, "item " + text(finding.item.id),
                              unknown ? CheckRowText::tr("unknown tag") : text(finding.kitType));
        nameItem(row, finding.item);
        row.counts = m_counts[finding.item.id];
        remarkOn(row, finding.item.id);
        m_section.push_back(row);
    }

    bool isUnderFound(const std::string& code) {
        const auto& findings = m_ofCode[code];
        return m_counts[code] && std::all_of(findings.begin(), findings.end(),
                                             [](const core::Finding* f) { return isOnlyOfDates(*f); });
    }

    void remarkOn(CheckRow& row, const std::string& code) {
        QStringList remarks;
        QStringList details;
        for (const core::Finding* finding : m_ofCode[code]) {
            remarks << shortReasonOf(*finding);
            details << reasonOf(*finding);
        }
        row.remarkIsLook = !remarks.isEmpty();
        if (const QString worn = withCapital(m_wornTags[code]); !worn.isEmpty()) {
            remarks << worn + '.';
            details << worn + '.';
        }
        row.remark = remarks.join(' ');
        row.detail = details.join(' ');
    }

    void addFound() {
        for (const core::LineAnswer& line : m_answer.lines)
            for (const core::LineItem& item : line.items)
                if (item.counts && isUnderFound(item.item.id)) addFoundItem(item);
        close(Section::Found, CheckRowText::tr("found"), QString::number(m_section.size()), false);
    }

    void addFoundItem(const core::LineItem& item) {
        CheckRow row = kitRow(Section::Found, Mark::Found, "item " + text(item.item.id), text(item.kitType));
        nameItem(row, item.item);
        row.counts = true;
        remarkOn(row, item.item.id);
        if (!item.wornBy.empty()) {
            const QString ofDates = row.remark;
            row.remark = whoWearsIt(item);
            if (!ofDates.isEmpty()) row.remark += CheckRowText::tr(" · ") + ofDates;
        }
        m_section.push_back(row);
    }

    /// Who, and why: whose own it is, or what the club's table says of its size.
    QString whoWearsIt(const core::LineItem& item) const {
        const QString person = text(item.wornBy);
        const auto found = m_context.worn.find(item.item.id);
        if (found == m_context.worn.end()) return CheckRowText::tr("for %1").arg(person);
        if (found->second.person == item.wornBy) return CheckRowText::tr("%1's own").arg(person);
        const QString size = text(found->second.size);
        if (isFitUnchecked(item.wornBy))
            return size.isEmpty() ? CheckRowText::tr("for %1: fit not checked").arg(person)
                                  : CheckRowText::tr("for %1: size %2, fit not checked").arg(person, size);
        return size.isEmpty()
                   ? CheckRowText::tr("for %1").arg(person)
                   : CheckRowText::tr("for %1: size %2 fits by the club's table").arg(person, size);
    }

    bool isFitUnchecked(const std::string& person) const {
        return std::any_of(
            m_answer.findings.begin(), m_answer.findings.end(), [&](const core::Finding& each) {
                return each.kind == core::FindingKind::FitNotChecked &&
                       std::find(each.people.begin(), each.people.end(), person) != each.people.end();
            });
    }

    void addPoints() {
        int done = 0;
        for (const core::PointAnswer& point : m_answer.points) {
            done += point.state == core::PointState::Done;
            m_section.push_back(pointRow(point));
        }
        close(Section::Points, CheckRowText::tr("points"),
              CheckRowText::tr("%1 of %2").arg(done).arg(m_answer.points.size()), false);
    }

    CheckRow pointRow(const core::PointAnswer& answer) const {
        CheckRow row = kitRow(Section::Points, markOf(answer.state), "point " + text(answer.point.name),
                              text(answer.point.name));
        row.pointKind = answer.point.kind;
        row.isPressable = row.isLitByMouse = true;
        if (answer.point.kind != core::PointKind::Look)
            row.number =
                NumberEntry{unitOf(answer.point), answer.value, rangeInWords(answer.point, WithUnit::Yes),
                            answer.point.limits.low, answer.point.limits.high};
        row.aside = valueInWords(answer);
        row.remark = remarkOf(answer);
        row.remarkIsLook = answer.state == core::PointState::OutOfRange || leavesRangeAfloat(answer);
        return row;
    }

    static QString unitOf(const core::BoatPoint& point) {
        return point.kind == core::PointKind::Timed ? CheckRowText::tr("seconds") : text(point.unit);
    }

    static bool leavesRangeAfloat(const core::PointAnswer& answer) {
        return answer.afloat && answer.state == core::PointState::Done &&
               !answer.point.limits.holds(*answer.afloat);
    }

    static Mark markOf(core::PointState state) {
        if (state == core::PointState::Open) return Mark::StillToFind;
        return state == core::PointState::Done ? Mark::Found : Mark::Look;
    }

    static QString valueInWords(const core::PointAnswer& answer) {
        if (answer.point.kind == core::PointKind::Look)
            return answer.state == core::PointState::Done ? CheckRowText::tr("looked at") : QString();
        if (answer.point.kind == core::PointKind::Timed) return secondsInWords(answer.value.value_or(0));
        const QString number = answer.value ? numberInWords(*answer.value) : QStringLiteral("___");
        return CheckRowText::tr("%1 %2").arg(number, text(answer.point.unit));
    }

    QString remarkOf(const core::PointAnswer& answer) const {
        QStringList parts;
        const QString range = rangeInWords(answer.point, WithUnit::No);
        if (answer.state == core::PointState::OutOfRange) parts << CheckRowText::tr("out of range");
        if (!range.isEmpty()) parts << range;
        if (answer.afloat)
            parts << CheckRowText::tr("about %1 kPa afloat, a first estimate")
                         .arg(numberInWords(std::round(*answer.afloat * 10) / 10));
        if (!answer.point.required) parts << CheckRowText::tr("not required");
        // How to do it is of no use once it is done.
        if (isEngineRun(answer.point) && answer.state != core::PointState::Done) parts << engineCaution();
        if (!answer.point.note.empty() && answer.state != core::PointState::Done)
            parts << text(answer.point.note);
        return parts.join(CheckRowText::tr(" · "));
    }

    const core::CheckAnswer& m_answer;
    const CheckContext& m_context;
    std::map<std::string, bool> m_counts;
    std::map<std::string, QString> m_wornTags; ///< what is said of an item's tag
    std::map<std::string, std::vector<const core::Finding*>> m_ofCode;
    std::vector<CheckRow> m_section; // rows of the list at work
    std::vector<CheckRow> m_rows;
};

} // namespace

std::vector<CheckRow> rowsOf(const core::CheckAnswer& answer, const CheckContext& context) {
    return Rows(answer, context).all();
}

} // namespace app

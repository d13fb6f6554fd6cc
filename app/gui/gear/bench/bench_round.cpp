#include "app/gui/gear/bench/bench_round.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/upkeep/same_name.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace app {
namespace {

struct BenchRoundText {
    Q_DECLARE_TR_FUNCTIONS(BenchRound)
};

bool isRecorded(core::RuleKind kind) {
    return kind == core::RuleKind::InspectEvery || kind == core::RuleKind::ServiceEvery ||
           kind == core::RuleKind::EveryHours || kind == core::RuleKind::EveryUses ||
           kind == core::RuleKind::AfterEvent;
}

bool fits(const BenchScan& scan, const std::vector<core::KitType>& kitTypes, const QString& rule) {
    return std::any_of(kitTypes.begin(), kitTypes.end(), [&](const core::KitType& kitType) {
        return kitType.name == scan.kitType &&
               std::any_of(kitType.rules.begin(), kitType.rules.end(), [&](const core::LifeRule& each) {
                   return core::sameName(each.name, rule.toStdString());
               });
    });
}

QString nameOf(const BenchScan& scan) {
    if (scan.item.id.empty()) return BenchRoundText::tr("unknown: %1").arg(text(scan.text));
    return scan.size.empty() ? text(scan.kitType)
                             : BenchRoundText::tr("%1 (%2)").arg(text(scan.kitType), text(scan.size));
}

ListRow rowOf(const core::ServiceRound::Recorded& done, Mark mark, const QString& markWord) {
    QStringList remark;
    if (!done.part.empty()) remark << text(done.part);
    if (done.nextDue) remark << BenchRoundText::tr("next due %1").arg(inWords(*done.nextDue));
    if (done.released) remark << BenchRoundText::tr("serviceable again");
    ListRow row = plainRow("done " + text(done.item.id + done.part), mark, markWord, text(done.kitType),
                           remark.join(BenchRoundText::tr(" · ")), done.item);
    row.remarkIsLook = false;
    return row;
}

std::vector<ListRow> refusedOf(const BenchOutcome& outcome) {
    std::vector<ListRow> rows;
    for (const core::ServiceRound* round : {&outcome.passed, &outcome.failed}) {
        for (const core::ServiceRound::Refused& refused : round->refused)
            rows.push_back(
                plainRow("refused " + text(refused.item.id), Mark::Look, BenchRoundText::tr("not recorded"),
                         refused.kitType.empty() ? BenchRoundText::tr("unknown tag") : text(refused.kitType),
                         reasonOf(refused.why), refused.item));
        for (const std::string& unread : round->unread)
            rows.push_back(plainRow("unread " + text(unread), Mark::Look, BenchRoundText::tr("not recorded"),
                                    text(unread), BenchRoundText::tr("This is no tag of this club.")));
    }
    return rows;
}

} // namespace

QString reasonOf(core::ServiceRound::Refusal why) {
    switch (why) {
    case core::ServiceRound::Refusal::UnknownTag:
        return BenchRoundText::tr("The register does not know this tag.");
    case core::ServiceRound::Refusal::NoSuchRule:
        return BenchRoundText::tr("Its kit type has no rule of that name, or it lacks the part.");
    case core::ServiceRound::Refusal::WrittenOff:
        return BenchRoundText::tr("It is written off: take it away.");
    case core::ServiceRound::Refusal::DoneAlready:
        break;
    }
    return BenchRoundText::tr("Already recorded for that day.");
}

QStringList recordedRulesOf(const std::vector<core::KitType>& kitTypes) {
    std::set<QString> rules;
    for (const core::KitType& kitType : kitTypes)
        for (const core::LifeRule& rule : kitType.rules)
            if (isRecorded(rule.kind)) rules.insert(text(rule.name));
    return {rules.begin(), rules.end()};
}

bool BenchRound::add(const BenchScan& scan) {
    const bool isThere = std::any_of(m_scans.begin(), m_scans.end(), [&](const BenchScan& each) {
        return scan.item.id.empty() ? each.text == scan.text : each.item.id == scan.item.id;
    });
    if (!isThere) m_scans.push_back(scan);
    return !isThere;
}

void BenchRound::takeBackLast() {
    if (!m_scans.empty()) m_scans.pop_back();
}

void BenchRound::toggle(const QString& item) {
    for (BenchScan& scan : m_scans)
        if (!scan.item.id.empty() && scan.item.id == item.toStdString()) scan.failed = !scan.failed;
}

std::vector<std::string> BenchRound::textsOf(bool failed) const {
    std::vector<std::string> texts;
    for (const BenchScan& scan : m_scans)
        if (scan.failed == failed) texts.push_back(scan.text);
    return texts;
}

int BenchRound::countOf(bool failed, const std::vector<core::KitType>& kitTypes, const QString& rule) const {
    return static_cast<int>(std::count_if(m_scans.begin(), m_scans.end(), [&](const BenchScan& scan) {
        return scan.failed == failed && fits(scan, kitTypes, rule);
    }));
}

std::vector<ListRow> BenchRound::lines(const std::vector<core::KitType>& kitTypes,
                                       const QString& rule) const {
    std::vector<ListRow> failed, passed, others;
    // The newest on top of its list, where the eye is.
    for (auto scan = m_scans.rbegin(); scan != m_scans.rend(); ++scan) {
        const QString key = "scan " + text(scan->text);
        if (scan->item.id.empty())
            others.push_back(plainRow(key, Mark::Look, BenchRoundText::tr("look"), nameOf(*scan),
                                      BenchRoundText::tr("It is not this club's kit.")));
        else if (!rule.isEmpty() && !fits(*scan, kitTypes, rule))
            others.push_back(plainRow(key, Mark::Look, BenchRoundText::tr("look"), nameOf(*scan),
                                      BenchRoundText::tr("Its kit type has no rule “%1”.").arg(rule),
                                      scan->item));
        else if (scan->failed)
            failed.push_back(plainRow(key, Mark::Look, BenchRoundText::tr("failed"), nameOf(*scan),
                                      BenchRoundText::tr("failed: it will be withdrawn"), scan->item));
        else
            passed.push_back(
                plainRow(key, Mark::Found, BenchRoundText::tr("passed"), nameOf(*scan), {}, scan->item));
    }
    std::vector<ListRow> all;
    addSection(all, "failed", BenchRoundText::tr("failed"), failed);
    addSection(all, "passed", BenchRoundText::tr("passed"), passed);
    addSection(all, "others", BenchRoundText::tr("not for this rule"), others);
    return all;
}

std::vector<ListRow> linesOf(const BenchOutcome& outcome) {
    std::vector<ListRow> failed, passed;
    for (const auto& done : outcome.failed.recorded)
        failed.push_back(rowOf(done, Mark::Look, BenchRoundText::tr("failed")));
    for (const auto& done : outcome.passed.recorded)
        passed.push_back(rowOf(done, Mark::Found, BenchRoundText::tr("passed")));
    std::vector<ListRow> all;
    addSection(all, "refused", BenchRoundText::tr("not recorded"), refusedOf(outcome));
    addSection(all, "failed", BenchRoundText::tr("recorded as failed, and withdrawn"), failed);
    addSection(all, "passed", BenchRoundText::tr("recorded as passed"), passed);
    return all;
}

QString summaryOf(const BenchOutcome& outcome) {
    const auto passed = static_cast<int>(outcome.passed.recorded.size());
    const auto failed = static_cast<int>(outcome.failed.recorded.size());
    const auto refused = static_cast<int>(refusedOf(outcome).size());
    QStringList words{counted(passed, QT_TRANSLATE_N_NOOP("Words", "%n recorded as passed"),
                              QT_TRANSLATE_N_NOOP("Words", "%n recorded as passed"))};
    if (failed) words << BenchRoundText::tr("%1 as failed").arg(failed);
    if (refused) words << BenchRoundText::tr("%1 not recorded").arg(refused);
    return words.join(BenchRoundText::tr(", ")) + QLatin1Char('.');
}

} // namespace app

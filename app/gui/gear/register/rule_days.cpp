#include "app/gui/gear/register/rule_days.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/plain_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>
#include <optional>

namespace app {
namespace {

struct RuleDaysText {
    Q_DECLARE_TR_FUNCTIONS(RuleDays)
};

constexpr std::size_t mostDays = 6; ///< shown

struct RuleDay {
    core::ItemName item;
    std::optional<core::RuleDue> due, before;
};

bool isOf(const core::LifeRule& rule, const RuleName& name) {
    return core::foldName(rule.part) == core::foldName(name.part) &&
           core::foldName(rule.name) == core::foldName(name.rule);
}

QString lineOf(const RuleDay& day, core::CalendarDay today) {
    const QString code = codeInWords(day.item.tag);
    const QString words = day.due ? dueInWords(*day.due, today) : RuleDaysText::tr("does not fall due");
    if (!day.before || !day.before->due || (day.due && day.due->due == day.before->due))
        return RuleDaysText::tr("%1: %2").arg(code, words);
    return RuleDaysText::tr("%1: %2 (now %3)").arg(code, words, inWords(*day.before->due));
}

/// Days first, in their order; then what has none.
bool isBefore(const RuleDay& a, const RuleDay& b) {
    const auto rank = [](const RuleDay& day) {
        return std::tuple(!day.due || !day.due->due, day.due && day.due->due ? day.due->due->number() : 0,
                          day.item.id);
    };
    return rank(a) < rank(b);
}

} // namespace

QString ruleDaysInWords(const RuleName& name, const core::OutlookChange& change,
                        const std::vector<core::DueRow>& now, core::CalendarDay today) {
    const std::string type = core::foldName(name.kitType);
    std::map<std::string, RuleDay> days; // by id of the item
    for (const core::DueRow& row : now)
        if (core::foldName(row.kitType) == type && isOf(row.due.rule, name))
            days[row.item.id] = {row.item, row.due, row.due};
    for (const core::DueChange& each : change.due) {
        const core::LifeRule* rule = each.after    ? &each.after->rule
                                     : each.before ? &each.before->rule
                                                   : nullptr;
        if (rule && core::foldName(each.kitType) == type && isOf(*rule, name))
            days[each.item.id] = {each.item, each.after, each.before};
    }
    std::vector<RuleDay> sorted;
    for (const auto& [id, day] : days)
        sorted.push_back(day);
    std::sort(sorted.begin(), sorted.end(), isBefore);
    QStringList lines;
    for (std::size_t i = 0; i < std::min(mostDays, sorted.size()); ++i)
        lines << lineOf(sorted[i], today);
    if (lines.isEmpty()) return {};
    if (sorted.size() > mostDays) lines << RuleDaysText::tr("and %1 more").arg(sorted.size() - mostDays);
    lines.prepend(RuleDaysText::tr("The club's own kit by this rule:"));
    return lines.join('\n');
}

} // namespace app

#include "app/paper/lists/club_lists.h"

#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

namespace app {
namespace {

struct ClubListsText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

ListCell dayCell(const std::optional<core::CalendarDay>& day) {
    return day ? ListCell(inWords(*day), text(day->iso())) : ListCell(QString());
}

ListCell dueCell(const core::RuleDue& due, core::CalendarDay today) {
    const QString words = dueInWords(due, today);
    return {words, due.due ? text(due.due->iso()) : words};
}

QString homeOf(const core::Item& item) {
    return text(item.boat.empty() ? item.place : item.boat);
}

ListLine kitLine(const core::ItemDue& kit, core::CalendarDay today) {
    const core::Item& item = kit.item;
    const bool isAhead =
        kit.next && (kit.next->due || core::isToLookAt(*kit.next)); // what has no day yet is not due
    return {markOf(kit),
            {text(item.kitType), text(item.size), homeOf(item), text(item.person), nameInWords(item.state),
             isAhead ? dueCell(*kit.next, today) : ListCell(QString()),
             isAhead ? ListCell(ruleInWords(kit.next->rule)) : ListCell(QString()), text(item.serial),
             codeCell(item.name())}};
}

bool stopsNow(const core::LogEntry& entry) {
    return !entry.closed && entry.severity == core::Severity::Stop;
}

QString stateOf(const core::LogEntry& entry) {
    if (entry.closed) return ClubListsText::tr("closed");
    return stopsNow(entry) ? ClubListsText::tr("open, stops it") : ClubListsText::tr("open");
}

ListLine logLine(const core::LogEntry& entry, const std::map<std::string, std::string>& kitTypes) {
    const auto kit = kitTypes.find(entry.item.id);
    const QString about =
        !entry.boat.empty()
            ? text(entry.boat)
            : QStringLiteral("%1 %2")
                  .arg(kit == kitTypes.end() ? QString() : text(kit->second), codeInWords(entry.item.tag))
                  .trimmed();
    const Mark mark = entry.closed ? Mark::Found : stopsNow(entry) ? Mark::Look : Mark::StillToFind;
    return {mark,
            {stateOf(entry), about, dayCell(entry.day), text(entry.text), text(entry.by),
             dayCell(entry.closed), text(entry.closing)}};
}

QString countedItems(std::size_t count) {
    return counted(static_cast<int>(count), QT_TRANSLATE_N_NOOP("Words", "%n item"),
                   QT_TRANSLATE_N_NOOP("Words", "%n items"));
}

/// By what a person looks for; alike things by their tags, so that a list stays as it is.
bool comesBefore(const core::ItemDue& one, const core::ItemDue& other) {
    const core::Item &a = one.item, &b = other.item;
    const auto homeIn = [](const core::Item& item) -> const std::string& {
        return item.boat.empty() ? item.place : item.boat;
    };
    return std::tie(a.kitType, a.size, homeIn(a), a.person, a.tag) <
           std::tie(b.kitType, b.size, homeIn(b), b.person, b.tag);
}

} // namespace

Mark markOf(const core::ItemDue& kit) {
    switch (kit.item.state) {
    case core::ItemState::Serviceable:
        return kit.isToLookAt ? Mark::Look : Mark::Found;
    case core::ItemState::Missing:
        return Mark::StillToFind;
    case core::ItemState::Unserviceable:
        return Mark::Look;
    case core::ItemState::WrittenOff:
        break;
    }
    return Mark::NotAsked;
}

ListTable foundKitTable(const std::vector<core::ItemDue>& kit, const QString& summary,
                        core::CalendarDay today) {
    ListTable table;
    table.title = ClubListsText::tr("Kit");
    table.summary = summary;
    table.columns = {ClubListsText::tr("kit"),   ClubListsText::tr("size"),   ClubListsText::tr("home"),
                     ClubListsText::tr("owner"), ClubListsText::tr("state"),  ClubListsText::tr("next due"),
                     ClubListsText::tr("rule"),  ClubListsText::tr("serial"), ClubListsText::tr("tag")};
    for (const core::ItemDue& each : kit)
        table.lines.push_back(kitLine(each, today));
    table.cautions = {dueCaution(), whoPrevails()};
    return table;
}

ListTable kitTable(std::vector<core::ItemDue> kit, core::CalendarDay today) {
    const std::size_t all = kit.size();
    std::erase_if(kit,
                  [](const core::ItemDue& each) { return each.item.state == core::ItemState::WrittenOff; });
    std::sort(kit.begin(), kit.end(), comesBefore);
    QString summary = ClubListsText::tr("%1.").arg(countedItems(kit.size()));
    if (all > kit.size())
        summary += QLatin1Char(' ') +
                   ClubListsText::tr("%1 written off, not listed.").arg(countedItems(all - kit.size()));
    return foundKitTable(kit, summary, today);
}

ListTable missingTable(const std::vector<core::MissingItem>& missing, core::CalendarDay today) {
    ListTable table;
    table.title = ClubListsText::tr("Missing");
    table.summary =
        missing.empty()
            ? ClubListsText::tr("Nothing is missing.")
            : ClubListsText::tr("%1 missing, the longest first.").arg(countedItems(missing.size()));
    table.columns = {ClubListsText::tr("kit"), ClubListsText::tr("tag"), ClubListsText::tr("boat"),
                     ClubListsText::tr("missing since"), ClubListsText::tr("how it was lost from sight")};
    for (const core::MissingItem& item : missing) {
        QStringList chain;
        for (const core::ChainLink& link : item.chain)
            chain << withCapital(linkInWords(link, today));
        const ListCell since = item.since ? dayCell(item.since) : ListCell(ClubListsText::tr("not known"));
        table.lines.push_back({Mark::StillToFind,
                               {text(item.kitType), codeCell(item.item), text(item.boat), since,
                                chain.join(QStringLiteral("; "))}});
    }
    table.needsSomebody = !missing.empty();
    return table;
}

ListTable dueTable(const std::vector<core::DueRow>& rows, int days, core::CalendarDay today) {
    ListTable table;
    table.title = ClubListsText::tr("Due");
    const QString span = counted(days, QT_TRANSLATE_N_NOOP("Words", "within %n day"),
                                 QT_TRANSLATE_N_NOOP("Words", "within %n days"));
    table.summary =
        rows.empty()
            ? ClubListsText::tr("Nothing falls due %1.").arg(span)
            : ClubListsText::tr("%1 overdue, undated or %2.")
                  .arg(counted(static_cast<int>(rows.size()), QT_TRANSLATE_N_NOOP("Words", "%n due day"),
                               QT_TRANSLATE_N_NOOP("Words", "%n due days")),
                       span);
    table.columns = {ClubListsText::tr("due"), ClubListsText::tr("kit"),  ClubListsText::tr("size"),
                     ClubListsText::tr("tag"), ClubListsText::tr("boat"), ClubListsText::tr("rule"),
                     ClubListsText::tr("why")};
    for (const core::DueRow& row : rows) {
        const bool isLater = row.due.state == core::DueState::Later;
        const Mark mark = row.due.isPassedStop() ? Mark::Look : isLater ? Mark::NotAsked : Mark::StillToFind;
        table.lines.push_back(
            {mark,
             {dueCell(row.due, today), text(row.kitType), text(row.size), codeCell(row.item), text(row.boat),
              ruleInWords(row.due.rule), explanationOf(row.due)}});
        table.needsSomebody = table.needsSomebody || !isLater;
    }
    table.cautions = {dueCaution(), whoPrevails()};
    return table;
}

ListTable logTable(const std::vector<core::LogEntry>& entries,
                   const std::map<std::string, std::string>& kitTypes) {
    ListTable table;
    table.title = ClubListsText::tr("Log");
    const auto open = static_cast<int>(std::count_if(
        entries.begin(), entries.end(), [](const core::LogEntry& entry) { return !entry.closed; }));
    table.summary = entries.empty() ? ClubListsText::tr("The log is empty.")
                                    : ClubListsText::tr("%1 of %2.")
                                          .arg(counted(open, QT_TRANSLATE_N_NOOP("Words", "%n entry open"),
                                                       QT_TRANSLATE_N_NOOP("Words", "%n entries open")))
                                          .arg(entries.size());
    table.columns = {ClubListsText::tr("state"),        ClubListsText::tr("about"),
                     ClubListsText::tr("day"),          ClubListsText::tr("what is the matter"),
                     ClubListsText::tr("by"),           ClubListsText::tr("closed on"),
                     ClubListsText::tr("what was done")};
    for (const core::LogEntry& entry : entries)
        table.lines.push_back(logLine(entry, kitTypes));
    return table;
}

ListTable boatsTable(const std::vector<core::BoatCondition>& boats, core::CalendarDay today) {
    using Kind = core::BoatCondition::Kind;
    ListTable table;
    table.title = ClubListsText::tr("Boats");
    int notReady = 0;
    table.columns = {ClubListsText::tr("boat"), ClubListsText::tr("class"), ClubListsText::tr("condition"),
                     ClubListsText::tr("why")};
    for (const core::BoatCondition& boat : boats) {
        QStringList why;
        if (!boat.urgent.empty())
            why << ClubListsText::tr("Launched urgently, kit incomplete: %1").arg(text(boat.urgent));
        for (const core::NotReadyReason& reason : boat.reasons)
            why << withCapital(reasonOf(reason));
        const Mark mark = boat.kind == Kind::KitReady ? Mark::Found
                          : boat.kind == Kind::Out    ? Mark::StillToFind
                                                      : Mark::Look;
        notReady += boat.kind == Kind::NotReady;
        table.lines.push_back(
            {mark,
             {text(boat.boat), text(boat.boatClass), conditionOf(boat, today), why.join(QLatin1Char(' '))}});
    }
    table.summary =
        boats.empty()
            ? ClubListsText::tr("No boats yet.")
            : ClubListsText::tr("%1, %2 not ready.")
                  .arg(counted(static_cast<int>(boats.size()), QT_TRANSLATE_N_NOOP("Words", "%n boat"),
                               QT_TRANSLATE_N_NOOP("Words", "%n boats")))
                  .arg(notReady);
    table.cautions = {boardCaution()};
    table.needsSomebody = notReady > 0;
    return table;
}

} // namespace app
